/*
 * Where the seal flap may be decorated, and where address and stamp go. Of a point on the seal flap, t and q are its
 * distances from the two edges of its corner; folded, it lies (M − q, M − t) from that corner, with M the mean of the marks.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { flapZones } from '../../src/folding/flap-zones.js';
import { fold } from '../../src/folding/fold.js';
import type { FlapName, Folding, GlueLine, Piece } from '../../src/folding/folding.js';
import { frontZones } from '../../src/folding/front-zones.js';
import { distance, type Point } from '../../src/plane/point.js';
import { area, bounds, type Polygon } from '../../src/plane/polygon.js';
import { intersect, regionArea, subtract } from '../../src/plane/region.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { envelope, HALF_LETTER, QUARTER_LETTER_BOX, type Wishes } from '../support/envelopes.js';

const INCH = 25.4;

const halfLetter = (wishes: Wishes = {}): Envelope => envelope({ ...HALF_LETTER, tape: 6, ...wishes });
const box = envelope(QUARTER_LETTER_BOX);

/** How far the seal corner and the seal flap's own score lie from the blank's centre. */
const CORNER = (11.25 / Math.SQRT2) * INCH;
const HINGE = CORNER - (7.1875 / Math.SQRT2) * INCH;

test('the flap of the half-letter card is printed 3 mm inside its fold and sides, and inside its tape', () => {
  const { print } = flapZones(fold(halfLetter()));
  const { min, max } = bounds(print as Polygon);
  expect(min.y).toBeCloseTo(HINGE + 3, 6);
  // Tape 6 mm wide lies 1 mm inside both edges of the point: 7 mm from each, which is 7·√2 below the corner.
  expect(max.y).toBeCloseTo(CORNER - 7 * Math.SQRT2, 6);
  // The side is upright for 0.5 mm, then leans in 1 in 8; a line 3 mm inside it lies 3·√(1 + 1/64) further in on the level.
  const half = ((11.25 - 5.0625) / Math.SQRT2) * INCH - 2.5 / 8 - 3 * Math.sqrt(65 / 64);
  expect(max.x).toBeCloseTo(half, 4);
  expect(min.x).toBeCloseTo(-half, 4);
});

test('a flap without tape is printed 3 mm inside all its edges', () => {
  const tucked = halfLetter({ fasten: 'tuck' });
  const { max } = bounds(flapZones(fold(tucked)).print as Polygon);
  expect(max.y).toBeCloseTo(CORNER - 3 * Math.SQRT2, 6);
});

test('raised work keeps 3 mm off the ends of the lower seams, which lie beneath the half-letter flap', () => {
  // A seam is 1 in wide and ends 2 1/8 in along the bottom flap's edge. Beneath the closed seal flap it lies within t =
  // 5 1/16 + 7 3/16 − 11 1/4 = 1 in of an edge, from q = 2·7 3/16 − 11 1/4 − 1 = 2 1/8 in to 3 1/8 in from the other. Of the
  // printed zone, 7 mm in, the seams and 3 mm about them take a rectangle on either side.
  const { print, raised } = flapZones(fold(halfLetter()));
  const taken = (INCH + 3 - 7) * (INCH + 6);
  expect(area(print as Polygon) - regionArea(raised)).toBeCloseTo(2 * taken, 1);
});

test('raised work on a box keeps off the seams in the same way', () => {
  // Means of the marks: 4 and 4 7/8 in. Seams 5/8 in wide, within t = 4 + 4 7/8 − 8 1/4 = 5/8 in of an edge, from q =
  // 2·4 7/8 − 8 1/4 − 5/8 = 7/8 in to 1 1/2 in from the other. The flap is tucked: its zone begins 3 mm in.
  const { print, raised } = flapZones(fold(box));
  const taken = (0.625 * INCH + 3 - 3) * (0.625 * INCH + 6);
  expect(area(print as Polygon) - regionArea(raised)).toBeCloseTo(2 * taken, 1);
});

test('a flap of a few millimetres has no zone', () => {
  const tiny = envelope({
    face: { width: 50, height: 35 },
    seam: 6,
    flap: { kind: 'blunt', cut: 22, radius: 0 },
  });
  expect(flapZones(fold(tiny))).toEqual({ print: null, raised: [] });
});

