import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import type { Folding, GlueLine, Liner } from '../../src/folding/folding.js';
import { flatten, pathArea } from '../../src/plane/path.js';
import { distance, type Point } from '../../src/plane/point.js';
import { bounds, type Polygon } from '../../src/plane/polygon.js';
import { anyLinedEnvelope } from '../support/arbitraries.js';

type Lined = Folding & { readonly liner: Liner };

const law = (holds: (lined: Lined, inset: number) => void, numRuns: number): void =>
  fc.assert(
    fc.property(anyLinedEnvelope, (envelope) => {
      const folding = fold(envelope);
      if (folding.liner) holds(folding as Lined, envelope.liner.value);
    }),
    { seed: 12, numRuns },
  );

/** Chords of arcs lie this far inside them. */
const FLAT = 0.02;

const edges = (polygon: Polygon): readonly (readonly [Point, Point])[] =>
  polygon.map((at, index) => [at, polygon[(index + 1) % polygon.length] as Point]);

/** Points along the lining's outline, at most 2 mm apart. */
const around = ({ outline }: Liner): readonly Point[] =>
  edges(flatten(outline)).flatMap(([from, to]) => {
    const count = Math.ceil(distance(from, to) / 2);
    return Array.from({ length: count }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / count,
      y: from.y + ((to.y - from.y) * step) / count,
    }));
  });

function fromSegment(at: Point, [from, to]: readonly [Point, Point]): number {
  const length = distance(from, to) || 1;
  const [x, y] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const along = Math.min(length, Math.max(0, (at.x - from.x) * x + (at.y - from.y) * y));
  return distance(at, { x: from.x + x * along, y: from.y + y * along });
}

/** How far a point lies inside the scores at the left, right and bottom of the face (negative: outside). */
function insideScores({ made }: Folding, { x, y }: Point): number {
  const at = (flap: 'left' | 'right' | 'bottom'): number => made.diagonal / 2 - made.first[flap].fromCorner;
  return Math.min(x + at('left'), at('right') - x, y + at('bottom'));
}

/** The pieces that a lining may cover. */
const covered = ({ pieces }: Folding): readonly Polygon[] =>
  pieces
    .filter(({ kind, flap }) => kind === 'face' || (flap === 'seal' && kind !== 'ear'))
    .map(({ flat }) => flat);

/** Whether a point lies on one of them: by an odd number of edges to its right. */
const isCovered = (pieces: readonly Polygon[], { x, y }: Point): boolean =>
  pieces.some(
    (piece) =>
      edges(piece).filter(
        ([from, to]) =>
          from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x),
      ).length %
        2 ===
      1,
  );

/** How far a point lies from a strip's own area. */
const fromStrip = (at: Point, { from, to, width }: GlueLine): number => {
  const length = distance(from, to);
  const [x, y] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const along = (at.x - from.x) * x + (at.y - from.y) * y;
  const across = Math.abs((at.y - from.y) * x - (at.x - from.x) * y);
  return Math.hypot(Math.max(0, -along, along - length), Math.max(0, across - width / 2));
};

test('a lining lies on the face and the seal flap, at least its inset inside their edges', () => {
  law((lined, inset) => {
    const cut = edges(flatten(lined.cutOutline));
    const points = around(lined.liner);
    const pieces = covered(lined);
    // (With an inset of nothing, points lie on the pieces' own edges.)
    expect(points.filter(({ x, y }) => !isCovered(pieces, { x: x * 0.999999, y: y * 0.999999 }))).toEqual([]);
    const least = (far: (at: Point) => number): number => Math.min(...points.map(far));
    expect(least((at) => insideScores(lined, at))).toBeGreaterThan(inset - 1e-6);
    expect(least((at) => Math.min(...cut.map((edge) => fromSegment(at, edge))))).toBeGreaterThan(
      inset - FLAT,
    );
  }, 200);
});

