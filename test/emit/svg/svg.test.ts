/* The blank at true size as SVG, read back by a parser and a reader of paths that had no part in writing it. */
import fc from 'fast-check';
import { svgPathProperties } from 'svg-path-properties';
import { expect, test } from 'vitest';
import type { Job } from '../../../src/emit/emitter.js';
import { anyEnvelope } from '../../support/arbitraries.js';
import { halfLetter, job, jobOf } from '../../support/jobs.js';
import { specJobs } from '../../support/spec-jobs.js';
import { pathsOf, readSvg, type SvgFile, svgOf, svgsOf } from '../../support/svg-file.js';

const INCH = 25.4;

const drawn = async (of: Job): Promise<SvgFile> => readSvg(await svgOf(of));

/** The one outline that is cut. */
function outlineOf({ groups }: SvgFile) {
  const [d = '', ...others] = pathsOf(groups.get('cut'));
  expect(others).toEqual([]);
  const parts = new svgPathProperties(d).getParts();
  return { d, length: parts.reduce((sum, { length }) => sum + length, 0), ends: parts.map(({ end }) => end) };
}

/** A place in inches from the blank's lower left corner, its bottom corner, y up. */
type Place = readonly [x: number, y: number];

/** The places of points on the page, rounded to a ten-thousandth of an inch, in a fixed order. */
function places(
  file: SvgFile,
  points: readonly { readonly x: number; readonly y: number }[],
): readonly Place[] {
  const { ends } = outlineOf(file);
  const [left, foot] = [Math.min(...ends.map(({ x }) => x)), Math.max(...ends.map(({ y }) => y))];
  const round = (mm: number): number => Math.round((mm / INCH) * 1e4) / 1e4 + 0;
  return sorted(points.map(({ x, y }) => [round(x - left), round(foot - y)]));
}

const sorted = (all: readonly Place[]): readonly Place[] => all.toSorted(([a, b], [c, d]) => a - c || b - d);

const ALL_FOLDED = { bottom: 'folded', seal: 'folded' } as const;

test('folded corners: the cut is the whole square, 4 × 11 1/4 in', async () => {
  // Common practice, no source: a half-letter card takes a square of 11 1/4 in.
  const { length, d } = outlineOf(await drawn(halfLetter({}, { corners: ALL_FOLDED })));
  expect(length).toBeCloseTo(4 * 11.25 * INCH, 3);
  expect(d).not.toContain('A');
});

test('a rounded tip is a true arc: two radii shorter, a quarter of a circle longer', async () => {
  const flap = { kind: 'rounded', radius: 12 } as const;
  const file = await drawn(halfLetter({}, { corners: ALL_FOLDED, flap }));
  const { length, d } = outlineOf(file);
  expect(d).toMatch(/A12 12 0 0 0 /);
  expect(length).toBeCloseTo(4 * 11.25 * INCH - 2 * 12 + (Math.PI / 2) * 12, 2);
  // The middle of the arc lies r(√2 - 1) off the corner, on the diagonal.
  const arc = new svgPathProperties(d).getParts().find((part) => Math.abs(part.length - 6 * Math.PI) < 0.01);
  const middle = places(file, arc ? [arc.getPointAtLength(arc.length / 2)] : []);
  const off = (12 * (1 - 1 / Math.SQRT2)) / INCH;
  expect(middle).toEqual([[expect.closeTo(11.25 - off, 3), expect.closeTo(11.25 - off, 3)]]);
});

test('scores end on the edges, 5 1/16 in from the side corners and 7 3/16 in from seal and bottom', async () => {
  const file = await drawn(halfLetter({}, { corners: ALL_FOLDED }));
  const lines = ['score', 'odd-score'].flatMap((layer) => pathsOf(file.groups.get(layer)));
  const ends = lines.flatMap((d) =>
    new svgPathProperties(d).getParts().flatMap(({ start, end }) => [start, end]),
  );
  // Common practice, no source: these are the marks for the half-letter card.
  const [side, end, edge] = [5.0625, 7.1875, 11.25];
  const onEdge = places(file, ends).filter((place) => place.some((along) => along === 0 || along === edge));
  expect(onEdge).toEqual(
    sorted([
      [end, 0],
      [0, end],
      [edge - end, edge],
      [edge, edge - end],
      [side, edge],
      [0, edge - side],
      [edge - side, 0],
      [edge, side],
    ]),
  );
  // The face's four sides, and at each of its corners the two ends that cross there.
  const folds = ['score', 'odd-score'].map((layer) => pathsOf(file.groups.get(layer)).length);
  expect(folds).toEqual([8, 4]);
});

