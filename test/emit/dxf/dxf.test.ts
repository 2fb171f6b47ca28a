/*
 * The DXF of the plate, read back by a library that had no part in writing it: units, layers, the outline to cut, scores.
 * Units: the format's reference (the vendor's list of header variables) has $INSUNITS 4 for millimetres and $MEASUREMENT 1
 * for metric.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LINE_KINDS } from '../../../src/drawing/line-kinds.js';
import { placer } from '../../../src/drawing/place.js';
import { dxf } from '../../../src/emit/dxf/dxf.js';
import type { Job } from '../../../src/emit/emitter.js';
import type { Point } from '../../../src/plane/point.js';
import { anyEnvelope } from '../../support/arbitraries.js';
import { type DxfFile, lengthOf, onlyPolyline, readDxf } from '../../support/dxf-file.js';
import { halfLetter, job, jobOf } from '../../support/jobs.js';
import { emitOptions } from '../../support/pdf-pages.js';
import { specJobs } from '../../support/spec-jobs.js';

const INCH = 25.4;
const folded = { bottom: 'folded', seal: 'folded' } as const;
const notched = { bottom: 'notched', seal: 'notched' } as const;

/** Handed to every build, so that the fonts are read once. */
const options = emitOptions();

async function write(of: Job): Promise<Uint8Array> {
  const [file] = await dxf.emit(of, options);
  expect(file?.extension).toBe('.dxf');
  return file?.bytes ?? new Uint8Array();
}

const read = async (of: Job): Promise<DxfFile> => readDxf(await write(of));
const boxOf = (points: readonly Point[]) => ({
  left: Math.min(...points.map(({ x }) => x)),
  right: Math.max(...points.map(({ x }) => x)),
  bottom: Math.min(...points.map(({ y }) => y)),
  top: Math.max(...points.map(({ y }) => y)),
});

test('the unit is a mm: in the header, and in words before it', async () => {
  const bytes = await write(halfLetter());
  const { header } = readDxf(bytes);
  expect(header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1, $LTSCALE: 1 });
  const [group, comment] = new TextDecoder().decode(bytes).split('\n');
  expect([group, comment]).toEqual(['999', 'All lengths in mm: one drawing unit is one millimetre.']);
});

test('the half-letter card with folded corners: one closed outline, 45 in long', async () => {
  const outline = onlyPolyline(await read(halfLetter({}, { corners: folded })), 'cut');
  expect(outline.shape).toBe(true);
  // Common practice, no source: a blank 11 1/4 in square. 4 × 11 1/4 in = 45 in.
  expect(outline.vertices.length).toBe(4);
  expect(lengthOf(outline)).toBeCloseTo(45 * INCH, 6);
});

test('rounded tips are true arcs', async () => {
  const wishes = {
    corners: folded,
    flap: { kind: 'rounded', radius: 15 },
    bottom: { kind: 'rounded', radius: 8 },
  } as const;
  const outline = onlyPolyline(await read(halfLetter({}, wishes)), 'cut');
  // A quarter circle turns left by 90°: the tangent of 22.5° is √2 − 1. Each takes 2 r off the edges and adds π r / 2.
  const bulges = outline.vertices.flatMap(({ bulge }) => bulge ?? []);
  expect(bulges.length).toBe(2);
  for (const bulge of bulges) expect(bulge).toBeCloseTo(Math.SQRT2 - 1, 6);
  expect(lengthOf(outline)).toBeCloseTo(45 * INCH - 2 * (15 + 8) + (Math.PI / 2) * (15 + 8), 3);
});

test('notches end in arcs that turn the other way', async () => {
  const outline = onlyPolyline(await read(halfLetter({}, { corners: notched })), 'cut');
  const bulges = outline.vertices.flatMap(({ bulge }) => bulge ?? []);
  expect(bulges.length).toBe(4);
  for (const bulge of bulges) expect(bulge).toBeCloseTo(1 - Math.SQRT2, 6);
});