test('a lining keeps a millimetre clear of every strip of tape or glue', () => {
  law((lined) => {
    for (const strip of lined.glue) {
      const off = around(lined.liner).map((at) => fromStrip(at, strip));
      expect(Math.min(...off)).toBeGreaterThan(1 - FLAT);
    }
  }, 300);
});

test('a lining folds at the scores of the seal flap, from edge to edge of itself', () => {
  law(({ liner, made }) => {
    const outline = edges(flatten(liner.outline));
    const top = bounds(flatten(liner.outline)).max.y;
    const scores = [made.first.seal, ...(made.second ? [made.second.seal] : [])]
      .map(({ fromCorner }) => made.diagonal / 2 - fromCorner)
      .filter((y) => y < top);
    expect(liner.folds.map(({ from }) => from.y)).toEqual(scores.map((y) => expect.closeTo(y, 6)));
    for (const { from, to } of liner.folds) {
      expect(from.x).toBeLessThan(to.x);
      expect(to.y).toBe(from.y);
      for (const end of [from, to])
        expect(Math.min(...outline.map((edge) => fromSegment(end, edge)))).toBeLessThan(1e-6);
    }
  }, 300);
});

test('folded over with a flap that stays on the face, a lining stays within the face', () => {
  law((lined, inset) => {
    const { made, liner } = lined;
    if (made.heights.seal > made.face.height) return;
    const score = (which: 'first' | 'second'): number =>
      made.diagonal / 2 - (made[which] ?? made.first).seal.fromCorner;
    for (const { x, y } of around(liner).filter((at) => at.y > score('second'))) {
      const closed = { x, y: score('first') - (y - score('second')) };
      expect(insideScores(lined, closed)).toBeGreaterThan(
        Math.min(inset, made.face.height - made.heights.seal) - FLAT,
      );
    }
  }, 300);
});

/** Rows and columns of a grid of points, and what shifts them. */
const SAMPLES = 130;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

test('a lining is as large as the inset and the strips leave it: its area is that of a sampled count', () => {
  law((lined, inset) => {
    const { made, glue } = lined;
    const taped = glue.filter(({ on }) => on === 'seal');
    // Where strips run beside a shaped tip, the lining follows the tip: it may be smaller than it must.
    const free = taped.every(({ name }) => name === 'seal-tip') || made.tips.seal.shape === 'pointed';
    const cut = edges(flatten(lined.cutOutline));
    const pieces = covered(lined);
    const { min, max } = bounds(pieces.flat());
    const [across, up] = [(max.x - min.x) / SAMPLES, (max.y - min.y) / SAMPLES];
    let count = 0;
    for (let row = 0; row < SAMPLES; row++) {
      for (let column = 0; column < SAMPLES; column++) {
        // Every row begins elsewhere, every column too, so that no edge of the lining runs along the grid.
        const [right, higher] = [(row * GOLDEN) % 1, (column * GOLDEN) % 1];
        const at = { x: min.x + (column + right) * across, y: min.y + (row + higher) * up };
        const lies =
          insideScores(lined, at) >= inset &&
          isCovered(pieces, at) &&
          taped.every((strip) => insideStrip(made.faceCentre, at, strip) >= 1) &&
          cut.every((edge) => fromSegment(at, edge) >= inset);
        if (lies) count++;
      }
    }
    if (count < 2000) return; // too few points to count
    const sampled = count * across * up;
    const area = pathArea(lined.liner.outline);
    if (free) expect(Math.abs(area - sampled) / sampled).toBeLessThan(0.01);
    else expect(area).toBeLessThan(sampled * 1.01);
  }, 30);
});

/** How far a point lies from a strip that runs on without end, towards a point (negative: on it or beyond). */
function insideStrip(towards: Point, at: Point, { from, to, width }: GlueLine): number {
  const off = ({ x, y }: Point): number =>
    ((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)) / distance(from, to);
  return off(at) * Math.sign(off(towards)) - width / 2;
}
