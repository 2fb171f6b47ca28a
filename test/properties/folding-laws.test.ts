import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import { pathArea } from '../../src/plane/path.js';
import { distance, type Point } from '../../src/plane/point.js';
import { area, type Polygon } from '../../src/plane/polygon.js';
import { intersect, regionArea, subtract } from '../../src/plane/region.js';
import { anyEnvelope } from '../support/arbitraries.js';

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
    const { pieces, cutOutline, offcuts, made } = fold(envelope);
    const together = pieces.reduce((sum, { flat }) => sum + area(flat), 0);
    expect(Math.abs(together - pathArea(cutOutline))).toBeLessThan(0.5); // arcs are flattened to 0.01 mm
    const cutOff = offcuts.reduce((sum, { outline }) => sum + area(outline), 0);
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

test('the width of the lower seams is by how much the marks pass each other', () => {
  law((envelope) => {
    const { pieces, made } = fold(envelope);
    const flap = (name: string) =>
      pieces.find(({ kind, flap: of }) => kind === 'flap' && of === name)?.folded ?? [];
    const { margins } = measure(envelope, fold(envelope));
    const common = intersect([flap('left')], [flap('bottom')])[0] ?? [];
    // Across the diagonal from the face's corner: turned by 45°, the band's lesser extent.
    const across = common.map(({ x, y }) => (x + y) / Math.SQRT2);
    if (common.length === 4) {
      expect(Math.max(...across) - Math.min(...across)).toBeLessThan(margins.seamOverlap + 2 * Math.SQRT2);
    }
    expect(made.heights.bottom).toBeLessThanOrEqual(made.diagonal);
  });
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