test('the half-letter card with folded corners: where every score starts and ends', async () => {
  const file = await read(halfLetter({}, { corners: folded }));
  const { left, bottom } = boxOf(onlyPolyline(file, 'cut').vertices);
  const ends = (layer: string): readonly string[] =>
    file.lines
      .filter((line) => line.layer === layer)
      .map(({ vertices }) => vertices.map(({ x, y }) => [(x - left) / INCH, (y - bottom) / INCH]))
      .map((points) =>
        points
          .map((at) => at.map((inches) => inches.toFixed(4)).join())
          .sort()
          .join(' '),
      )
      .sort();
  // By hand, in inches from the lower left corner of the blank (its bottom flap's): marks 5 1/16 and 7 3/16 from the
  // corners (common practice, no source), so scores on x + y = 7.1875 and 15.3125, and on x - y = ±6.1875.
  const face = [
    '0.5000,6.6875 6.6875,0.5000',
    '10.7500,4.5625 6.6875,0.5000',
    '10.7500,4.5625 4.5625,10.7500',
    '0.5000,6.6875 4.5625,10.7500',
  ];
  const ears = [
    ['0.0000,7.1875 0.5000,6.6875', '0.0000,6.1875 0.5000,6.6875'],
    ['6.6875,0.5000 7.1875,0.0000', '6.1875,0.0000 6.6875,0.5000'],
    ['10.7500,4.5625 11.2500,4.0625', '10.7500,4.5625 11.2500,5.0625'],
    ['4.0625,11.2500 4.5625,10.7500', '4.5625,10.7500 5.0625,11.2500'],
  ];
  const [towards, away] = [ends('score'), ends('odd-score')];
  expect([...towards, ...away].sort()).toEqual([...face, ...ears.flat()].sort());
  expect(towards).toEqual(expect.arrayContaining(face));
  // Where two scores cross, three folds go one way and the fourth, at the ear, the other (Maekawa's theorem).
  for (const pair of ears) expect(away.filter((ear) => pair.includes(ear)).length).toBe(1);
});

test('line types say their dashes in mm, and samples in the key lie on no line to cut or score', async () => {
  const { tables, entities, lines } = await read(halfLetter());
  // ISO 128-2 (from memory): dashes of 12 line widths and gaps of 3, of narrow lines of 0.25 mm.
  expect(tables.lineType.lineTypes['score']).toMatchObject({ pattern: [3, -0.75], patternLength: 3.75 });
  const samples = entities.filter(({ layer }) => layer === 'sample');
  expect(samples.map(({ lineType }) => lineType)).toEqual(
    expect.arrayContaining(['score', 'glue', 'Continuous']),
  );
  // Lines of 0.5, 0.25 and 0.13 mm, in 1/100 mm.
  expect(new Set(samples.map(({ lineweight }) => lineweight))).toEqual(new Set([50, 25, 13]));
  expect(lines.filter(({ layer }) => layer === 'cut')).toEqual([]);
});

test.each([
  ['Ebb\n0\nEOF\n!', 'Ebb 0 EOF !'],
  ['Ebb\r\n  0\r\nLINE\r\n  8\r\ncut', /^Ebb +0 +LINE +8 +cut$/],
  ['Ebb\u2028and\u0085more', 'Ebb and more'],
  ['\ud800 \u202e%%d ^J \\U+000A0', '\ufffd %%%%%%d ^ J \\U+005CU+000A0'],
])('the title %j can neither end the file nor add to it', async (title, shown) => {
  const plain = await read(halfLetter({ title: 'Ebb and more' }));
  const bytes = await write(halfLetter({ title }));
  const file = readDxf(bytes);
  expect(file.entities.length).toBe(plain.entities.length);
  expect(file.lines.length).toBe(plain.lines.length);
  expect(file.texts.map(({ text }) => text)).toContainEqual(
    typeof shown === 'string' ? shown : expect.stringMatching(shown),
  );
  const text = new TextDecoder().decode(bytes);
  expect(text.match(/^EOF$/gm)).toHaveLength(1);
  expect(text.endsWith('\n0\nEOF\n')).toBe(true);
});

test('the same recipe gives the same bytes, also beside others', async () => {
  const [alone] = [await write(halfLetter())];
  const [one, , other] = await Promise.all(
    [halfLetter(), job({ depth: 6, corners: notched }), halfLetter()].map(write),
  );
  expect(Buffer.from(one ?? []).equals(Buffer.from(alone ?? []))).toBe(true);
  expect(Buffer.from(other ?? []).equals(Buffer.from(alone ?? []))).toBe(true);
});

/** Demands that a file is whole, and that cuts and scores lie where the folding has them. */
async function expectFaithful(of: Job): Promise<void> {
  const file = await read(of);
  const { header, tables, entities } = file;
  expect(entities.length).toBeGreaterThan(0);
  for (const { layer, lineType } of entities) {
    expect(Object.keys(tables.layer.layers)).toContain(layer);
    if (lineType !== undefined) expect(Object.keys(tables.lineType.lineTypes)).toContain(lineType);
  }
  const [lower, upper] = [header['$EXTMIN'], header['$EXTMAX']] as Point[];
  const points = entities.flatMap((entity) => ('vertices' in entity ? (entity.vertices as Point[]) : []));
  const all = boxOf(points);
  expect(all.left).toBeGreaterThanOrEqual((lower?.x ?? NaN) - 1e-6);
  expect(all.bottom).toBeGreaterThanOrEqual((lower?.y ?? NaN) - 1e-6);
  expect(all.right).toBeLessThanOrEqual((upper?.x ?? NaN) + 1e-6);
  expect(all.top).toBeLessThanOrEqual((upper?.y ?? NaN) + 1e-6);
  expectOutline(of, file);
  expectScores(of, file);
}

