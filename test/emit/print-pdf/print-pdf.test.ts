/*
 * The file for a print shop, read by a library that had no part in writing it: the layers that a viewer lists and hides,
 * the names by which machines know them, a spot colour each, and every line at its place and in its layer.
 */
import { inflateSync } from 'node:zlib';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { print } from '../../../src/emit/print-pdf/print-pdf.js';
import { emitted } from '../../support/emitted.js';
import { EXTREMES } from '../../support/extremes.js';
import { halfLetter, job } from '../../support/jobs.js';
import { pdfLayers } from '../../support/pdf-layers.js';
import { pdfPages } from '../../support/pdf-pages.js';
import { pdfStrokes, type Stroke } from '../../support/pdf-strokes.js';
import { specJobs } from '../../support/spec-jobs.js';

const INCH = 25.4;
/** Units of a PDF in a mm (ISO 32000-1, 8.3.2.3: 1/72 in). */
const POINTS = 72 / INCH;
/** How far a coordinate may be off, in mm. */
const SLACK = 0.01;

const folded = { bottom: 'folded', seal: 'folded' } as const;
const notched = { bottom: 'notched', seal: 'notched' } as const;
const plain = await emitted(print, halfLetter({}, { corners: folded }));
const box = await emitted(
  print,
  job({ depth: 6, corners: notched, bottom: { kind: 'blunt', cut: 8, radius: 2 } }),
);
const lined = await emitted(print, halfLetter({}, { liner: 6 }));

const asText = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

const length = ({ from, to }: Stroke): number => Math.hypot(to.x - from.x, to.y - from.y);

/** The strokes of all pages, each in its layer. */
const strokesIn = async (bytes: Uint8Array, layer: string): Promise<readonly Stroke[]> =>
  (await pdfStrokes(bytes)).flat().filter((stroke) => stroke.layer === layer && length(stroke) > 1e-3);

