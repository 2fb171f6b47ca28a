/* Linings whose figures can be worked out by hand. */
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import type { Path } from '../../src/plane/path.js';
import { distance } from '../../src/plane/point.js';
import { envelope, paper, stated, type Wishes } from '../support/envelopes.js';

/** An A6 card's blank of 210 with marks 102 and 132: face 152.735 × 110.309, flap 93.338 high (all √2 halves). */
const a6 = (wishes: Wishes) => envelope({ face: { width: 153, height: 110 }, ...wishes });
const liner = (wishes: Wishes) => {
  const lined = a6(wishes);
  const folding = fold(lined);
  return { folding, outline: folding.liner?.outline, facts: measure(lined, folding).liner };
};

const FACE = {
  width: 210 * Math.SQRT2 - 2 * (102 / Math.SQRT2),
  height: 210 * Math.SQRT2 - 2 * (132 / Math.SQRT2),
};
const FLAP = 132 / Math.SQRT2;

/** Every arc of an outline: its centre and radius. */
const arcs = ({ start, stretches }: Path) =>
  stretches.flatMap((stretch, index) =>
    stretch.kind === 'arc'
      ? [{ centre: stretch.centre, radius: distance(stretch.centre, stretches[index - 1]?.to ?? start) }]
      : [],
  );

test('an envelope that asks for no lining has none', () => {
  expect(liner({})).toMatchObject({ outline: undefined, facts: null });
});

test('a pointed flap: the inset beside the face, √2 insets below the point', () => {
  const { facts } = liner({ liner: 4, fasten: 'tuck' });
  expect(facts?.width).toBeCloseTo(FACE.width - 8, 9);
  expect(facts?.height).toBeCloseTo(FACE.height - 4 + FLAP - 4 * Math.SQRT2, 9);
  expect(facts?.folds).toEqual([expect.closeTo(FACE.height - 4, 9)]);
});

test('a rounded tip: the lining’s arc has the flap’s centre, and a radius less by the inset', () => {
  const { folding, outline } = liner({ liner: 4, fasten: 'seal', flap: { kind: 'rounded', radius: 30 } });
  const [arc, ...more] = outline ? arcs(outline) : [];
  expect(more).toEqual([]);
  expect(arc?.radius).toBeCloseTo(26, 9);
  const flaps = arcs(folding.cutOutline).filter(({ radius }) => Math.abs(radius - 30) < 1e-6);
  expect(flaps).toHaveLength(1);
  expect(arc?.centre.x).toBeCloseTo(flaps[0]?.centre.x ?? NaN, 9);
  expect(arc?.centre.y).toBeCloseTo(flaps[0]?.centre.y ?? NaN, 9);
});

test('a radius of no more than the inset leaves a sharp corner', () => {
  const { outline } = liner({ liner: 4, fasten: 'seal', flap: { kind: 'rounded', radius: 4 } });
  expect(outline && arcs(outline)).toEqual([]);
});

test('a blunt tip with rounded corners has both of them', () => {
  const shape = { kind: 'blunt', cut: 15, radius: 10 } as const;
  const { outline, facts } = liner({ liner: 3, fasten: 'tuck', flap: shape });
  expect(outline && arcs(outline).map(({ radius }) => radius)).toEqual([
    expect.closeTo(7, 9),
    expect.closeTo(7, 9),
  ]);
  expect(facts?.reach).toBeCloseTo(FLAP - 15 - 3, 9);
});

test('tape along the edges of the tip: 8 mm inside them, the tip round about the same centre', () => {
  const { folding, outline, facts } = liner({ liner: 3, flap: { kind: 'rounded', radius: 12 } });
  expect(folding.glue.map(({ name }) => name)).toContain('seal-left');
  // 6 mm of tape, 1 mm on either side: 12 − 8.
  expect(outline && arcs(outline).map(({ radius }) => radius)).toEqual([expect.closeTo(4, 9)]);
  expect(facts?.reach).toBeCloseTo(FLAP - 12 * (Math.SQRT2 - 1) - 8, 9);
  expect(facts?.width).toBeCloseTo(FACE.width - 6, 9);
});

test('tape across the tip: the lining ends 1 mm below it, and a wide inset may cut its arc short', () => {
  const { facts } = liner({ liner: 3, flap: { kind: 'blunt', cut: 12, radius: 0 } });
  expect(facts?.reach).toBeCloseTo(FLAP - 12 - 1 - 6 - 1, 9);
  // R 40: the strip begins where the arc ends, 40·(1 − 1/√2) below the tip. 12 inside, the arc ends lower than that.
  const { outline, facts: wide } = liner({ liner: 12, flap: { kind: 'rounded', radius: 40 } });
  const tip = FLAP - 40 * (Math.SQRT2 - 1);
  expect(wide?.reach).toBeCloseTo(tip - 40 * (1 - Math.SQRT1_2) - 6 - 1, 9);
  expect(outline && arcs(outline).map(({ radius }) => radius)).toEqual([
    expect.closeTo(28, 9),
    expect.closeTo(28, 9),
  ]);
});

test('a tip so round that its inset leaves no slanted edge: the arc runs into the leaning notch edges', () => {
  const { outline, facts } = liner({ liner: 12, fasten: 'tuck', flap: { kind: 'rounded', radius: 104 } });
  expect(outline && arcs(outline).map(({ radius }) => radius)).toEqual([expect.closeTo(92, 9)]);
  // Two leaning and two upright edges, the bottom, and the arc.
  expect(outline?.stretches).toHaveLength(6);
  expect(facts?.reach).toBeCloseTo(FLAP - 104 * (Math.SQRT2 - 1) - 12, 9);
});

test('a box: folded at both scores of the wall', () => {
  const { facts, folding } = liner({
    liner: 4,
    depth: 6,
    fasten: 'tuck',
    corners: { bottom: 'notched', seal: 'notched' },
  });
  const { face, depth } = folding.made;
  expect(facts?.folds).toEqual([
    expect.closeTo(face.height - 4, 9),
    expect.closeTo(face.height - 4 + depth, 9),
  ]);
});

test('an inset that leaves nothing on the face leaves no lining', () => {
  expect(liner({ liner: 80 }).outline).toBeUndefined();
});

test('its mass is its own paper’s; without a weight, neither it nor the envelope’s is known', () => {
  const lined = (weight: number | null) => {
    const made = a6({ liner: 4, fasten: 'tuck' });
    const tissue = paper({ weight: weight === null ? null : stated(weight) });
    const envelope = {
      ...made,
      paper: { ...made.paper, value: paper({ weight: stated(118) }) },
      linerPaper: { ...made.paper, value: tissue },
    };
    return measure(envelope, fold(envelope));
  };
  const { liner: facts, mass, area } = lined(50);
  expect(facts?.mass).toBeCloseTo(((facts?.area ?? NaN) * 50) / 1e6, 9);
  expect(mass).toBeCloseTo((area * 118) / 1e6 + (facts?.mass ?? NaN), 9);
  expect(lined(null)).toMatchObject({ mass: null, liner: { mass: null } });
});