/** The blank's frame is turned by 45° on the page; where it lies there is told by the first corner of the outline. */
function onPage(of: Job, file: DxfFile): (point: Point) => Point {
  const turned = placer({ angleDegrees: -45 });
  const from = turned(of.folding.cutOutline.start);
  const to = onlyPolyline(file, 'cut').vertices[0] as Point;
  return (point) => ({ x: turned(point).x + to.x - from.x, y: turned(point).y + to.y - from.y });
}

function expectOutline(of: Job, file: DxfFile): void {
  const outline = onlyPolyline(file, 'cut');
  const { start, stretches } = of.folding.cutOutline;
  const lengths = stretches.map((stretch, index) => {
    const from = stretches[index - 1]?.to ?? start;
    const chord = Math.hypot(stretch.to.x - from.x, stretch.to.y - from.y);
    if (stretch.kind === 'line') return chord;
    const radius = Math.hypot(from.x - stretch.centre.x, from.y - stretch.centre.y);
    return 2 * radius * Math.asin(Math.min(1, chord / 2 / radius));
  });
  expect(outline.shape).toBe(true);
  expect(lengthOf(outline)).toBeCloseTo(
    lengths.reduce((sum, length) => sum + length, 0),
    3,
  );
  const arcs = stretches.filter(({ kind }, index) => kind === 'arc' && (lengths[index] ?? 0) > 1e-3);
  const bulges = outline.vertices.filter(({ bulge }) => bulge !== undefined);
  expect(bulges.length).toBe(arcs.length);
}

function expectScores(of: Job, file: DxfFile): void {
  const at = onPage(of, file);
  const layers = ['score', 'second-score', 'odd-score'];
  const scores = file.lines.filter(({ layer }) => layers.includes(layer));
  expect(scores.length).toBe(of.folding.creases.length);
  for (const { order, sense, from, to } of of.folding.creases) {
    const layer = layers[sense === 'mountain' ? 2 : order === 'second' ? 1 : 0];
    const ends = [at(from), at(to)];
    const off = scores
      .filter((score) => score.layer === layer)
      .map(({ vertices }) =>
        Math.max(
          ...vertices.map(({ x, y }, end) =>
            Math.hypot(x - (ends[end]?.x ?? NaN), y - (ends[end]?.y ?? NaN)),
          ),
        ),
      );
    expect(Math.min(...off)).toBeLessThan(1e-5);
  }
}

test('every recipe of the studio', async () => {
  const recipes = Object.values(specJobs());
  expect(recipes.length).toBeGreaterThanOrEqual(14);
  for (const recipe of recipes) await expectFaithful(recipe);
});

test('a hundred envelopes of every proportion', async () => {
  await fc.assert(
    fc.asyncProperty(anyEnvelope, async (envelope) => expectFaithful(jobOf(envelope))),
    { numRuns: 100 },
  );
});

test('a lining comes as a file of its own', async () => {
  const files = await dxf.emit(halfLetter({}, { liner: 5 }), options);
  expect(files.map(({ extension }) => extension)).toEqual(['.dxf', '.lining.dxf']);
  const file = readDxf(files[1]?.bytes ?? new Uint8Array());
  expect(onlyPolyline(file, 'lining').shape).toBe(true);
  // A flat envelope's lining folds once, with the seal flap.
  expect(file.lines.filter(({ layer }) => layer === 'lining-fold').length).toBe(1);
  expect((await dxf.emit(halfLetter(), options)).length).toBe(1);
});

test('all kinds of line come out as they are on paper: width, dashes, ink', async () => {
  const { tables } = await read(job({ depth: 6, corners: notched, flap: { kind: 'rounded', radius: 9 } }));
  const { layers } = tables.layer;
  // Indices: 7 is black on a white ground, 5 blue, 3 green, 2 yellow, 6 magenta (from memory).
  const colours = { cut: 7, score: 5, 'second-score': 3, glue: 2, zone: 6, dimension: 7, lettering: 7 };
  for (const [layer, colour] of Object.entries(colours)) expect(layers[layer]?.colorIndex).toBe(colour);
  for (const layer of Object.keys(layers)) {
    const dashes = LINE_KINDS[layer as keyof typeof LINE_KINDS]?.dashes ?? [];
    const pattern = tables.lineType.lineTypes[layer]?.pattern?.map(Number) ?? [];
    expect(pattern.map(Math.abs)).toEqual(dashes);
  }
});