/** Left, lower, right and upper edge of some strokes. */
function edges(strokes: readonly Stroke[]): readonly [number, number, number, number] {
  const points = strokes.flatMap(({ from, to }) => [from, to]);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The operators that paint the pages, taken out of the file's compressed streams. */
const operatorsOf = (bytes: Uint8Array): string =>
  [...asText(bytes).matchAll(/\/Filter \/FlateDecode\n>>\nstream\n([^]*?)\nendstream/g)]
    .map(([, stream = '']) => inflateSync(Buffer.from(stream, 'latin1')).toString('latin1'))
    .filter((operators) => operators.includes('/OC '))
    .join('\n');

/** The page's box of a name, in points. */
const pageBox = (bytes: Uint8Array, name: string): readonly number[] =>
  (new RegExp(`/${name} \\[([^\\]]*)\\]`).exec(asText(bytes))?.[1] ?? '').split(' ').map(Number);

/**
 * The names of ISO 19593-1:2018, group and type, as the PDF Association's open model lists them (arlington-pdf-model,
 * tsv/latest/GTS_ProcStepsGroup.tsv); which of them a line of ours is, is ours to say.
 */
const STEPS: Readonly<Record<string, readonly [group: string, type?: string]>> = {
  Cut: ['Structural', 'Cutting'],
  Score: ['Structural', 'Creasing'],
  'Second score': ['Structural', 'Creasing'],
  'Score from the other face': ['Structural', 'ReverseCreasing'],
  'Cut the lining': ['Structural', 'Cutting'],
  'Fold the lining': ['Structural', 'Creasing'],
  Seams: ['Legend'],
  Glue: ['Structural', 'Gluing'],
  Zones: ['Positions', 'ContentArea'],
  Marks: ['Dimensions'],
  Dimensions: ['Dimensions'],
  'Falls away': ['Legend'],
  Legend: ['Legend'],
};

test.each([
  ['a flat envelope', plain, ['Second score', 'Cut the lining', 'Fold the lining', 'Falls away']],
  ['a box', box, ['Score from the other face', 'Cut the lining', 'Fold the lining']],
  ['a lined envelope', lined, ['Second score']],
])(
  '%s: a viewer lists a layer for each step that there is, in order and all shown',
  async (_, bytes, without) => {
    const { layers, elsewhere } = await pdfLayers(bytes);
    expect(layers.map(({ name }) => name)).toEqual(
      Object.keys(STEPS).filter((name) => !without.includes(name)),
    );
    expect(layers.every(({ visible }) => visible)).toBe(true);
    expect(elsewhere).toEqual([]);
  },
);

test('each layer says which step it is, in the words of the standard', async () => {
  for (const bytes of [plain, box, lined]) {
    const { layers } = await pdfLayers(bytes);
    const said = [
      ...asText(bytes).matchAll(/<<\n\/Type \/OCG\n\/Name \((.*)\)\n\/GTS_Metadata <<\n([^>]*)>>\n>>/g),
    ];
    expect(said.map(([, name]) => name)).toEqual(layers.map(({ name }) => name));
    for (const [, name = '', keys = ''] of said) {
      const [group, type] = STEPS[name] ?? [];
      expect(keys.trim().split('\n')).toEqual([
        `/GTS_ProcStepsGroup /${group}`,
        ...(type ? [`/GTS_ProcStepsType /${type}`] : []),
      ]);
    }
  }
});

// B. Wong, Nature Methods 8, 441 (2011), figure 2, as copied into many programs: cyan, magenta, yellow, black in per cent.
test.each([
  ['Cut', '0 0 0 1'],
  ['Score', '1 0.5 0 0'],
  ['Second score', '0.97 0 0.75 0'],
  ['Score from the other face', '0 0.8 1 0'],
  ['Glue', '0 0.5 1 0'],
  ['Zones', '0.1 0.7 0 0'],
  ['Legend', '0 0 0 1'],
])('%s has a spot colour of that name, shown as %s', (name, ink) => {
  const colour = [plain, box]
    .map(asText)
    .map((file) =>
      new RegExp(`\\[/Separation /${name.replaceAll(' ', '#20')} /DeviceCMYK <<[^>]*>>`).exec(file),
    )
    .find((found) => found)?.[0];
  expect(colour).toContain(`/C1 [${ink}]`);
  expect(colour).toContain('/C0 [0 0 0 0]');
});

test('as many spot colours as layers, and no other colour space', async () => {
  for (const bytes of [plain, box, lined]) {
    const { layers } = await pdfLayers(bytes);
    const names = [...asText(bytes).matchAll(/\/Separation \/(\S+)/g)].map(([, name]) => name);
    expect(names).toEqual(layers.map(({ name }) => name.replaceAll(' ', '#20')));
  }
});

test('what is painted in a layer overprints, in its spot colour', () => {
  for (const bytes of [plain, box, lined]) {
    // ISO 32000-1, 8.4.5 and 8.6.7: OP for strokes, op for fills, OPM 1 spares inks that are not named.
    expect(asText(bytes)).toContain('/OP true\n/op true\n/OPM 1');
    const begun = operatorsOf(bytes).split('BDC\n').slice(1);
    expect(begun.length).toBeGreaterThan(5);
    expect(operatorsOf(bytes).split('\nQ\nEMC\n').length).toBe(begun.length + 1);
    for (const painted of begun)
      expect(painted).toMatch(/^q\n\/Overprint gs\n\/CS(\d+) CS\n1 SCN\n\/CS\1 cs\n1 scn\n/);
    expect(operatorsOf(bytes)).not.toMatch(/\b(rg|RG|g|G|k|K)\n/);
  }
});

test('half-letter card with folded corners: four cuts of 11 1/4 in, at the page’s trim box', async () => {
  const cuts = await strokesIn(plain, 'Cut');
  // By hand: 4 × 11.25 in = 45 in.
  expect(cuts.length).toBe(4);
  expect(Math.abs(cuts.reduce((sum, cut) => sum + length(cut), 0) - 45 * INCH)).toBeLessThan(SLACK);
  for (const cut of cuts) expect(Math.abs(length(cut) - 11.25 * INCH)).toBeLessThan(SLACK);
  const [left, lower, right, upper] = edges(cuts);
  expect(right - left).toBeCloseTo(11.25 * INCH, 2);
  // ISO 32000-1, 14.11.2: the trim box is what is left of the page once it is trimmed. 11.25 × 72 = 810.
  const trim = pageBox(plain, 'TrimBox');
  expect((trim[2] ?? 0) - (trim[0] ?? 0)).toBeCloseTo(810, 3);
  [left, lower, right, upper].forEach((at, index) => expect(at * POINTS).toBeCloseTo(trim[index] ?? 0, 2));
});

test('half-letter card: scores run from mark to mark, each in the layer of its face', async () => {
  const [left, lower, right, upper] = edges(await strokesIn(plain, 'Cut'));
  // Common practice, no source: 5 1/16 in from the sides' corners, 7 3/16 in from the others; as seen with the bottom
  // corner at lower left a score has one sum, or one difference, of distances from the edges.
  const sums = (stroke: Stroke): readonly number[] =>
    [stroke.from, stroke.to].flatMap(({ x, y }) => [
      x - left + (y - lower), // from the bottom corner
      right - x + (y - lower), // from the right corner
      right - x + (upper - y), // from the seal corner
      x - left + (upper - y), // from the left corner
    ]);
  const marks = [7.1875, 5.0625, 7.1875, 5.0625].map((inches) => inches * INCH);
  const cornerOf = (stroke: Stroke): number => {
    const all = sums(stroke);
    return marks.findIndex((mark, corner) =>
      [all[corner], all[corner + 4]].every((sum) => Math.abs((sum ?? 0) - mark) < SLACK),
    );
  };
  const valley = await strokesIn(plain, 'Score');
  const mountain = await strokesIn(plain, 'Score from the other face');
  for (const score of [...valley, ...mountain]) expect(cornerOf(score)).not.toBe(-1);
  // All four are scored on this face; folded corners need ends scored from the other one.
  expect([...new Set(valley.map(cornerOf))].sort()).toEqual([0, 1, 2, 3]);
  expect(mountain.length).toBeGreaterThan(0);
});

test('every recipe of the studio, and extremes: all on the page and in layers, no words among lines for machines', async () => {
  for (const [name, of] of Object.entries({ ...specJobs(), ...EXTREMES })) {
    const bytes = await emitted(print, of);
    const { layers, elsewhere } = await pdfLayers(bytes);
    expect({ name, elsewhere }).toEqual({ name, elsewhere: [] });
    for (const { name: layer, lettering } of layers)
      if (STEPS[layer]?.[0] === 'Structural')
        expect({ name, layer, lettering }).toEqual({ name, layer, lettering: [] });
    expect((await pdfStrokes(bytes)).flat().filter(({ layer }) => layer === undefined)).toEqual([]);
    const [left, lower, right, upper] = edges(await strokesIn(bytes, 'Cut'));
    expect(right - left).toBeCloseTo(of.facts.blank.width, 2);
    expect(upper - lower).toBeCloseTo(of.facts.blank.height, 2);
    const { width, height } = (await pdfPages(bytes))[0] ?? { width: 0, height: 0 };
    const all = edges((await pdfStrokes(bytes))[0] ?? []);
    // Nothing is nearer to the page's edge than 3 mm.
    expect(Math.min(all[0], all[1], width / POINTS - all[2], height / POINTS - all[3])).toBeGreaterThan(
      3 - SLACK,
    );
  }
});

test('figures lie with the dimensions, words and bars with the legend', async () => {
  const { layers } = await pdfLayers(plain);
  const written = (name: string): string =>
    layers.find((layer) => layer.name === name)?.lettering.join('|') ?? '';
  expect(written('Dimensions')).toMatch(/11.1.4 in/);
  expect(written('Legend')).toContain('Half-letter card');
  expect(written('Legend')).toContain('100 mm');
});

test('a lining has a page of its own', async () => {
  expect((await pdfPages(lined)).length).toBe(2);
  const [blank = [], lining = []] = await pdfStrokes(lined);
  const layersOf = (strokes: readonly Stroke[]): ReadonlySet<string | undefined> =>
    new Set(strokes.map(({ layer }) => layer));
  expect([...layersOf(blank)]).not.toContain('Cut the lining');
  expect([...layersOf(lining)]).toEqual(expect.arrayContaining(['Cut the lining', 'Fold the lining']));
  expect([...layersOf(lining)]).not.toContain('Cut');
  expect((await pdfPages(plain)).length).toBe(1);
});

test('a layer that is hidden is not painted', async () => {
  const document = await getDocument({ data: plain.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const viewport = page.getViewport({ scale: 0.5 });
  const painted = async (hidden: (name: string) => boolean): Promise<number> => {
    const config = await document.getOptionalContentConfig();
    for (const [id, { name }] of config as Iterable<[string, { readonly name: string }]>)
      if (hidden(name)) config.setVisibility(id, false);
    const canvas = createCanvas(viewport.width, viewport.height);
    const context = canvas.getContext('2d');
    await page.render({
      canvas: canvas as never,
      canvasContext: context as never,
      viewport,
      optionalContentConfigPromise: Promise.resolve(config),
    }).promise;
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    return data.filter((value, index) => index % 4 === 0 && value < 240).length;
  };
  const all = await painted(() => false);
  for (const name of ['Cut', 'Score', 'Dimensions', 'Legend'])
    expect(await painted((each) => each === name)).toBeLessThan(all - 50);
  expect(await painted(() => true)).toBe(0);
  await document.destroy();
});

test('the same recipe gives the same bytes', async () => {
  const again = await emitted(print, halfLetter({}, { liner: 6 }));
  expect(Buffer.from(again).equals(Buffer.from(lined))).toBe(true);
});

test('titles of any length and script can be printed and taken out again', async () => {
  const title = `Gezeiten (Øst) \\ <b>&\u0000 \u6f6e\u6c50 ${'and so on '.repeat(40)}`;
  const [page] = await pdfPages(await emitted(print, halfLetter({ title })));
  const words = page?.runs.map(({ text }) => text).join(' ');
  expect(words).toContain('Gezeiten (Øst) \\ <b>& ');
  expect(words).toContain('□□');
});
