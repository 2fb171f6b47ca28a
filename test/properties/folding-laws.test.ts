import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import { waste } from '../../src/folding/waste.js';
import { pathArea } from '../../src/plane/path.js';
import { distance, type Point } from '../../src/plane/point.js';
import { area, type Polygon } from '../../src/plane/polygon.js';
import { intersect, regionArea, subtract } from '../../src/plane/region.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { envelope } from '../support/envelopes.js';

const law = (holds: (envelope: Parameters<typeof fold>[0]) => void, numRuns = 200): void =>
  fc.assert(fc.property(anyEnvelope, holds), { seed: 4, numRuns });

const edges = (polygon: Polygon): readonly number[] =>
  polygon.map((at, index) => distance(at, polygon[(index + 1) % polygon.length] as Point));

test('folding neither stretches nor shrinks paper: areas and edge lengths stay', () => {
  law((envelope) => {
    for (const { flat, folded } of fold(envelope).pieces) {
      if (!folded) continue;
      expect(Math.abs(area(folded))).toBeCloseTo(Math.abs(area(flat)), 6);
      edges(folded).forEach((length, index) => expect(length).toBeCloseTo(edges(flat)[index] as number, 9));
    }
  });
});

test('the pieces put together again are the cut blank, and with what was cut off the whole blank', () => {
  law((envelope) => {
    const folding = fold(envelope);
    const { pieces, cutOutline, made } = folding;
    const together = pieces.reduce((sum, { flat }) => sum + area(flat), 0);
    expect(Math.abs(together - pathArea(cutOutline))).toBeLessThan(0.5); // arcs are flattened to 0.01 mm
    const cutOff = waste(folding).reduce((sum, { outline }) => sum + area(outline), 0);
    expect(Math.abs(together + cutOff - made.blank.width * made.blank.height)).toBeLessThan(0.5);
  });
});

test('what lies on the back and what is bare add up to the face', () => {
  law((envelope) => {
    const { made, pieces, bare } = fold(envelope);
    const { x, y } = made.faceCentre;
    const [right, top] = [made.face.width / 2, made.face.height / 2];
    const back = [
      { x: x - right, y: y - top },
      { x: x + right, y: y - top },
      { x: x + right, y: y + top },
      { x: x - right, y: y + top },
    ];
    const folded = pieces.flatMap((piece) => (piece.folded ? [piece.folded] : []));
    const covered = regionArea(subtract([back], subtract([back], folded)));
    expect(Math.abs(covered + regionArea(bare) - made.face.width * made.face.height)).toBeLessThan(0.1);
  });
});

test('computing back from the marks gives the facts', () => {
  law((envelope) => {
    const { blank, face, scores, shift, depth, diagonal } = measure(envelope, fold(envelope));
    const first = (flap: keyof typeof scores): number => scores[flap][0]?.alongEdge ?? NaN;
    const full = (blank.width + blank.height) / Math.SQRT2;
    expect(face.width).toBeCloseTo(full - (first('left') + first('right')) / Math.SQRT2, 9);
    expect(face.height).toBeCloseTo(full - (first('seal') + first('bottom')) / Math.SQRT2, 9);
    expect(shift).toBeCloseTo((first('seal') - first('bottom')) / Math.SQRT2 / 2, 9);
    if (depth > 0) expect(depth).toBeGreaterThanOrEqual(envelope.depth.value - 1e-9);
    expect(diagonal).toBeCloseTo(Math.hypot(blank.width, blank.height), 9);
  });
});

test('the width of the lower seams is by how much the marks pass each other, measured on the overlap itself', () => {
  const pointed = { kind: 'pointed' } as const;
  const anyFlat = fc.record({
    face: fc.record({
      width: fc.integer({ min: 100, max: 300 }),
      height: fc.integer({ min: 100, max: 300 }),
    }),
    seam: fc.integer({ min: 5, max: 20 }),
    shift: fc.integer({ min: 0, max: 8 }),
  });
  fc.assert(
    fc.property(anyFlat, (wishes) => {
      const flat = envelope({ ...wishes, flap: pointed, bottom: pointed, sides: pointed });
      const folding = fold(flat);
      const flap = (name: string) =>
        folding.pieces.find((piece) => piece.kind === 'flap' && piece.flap === name)?.folded ?? [];
      const common = intersect([flap('left')], [flap('bottom')]).flat();
      // The seam runs up and to the right from the face's corner; its width is square to that.
      const across = common.map(({ x, y }) => (x - y) / Math.SQRT2);
      const width = Math.max(...across) - Math.min(...across);
      expect(width).toBeCloseTo(measure(flat, folding).margins.seamOverlap, 3);
    }),
    { seed: 8, numRuns: 200 },
  );
});

test('whatever is derived lies on the ruler', () => {
  law((envelope) => {
    const { made } = fold(envelope);
    const onRuler = (length: number): void => {
      const steps = length / envelope.step.value;
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
    };
    onRuler(made.blank.width);
    for (const { alongEdge } of Object.values(made.first)) onRuler(alongEdge);
    for (const { alongEdge } of Object.values(made.second ?? {})) onRuler(alongEdge);
    for (const { cutMark, byDefault } of Object.values(made.tips)) if (byDefault) onRuler(cutMark);
  });
});