const strip = ({ from, to, width }: GlueLine): Polygon => {
  const [x, y] = [(to.x - from.x) / distance(from, to), (to.y - from.y) / distance(from, to)];
  return [
    { x: from.x + (y * width) / 2, y: from.y - (x * width) / 2 },
    { x: to.x + (y * width) / 2, y: to.y - (x * width) / 2 },
    { x: to.x - (y * width) / 2, y: to.y + (x * width) / 2 },
    { x: from.x - (y * width) / 2, y: from.y + (x * width) / 2 },
  ];
};

const flapOf = ({ pieces }: Folding, name: FlapName): Piece =>
  pieces.find(({ kind, flap }) => kind === 'flap' && flap === name) as Piece;

/** The least distance between a point and a polygon's edges. */
const toEdges = (at: Point, polygon: Polygon): number =>
  Math.min(
    ...polygon.map((from, index) => {
      const to = polygon[(index + 1) % polygon.length] as Point;
      const along =
        ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / distance(from, to) ** 2;
      const fraction = Math.min(1, Math.max(0, along));
      return distance(at, { x: from.x + (to.x - from.x) * fraction, y: from.y + (to.y - from.y) * fraction });
    }),
  );

/** The closed seal flap lies this much of the flat blank's y turned about; the way back is the same. */
const closed = ({ made }: Folding, polygon: Polygon): Polygon => {
  const first = made.diagonal / 2 - made.first.seal.fromCorner;
  const outer = made.diagonal / 2 - (made.second ?? made.first).seal.fromCorner;
  return polygon.map(({ x, y }) => ({ x, y: first - (y - outer) })).reverse();
};

test('the zone lies on the flap, 3 mm or more inside all its edges, and not on glue', () => {
  let [asked, seen] = [0, 0];
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      asked++;
      const folding = fold(any);
      const { print } = flapZones(folding);
      if (!print) return;
      seen++;
      const flap = flapOf(folding, 'seal').flat;
      expect(regionArea(subtract([print], [flap]))).toBeLessThan(0.01);
      for (const corner of print) expect(toEdges(corner, flap)).toBeGreaterThan(3 - 0.02);
      const glued = folding.glue.filter(({ name }) => name.startsWith('seal')).map(strip);
      expect(regionArea(intersect([print], glued))).toBeLessThan(0.01);
    }),
    { seed: 21, numRuns: 200 },
  );
  expect(seen / asked).toBeGreaterThan(0.6);
});

test('the zone for raised work is part of it, 3 mm or more off the seams beneath the closed flap', () => {
  let [asked, less] = [0, 0];
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      asked++;
      const folding = fold(any);
      const { print, raised } = flapZones(folding);
      if (!print) return;
      expect(regionArea(subtract(raised, [print]))).toBeLessThan(0.01);
      if (regionArea(raised) < area(print) - 1) less++;
      const flap = (name: FlapName): Polygon => flapOf(folding, name).folded as Polygon;
      for (const { name } of folding.glue) {
        if (name.startsWith('seal')) continue;
        const [one, other] =
          name === 'centre'
            ? [flap('left'), flap('right')]
            : [flap('bottom'), flap(name === 'lower-left' ? 'left' : 'right')];
        for (const seam of intersect([one], [other]))
          for (const part of raised.map((polygon) => closed(folding, polygon))) {
            expect(regionArea(intersect([part], [seam]))).toBeLessThan(0.01);
            const near = [...part.map((at) => toEdges(at, seam)), ...seam.map((at) => toEdges(at, part))];
            expect(Math.min(...near)).toBeGreaterThan(3 - 0.02);
          }
      }
    }),
    { seed: 22, numRuns: 200 },
  );
  expect(less / asked).toBeGreaterThan(0.6);
});

