/* Every rounding that is asked for is a true arc of that radius in the outline that is cut. */
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { sweep } from '../../src/plane/path.js';
import { distance } from '../../src/plane/point.js';
import { envelope, type Wishes } from '../support/envelopes.js';

/** The outline's arcs, by radius and the angle that they turn through, in degrees (negative: clockwise, into a notch). */
function arcs(wishes: Wishes): readonly string[] {
  const { start, stretches } = fold(envelope(wishes)).cutOutline;
  let from = start;
  return stretches.flatMap((stretch) => {
    const arc =
      stretch.kind === 'arc'
        ? [
            `${distance(from, stretch.centre).toFixed(3)} mm, ${((sweep(from, stretch) * 180) / Math.PI).toFixed(1)}°`,
          ]
        : [];
    if (stretch.kind === 'arc')
      expect(distance(stretch.to, stretch.centre)).toBeCloseTo(distance(from, stretch.centre), 9);
    from = stretch.to;
    return arc;
  });
}

const times = <T>(count: number, what: T): readonly T[] => Array.from({ length: count }, () => what);

const FOLDED = { bottom: 'folded', seal: 'folded' } as const;
const NOTCHED = { bottom: 'notched', seal: 'notched' } as const;

test('a rounded tip is one arc through a right angle', () => {
  expect(arcs({ corners: FOLDED, flap: { kind: 'rounded', radius: 12 } })).toEqual(['12.000 mm, 90.0°']);
  expect(arcs({ corners: FOLDED, sides: { kind: 'rounded', radius: 7.5 } })).toEqual(
    times(2, '7.500 mm, 90.0°'),
  );
});

test('a blunt tip with rounded corners is two arcs through half a right angle each', () => {
  expect(arcs({ corners: FOLDED, bottom: { kind: 'blunt', cut: 15, radius: 4 } })).toEqual(
    times(2, '4.000 mm, 45.0°'),
  );
});

test.each([
  // 1.5 mm across, or what the stand-back of 0.5 mm or two thicknesses allows.
  [0.15, '0.500'],
  [0.3, '0.600'],
  [0.5, '0.750'],
])('in paper %f mm thick a notch ends in an arc of %s mm, turning into the notch', (caliper, radius) => {
  expect(arcs({ corners: { bottom: 'folded', seal: 'notched' }, caliper })).toEqual(
    times(2, `${radius} mm, -90.0°`),
  );
  expect(arcs({ corners: NOTCHED, depth: 6, caliper })).toEqual(times(4, `${radius} mm, -90.0°`));
});

test('all at once: every rounding keeps its own radius', () => {
  const all = arcs({
    corners: NOTCHED,
    flap: { kind: 'rounded', radius: 12 },
    bottom: { kind: 'blunt', cut: 15, radius: 4 },
    sides: { kind: 'rounded', radius: 7.5 },
  });
  expect([...all].sort()).toEqual(
    [
      '12.000 mm, 90.0°',
      ...times(2, '4.000 mm, 45.0°'),
      ...times(2, '7.500 mm, 90.0°'),
      ...times(4, '0.500 mm, -90.0°'),
    ].sort(),
  );
});

test('an envelope that asks for no rounding has no arc', () => {
  expect(arcs({ corners: FOLDED })).toEqual([]);
});
