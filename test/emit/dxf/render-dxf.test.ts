import { expect, test } from 'vitest';
import { type Drawing, lettering, line, outline, polyline, rectangle } from '../../../src/drawing/drawing.js';
import { renderDxf } from '../../../src/emit/dxf/render-dxf.js';
import { readDxf } from '../../support/dxf-file.js';

/** Letters half as wide as the em. */
const measure = (text: string, size: number): number => (text.length * size) / 2;

const read = async (drawing: Drawing) =>
  readDxf(new TextEncoder().encode(await renderDxf({ drawing, width: 100, height: 60 }, measure)));

test('surfaces are left out, with their layers', async () => {
  const { entities, tables } = await read([
    rectangle('inside', 0, 0, 10, 10),
    rectangle('card', 0, 0, 10, 10),
    line('cut', { x: 0, y: 0 }, { x: 1, y: 0 }),
  ]);
  expect(entities.map(({ type }) => type)).toEqual(['LINE']);
  expect(Object.keys(tables.layer.layers)).toEqual(['0', 'cut']);
});

test('runs of lines stay open, outlines are closed', async () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 9, y: 0 },
    { x: 9, y: 5 },
  ];
  const { polylines } = await read([polyline('edge', corners), outline('cut', corners)]);
  expect(polylines.map(({ shape, vertices }) => [shape, vertices.length])).toEqual([
    [false, 3],
    [true, 3],
  ]);
});

test('lettering is as high as its capitals, and held where it is meant to be', async () => {
  const at = { x: 50, y: 30 };
  const { texts } = await read([
    lettering('tide', at, 4),
    lettering('tide', at, 4, { anchor: 'middle' }),
    lettering('tide', at, 4, { anchor: 'end', angleDegrees: 90 }),
  ]);
  // Capitals of the shipped typeface are 0.66 of the em high (its own tables).
  for (const { textHeight } of texts) expect(textHeight).toBeCloseTo(0.66 * 4, 6);
  // The word is 8 mm wide. Justification: 0 left, 1 centre, 2 right (the format's reference, group 72).
  const z = 0;
  expect(texts).toMatchObject([
    { halign: 0, rotation: 0, startPoint: { ...at, z } },
    { halign: 1, rotation: 0, startPoint: { x: 46, y: 30, z }, endPoint: { ...at, z } },
    { halign: 2, rotation: 90, startPoint: { x: 50, y: 22, z }, endPoint: { ...at, z } },
  ]);
});

// Codes of the format: `%%` and a letter or `%` for one per cent sign, `^` and a letter for a control character, `\U+` and
// four digits for a character by its number (the vendor's list of control codes; the caret from memory).
test.each([
  ['½ × 11 ¼ in → Føroyar 潮', '½ × 11 ¼ in → Føroyar 潮'],
  ['100 % cotton', '100 % cotton'],
  ['5%%d and %%%', '5%%%%%%d and %%%%%%%%%'],
  ['M^J', 'M^ J'],
  ['\\U+00B0 \\u+00b0 \\M+1A0B0 \\P', '\\U+005CU+00B0 \\U+005Cu+00b0 \\U+005CM+1A0B0 \\P'],
  ['Ebb\n0\r\nEOF\u2028\u0007!', 'Ebb 0  EOF  !'],
  ['\u202eabc\u200b', 'abc'],
  ['\ud800', '\ufffd'],
])('the text %j is written as %j', async (text, written) => {
  const { texts } = await read([lettering(text, { x: 0, y: 0 }, 4)]);
  expect(texts.map((entity) => entity.text)).toEqual([written]);
});

test('no noise and no exponents in coordinates', async () => {
  const text = await renderDxf(
    {
      drawing: [line('cut', { x: 1e-9, y: -1e-9 }, { x: 0.1 + 0.2, y: 1e-6 })],
      width: 1,
      height: 1,
    },
    measure,
  );
  expect(text).toContain('\n10\n0\n20\n0\n30\n0\n11\n0.3\n21\n0.000001\n31\n0\n');
});
