/* PDF files: fixed bytes, true size asked for, every text safe to print. */
import { DOMParser, onErrorStopParsing } from '@xmldom/xmldom';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { type Drawing, lettering, line } from '../../../src/drawing/drawing.js';
import { openDocument } from '../../../src/emit/pdf/document.js';
import { paint, paintWithin } from '../../../src/emit/pdf/paint.js';
import { printable } from '../../../src/emit/pdf/printable.js';
import { roundedPath } from '../../../src/plane/path.js';
import { pdfStrokes } from '../../support/pdf-strokes.js';
import { emitOptions, pdfPages } from '../../support/pdf-pages.js';

const draw = async (drawing: Drawing, compress = true): Promise<Uint8Array> => {
  const document = await openDocument(emitOptions(), { title: 'Tides & (tables)', compress });
  document.addPage({ width: 210, height: 297 });
  paint(document, drawing);
  return document.finish();
};

test('viewers are asked to print at true size, and told title and language', async () => {
  const document = await getDocument({ data: await draw([]), verbosity: 0 }).promise;
  expect(await document.getViewerPreferences()).toEqual({ PrintScaling: 'None', DisplayDocTitle: true });
  expect((await document.getMetadata()).info).toMatchObject({
    Title: 'Tides & (tables)',
    Language: 'en',
    CreationDate: 'D:20000101000000Z',
    ModDate: 'D:20000101000000Z',
  });
  await document.destroy();
});

test('the title stands in the XML metadata too, marks of that language spelled out', async () => {
  const document = await openDocument(emitOptions(), { title: 'Ebb & <flood>\u0001' });
  document.addPage({ width: 100, height: 100 });
  const file = Buffer.from(await document.finish()).toString('utf8');
  const [xml = ''] = /<x:xmpmeta[^]*<\/x:xmpmeta>/.exec(file) ?? [];
  const metadata = new DOMParser({ onError: onErrorStopParsing }).parseFromString(xml, 'text/xml');
  const title = metadata.getElementsByTagNameNS('http://purl.org/dc/elements/1.1/', 'title')[0];
  expect(title?.textContent?.trim()).toBe('Ebb & <flood>');
});

test('the same drawing gives the same bytes', async () => {
  const drawing = [
    line('cut', { x: 10, y: 10 }, { x: 110, y: 10 }),
    lettering('5 1/2 in', { x: 10, y: 20 }, 3),
  ];
  expect(Buffer.from(await draw(drawing)).equals(Buffer.from(await draw(drawing)))).toBe(true);
});

test('only embedded fonts are used', async () => {
  const file = Buffer.from(await draw([lettering('flood ½ ebb', { x: 10, y: 20 }, 3)], false)).toString(
    'latin1',
  );
  expect(file).toContain('/FontFile2');
  expect(file).not.toContain('Helvetica');
});

test('a line lies where the drawing has it, to the precision of the reader', async () => {
  const [strokes] = await pdfStrokes(
    await draw([line('score', { x: 12.5, y: 33.25 }, { x: 187.75, y: 201.125 })]),
  );
  expect(strokes).toEqual([
    {
      from: { x: expect.closeTo(12.5, 4), y: expect.closeTo(33.25, 4) },
      to: { x: expect.closeTo(187.75, 4), y: expect.closeTo(201.125, 4) },
      width: expect.closeTo(0.25, 5),
      // ISO 128-2, from memory: dashes of 12 line widths, gaps of 3.
      dashes: [expect.closeTo(3, 5), expect.closeTo(0.75, 5)],
    },
  ]);
});

test('an arc stays within 0.001 mm of its circle', async () => {
  const corner = (x: number, y: number, radius: number) => ({ x, y, radius });
  const path = roundedPath([
    corner(20, 20, 0),
    corner(180, 20, 80),
    corner(180, 180, 80),
    corner(20, 180, 0),
  ]);
  const file = Buffer.from(
    await draw([{ layer: 'cut', shape: { kind: 'path', path }, span: null }], false),
  ).toString('latin1');
  const k = 72 / 25.4;
  const number = '(-?[\\d.]+)';
  const curves = [
    ...file.matchAll(new RegExp(`${number} ${number} ${number} ${number} ${number} ${number} c\\b`, 'g')),
  ];
  const before = [
    ...file.matchAll(
      new RegExp(
        `${number} ${number} (?:[lm]|c)\\n${number} ${number} ${number} ${number} ${number} ${number} c\\b`,
        'g',
      ),
    ),
  ];
  expect(curves.length).toBeGreaterThanOrEqual(4);
  expect(before.length).toBeGreaterThan(0);
  for (const [, ...values] of before) {
    // Points a quarter, half and three quarters along the curve, from its four control points (Bernstein).
    const [x0, y0, x1, y1, x2, y2, x3, y3] = values.map((value) => Number(value) / k) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (const t of [0.25, 0.5, 0.75]) {
      const s = 1 - t;
      const mix = (a: number, b: number, c: number, d: number): number =>
        s ** 3 * a + 3 * s ** 2 * t * b + 3 * s * t ** 2 * c + t ** 3 * d;
      const [x, y] = [mix(x0, x1, x2, x3), 297 - mix(y0, y1, y2, y3)];
      // Both arcs have radius 80, centred at (100, 100).
      expect(Math.abs(Math.hypot(x - 100, y - 100) - 80)).toBeLessThan(0.001);
    }
  }
});

test('what is clipped is still placed in page coordinates', async () => {
  const document = await openDocument(emitOptions(), { title: '' });
  document.addPage({ width: 100, height: 100 });
  paintWithin(document, [line('cut', { x: -50, y: 40 }, { x: 150, y: 40 })], {
    x: 10,
    y: 10,
    width: 80,
    height: 80,
  });
  const [strokes] = await pdfStrokes(await document.finish());
  expect(strokes?.[0]).toMatchObject({
    from: { y: expect.closeTo(40, 4) },
    to: { x: expect.closeTo(150, 3) },
  });
});

test('lettering can be taken out of the file again, turned or not', async () => {
  const [page] = await pdfPages(
    await draw([
      lettering('Springs (neaps) \\ ½ × ⅛', { x: 50, y: 100 }, 4, { anchor: 'middle' }),
      lettering('upright', { x: 20, y: 50 }, 4, { angleDegrees: 90, weight: 'bold' }),
    ]),
  );
  const texts = page?.runs.map(({ text }) => text).join('|');
  expect(texts).toContain('Springs (neaps) \\ ½ × ⅛');
  expect(texts).toContain('upright');
});

test.each([
  ['two\nlines\tand\u0000more', 'two lines and more'],
  ['turned \u202Eround\u202C', 'turned round'],
  ['\u6f6e\u6c50 table', '□□ table'],
  ['a\u0301', 'á'],
])('%j is shown as %j', (text, shown) => {
  const latin = (codePoint: number): boolean => codePoint < 0x250 || codePoint === 0x25a1;
  expect(printable(text, latin)).toBe(shown);
});

test('a font without even an open box shows a question mark', () => {
  expect(printable('\u6f6e', (codePoint) => codePoint < 0x80)).toBe('?');
});