// The address of a standardized item lies at least 40 mm below the top edge, at least 15 mm from the right edge and the
// bottom edge, and not more than 140 mm from the right edge: Korea Post, "Size and weight of letter-post items", restating
// the Universal Postal Union's Letter Post Regulations. The corner for stamps is 90 mm wide and 40 mm high, and 15 mm are
// free on the left: Australia Post, "Envelope zones".
test('address and stamp of the half-letter card, seen from the inside, where the front is mirrored', () => {
  const { address, stamp, up, hinge, width, height } = frontZones(halfLetter(), fold(halfLetter()));
  // Face: (11 1/4 − 5 1/16)·√2 = 8.75 in and (11 1/4 − 7 3/16)·√2 = 5.745 in.
  expect(width).toBeCloseTo(6.1875 * Math.SQRT2 * INCH, 6);
  expect(height).toBeCloseTo(4.0625 * Math.SQRT2 * INCH, 6);
  expect(hinge).toBe('top');
  expect(up).toEqual({ x: 0, y: 1 });
  expect(address).toMatchObject({ fromTop: 40, fromRight: 15, width: 125 });
  const panel = bounds(address?.outline as Polygon);
  // The reader's right is the left of the blank.
  expect(panel.min).toEqual({
    x: expect.closeTo(-width / 2 + 15, 6),
    y: expect.closeTo(-height / 2 + 15, 6),
  });
  expect(panel.max).toEqual({
    x: expect.closeTo(-width / 2 + 140, 6),
    y: expect.closeTo(height / 2 - 40, 6),
  });
  const corner = bounds(stamp?.outline as Polygon);
  expect(corner.min).toEqual({ x: expect.closeTo(-width / 2, 6), y: expect.closeTo(height / 2 - 40, 6) });
  expect(corner.max).toEqual({ x: expect.closeTo(-width / 2 + 90, 6), y: expect.closeTo(height / 2, 6) });
});

test('the smallest letter, 140 × 90 mm, has a panel of 110 × 35 mm; anything smaller has none', () => {
  const exactly = (width: number, height: number) => {
    const wished = envelope({
      face: { width, height },
      card: { width: width - 5, height: height - 5 },
      step: 1e-6,
    });
    return frontZones(wished, fold(wished));
  };
  expect(exactly(140, 90).address).toMatchObject({
    width: expect.closeTo(110, 3),
    height: expect.closeTo(35, 3),
  });
  expect(exactly(139, 90)).toMatchObject({ address: null, stamp: null });
  expect(exactly(140, 89)).toMatchObject({ address: null, stamp: null });
});

test('an envelope that opens at the end is read along its long side, its hinge on the left', () => {
  const upright = envelope({ face: { width: 110, height: 160 } });
  const { hinge, stamp, address, width, height } = frontZones(upright, fold(upright));
  expect(hinge).toBe('left');
  expect(width).toBeGreaterThan(height);
  // Turned over about an upright line the blank shows its other side (x to −x); a quarter turn counter-clockwise then puts
  // the seal corner on the left.
  const read = ({ x, y }: Point): Point => ({ x: -y, y: -x });
  const corner = bounds((stamp?.outline ?? []).map(read));
  expect(corner.max).toEqual({ x: expect.closeTo(width / 2, 6), y: expect.closeTo(height / 2, 6) });
  const panel = bounds((address?.outline ?? []).map(read));
  expect(panel.max).toEqual({ x: expect.closeTo(width / 2 - 15, 6), y: expect.closeTo(height / 2 - 40, 6) });
});

test('address and stamp lie on the face, apart from each other, counter-clockwise in the blank’s frame', () => {
  let [asked, seen] = [0, 0];
  fc.assert(
    fc.property(anyEnvelope, (any) => {
      asked++;
      const folding = fold(any);
      const { address, stamp } = frontZones(any, folding);
      if (!address || !stamp) return;
      seen++;
      const face = folding.pieces.find(({ kind }) => kind === 'face') as Piece;
      for (const { outline, width, height } of [address, stamp]) {
        expect(area(outline)).toBeCloseTo(width * height, 6);
        expect(regionArea(subtract([outline], [face.flat]))).toBeLessThan(0.01);
      }
      expect(regionArea(intersect([address.outline], [stamp.outline]))).toBeLessThan(0.01);
    }),
    { seed: 23, numRuns: 200 },
  );
  expect(seen / asked).toBeGreaterThan(0.4);
});
