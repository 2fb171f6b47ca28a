/* The edge gauge: a strip for each kind of corner, its marks at true distance from the corner. */
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { gauges, type Strip, strips } from '../../src/drawing/gauge.js';
import type { Ruler } from '../../src/measure/ruler.js';
import { halfLetter, job } from '../support/jobs.js';

const INCH = 25.4;
const ruler: Ruler = { units: 'in', step: INCH / 16 };
/** Lettering half an em wide a letter: near enough for laying out. */
const measure = (text: string, size: number): number => text.length * size * 0.5;

const stripsOf = ({ folding, envelope }: ReturnType<typeof job>, widest: number): readonly Strip[] =>
  gauges(folding.made).flatMap((gauge) => strips(gauge, envelope.name, widest, ruler, measure));

/** Where graduations stand at the strip's lower edge, from its left end. */
const graduations = ({ drawing }: Strip): readonly number[] =>
  drawing
    .filter(({ layer }) => layer === 'mark')
    .flatMap(({ shape }) => segmentsOf(shape))
    .filter(({ from, to }) => from.x === to.x && Math.min(from.y, to.y) === 0)
    .map(({ from }) => from.x);

const wordsOn = ({ drawing }: Strip): readonly string[] =>
  drawing.flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : []));

test('corners with the same marks share a strip', () => {
  expect(gauges(halfLetter().folding.made).map(({ corners }) => corners)).toEqual([
    ['left', 'right'],
    ['seal', 'bottom'],
  ]);
  const square = job({ face: { width: 140, height: 140 } });
  expect(gauges(square.folding.made).map(({ corners }) => corners)).toEqual([
    ['left', 'right', 'seal', 'bottom'],
  ]);
  const shifted = job({ shift: 6 });
  expect(gauges(shifted.folding.made).map(({ corners }) => corners)).toEqual([
    ['left', 'right'],
    ['seal'],
    ['bottom'],
  ]);
});

test('the half-letter card: 5 1/16 from the side corners, 7 3/16 from the others', () => {
  // Common practice, no source; worked out by hand in the cut sheet's test.
  const [sides, ends] = stripsOf(halfLetter(), 260);
  expect(sides && graduations(sides)[0]).toBeCloseTo(5.0625 * INCH, 9);
  expect(ends && graduations(ends)[0]).toBeCloseTo(7.1875 * INCH, 9);
  expect(ends && wordsOn(ends)).toEqual(['half-letter: seal, bottom', 'score 7 3/16 in (182.6 mm)']);
});

test('a box has both its marks, a cut tip has one more, and says which', () => {
  const box = job({
    depth: 6,
    corners: { bottom: 'notched', seal: 'notched' },
    bottom: { kind: 'blunt', cut: 10, radius: 0 },
  });
  const { first, second } = box.folding.made;
  const ends = stripsOf(box, 260)[1];
  expect(ends && [...graduations(ends)].sort((a, b) => a - b)).toEqual([
    expect.closeTo(10 * Math.SQRT2, 9),
    expect.closeTo(second?.seal.alongEdge ?? 0, 9),
    expect.closeTo(first.seal.alongEdge, 9),
  ]);
  expect(ends && wordsOn(ends).join(' ')).toContain('tip cut off, bottom');
});

test('a strip longer than the page comes in parts that each show their marks at true distance', () => {
  const large = job({ face: { width: 440, height: 310 } });
  const mark = large.folding.made.first.seal.alongEdge;
  const parts = stripsOf(large, 190).filter((strip) => wordsOn(strip)[0]?.includes('seal'));
  expect(parts.length).toBe(2);
  expect(parts.every(({ width }) => width <= 190)).toBe(true);
  // Parts start 190 − 20 mm apart: they overlap by 20 mm and are joined in the middle of that.
  const found = parts.flatMap((part, index) => graduations(part).map((x) => x + index * 170));
  expect(found).toEqual([expect.closeTo(mark, 9)]);
  expect(parts.map((part) => wordsOn(part)[0])).toEqual([
    expect.stringContaining('part 1 of 2'),
    expect.stringContaining('part 2 of 2'),
  ]);
});