test('each kind of line that occurs has exactly one group, and each id occurs once', async () => {
  const file = await drawn(job({ depth: 12, corners: { bottom: 'notched', seal: 'notched' } }));
  const ids = file.elements.flatMap((each) => each.getAttribute('id') ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  expect([...file.groups.keys()]).toEqual(expect.arrayContaining(['cut', 'score', 'second-score', 'mark']));
  expect([...file.groups.keys()].filter((id) => /\d/.test(id))).toEqual([]);
  expect(pathsOf(file.groups.get('second-score')).length).toBe(4);
});

test('title and description say in words what is drawn', async () => {
  const { words } = await drawn(halfLetter());
  expect(words('title')).toBe('Half-letter card');
  for (const said of [
    'at true size',
    'inside of the paper: lay the show side down',
    '11 1/4 in square (285.8 mm)',
    'Four scores',
  ]) {
    expect(words('desc')).toContain(said);
  }
  const box = await drawn(job({ depth: 12, corners: { bottom: 'notched', seal: 'notched' } }));
  expect(box.words('desc')).toContain('Eight scores');
});

test('a lining has a file of its own, with one outline to cut and its folds', async () => {
  const lined = await svgsOf(halfLetter({}, { liner: 3 }));
  expect(Object.keys(lined)).toEqual(['.svg', '.lining.svg']);
  const { groups, words } = readSvg(lined['.lining.svg'] ?? '');
  const [outline = '', ...others] = pathsOf(groups.get('lining'));
  expect(others).toEqual([]);
  expect(outline.endsWith('Z')).toBe(true);
  expect(groups.has('cut')).toBe(false);
  expect(words('title')).toBe('Half-letter card: lining');
  expect(words('desc')).toContain('One fold');
  // The diagonal of 11 1/4 in less two side flaps of 5 1/16 in/√2 is the face as made; less the inset on both sides.
  const xs = new svgPathProperties(outline).getParts().map(({ end }) => end.x);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((11.25 - 5.0625) * Math.SQRT2 * INCH - 2 * 3, 3);
  expect(Object.keys(await svgsOf(halfLetter()))).toEqual(['.svg']);
});

const ELEMENTS = new Set(['svg', 'title', 'desc', 'g', 'path', 'text']);
const ATTRIBUTES = new Set(
  'xmlns width height viewBox lang role aria-labelledby font-family id d fill stroke stroke-width stroke-dasharray x y font-size font-weight text-anchor textLength lengthAdjust transform'.split(
    ' ',
  ),
);
const NUMERIC = ['d', 'viewBox', 'stroke-width', 'stroke-dasharray', 'x', 'y', 'font-size', 'textLength'];
/** Four decimals at most, none of them needless. */
const PLAIN_NUMBER = /^(0|-?[1-9]\d*|-?(0|[1-9]\d*)\.\d{0,3}[1-9])$/;

/** Nothing but lines, text and their looks; nothing that runs, links or loads; plain numbers; the page holds its points. */
function expectPlain({ root, elements }: SvgFile): void {
  const [, , width = 0, height = 0] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number);
  expect(root.getAttribute('width')).toBe(`${width}mm`);
  expect(root.getAttribute('height')).toBe(`${height}mm`);
  const attributes = elements.flatMap((each) => [...each.attributes]);
  expect(elements.map(({ tagName }) => tagName).filter((name) => !ELEMENTS.has(name))).toEqual([]);
  expect(attributes.map(({ name }) => name).filter((name) => !ATTRIBUTES.has(name))).toEqual([]);
  const values = attributes.filter(({ name }) => name !== 'xmlns').map(({ value }) => value);
  expect(values.filter((value) => /url|:|\/\//.test(value))).toEqual([]);
  const numbers = attributes
    .filter(({ name }) => NUMERIC.includes(name))
    .flatMap(({ value }) => value.split(/[ MLAZ]+/))
    .filter((word) => word !== '');
  expect(numbers.filter((number) => !PLAIN_NUMBER.test(number))).toEqual([]);
  const points = elements
    .flatMap((each) => each.getAttribute('d') ?? [])
    .flatMap((d) => new svgPathProperties(d).getParts().flatMap(({ start, end }) => [start, end]));
  const within = (at: number, side: number): boolean => at >= -1e-4 && at <= side + 1e-4;
  expect(points.filter(({ x, y }) => !within(x, width) || !within(y, height))).toEqual([]);
}

test.each(Object.entries(specJobs()))('%s of the studio is plain SVG', async (_, of) => {
  for (const text of Object.values(await svgsOf(of))) expectPlain(readSvg(text));
});

test('any envelope is plain SVG', async () => {
  await fc.assert(
    fc.asyncProperty(anyEnvelope, async (any) => expectPlain(await drawn(jobOf(any)))),
    { numRuns: 100, seed: 4 },
  );
});

test('and one with any title and name', async () => {
  const hostile = '"><script href="x">]]>&amp; \u202E\u0000\uD800 \u{1F41A}';
  const file = await drawn(halfLetter({ title: hostile, name: hostile }));
  expectPlain(file);
  expect(file.words('title')).toBe('"><script href="x">]]>&amp;  \uFFFD \u{1F41A}');
});

test('the same envelope gives the same bytes', async () => {
  expect(await svgOf(halfLetter())).toBe(await svgOf(halfLetter()));
});
