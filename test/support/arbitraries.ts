import fc from 'fast-check';
import { asMade } from '../../src/folding/as-made.js';
import { flapRegions } from '../../src/folding/outline.js';
import { largestRadius } from '../../src/plane/largest-radius.js';
import type { Envelope, FlapShape } from '../../src/recipe/recipe.js';
import { envelope } from './envelopes.js';

/** A length on a ruler of half millimetres. */
const halfMillimetres = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 2), max: Math.round(max * 2) }).map((steps) => steps / 2);

const flapShape: fc.Arbitrary<FlapShape | null> = fc.oneof(
  fc.constant(null),
  fc.constant({ kind: 'pointed' as const }),
  halfMillimetres(2, 15).map((radius) => ({ kind: 'rounded' as const, radius })),
  halfMillimetres(2, 15).map((cut) => ({ kind: 'blunt' as const, cut, radius: 0 })),
);

const treatment = fc.constantFrom('folded' as const, 'notched' as const);

/** Envelopes of every proportion whose creases cross: flat and box, shifted or not, every tip and corner. */
export const anyEnvelope = fc
  .record({
    width: halfMillimetres(55, 420),
    ratio: fc.double({ min: 1 / 3, max: 3, noNaN: true }),
    seam: halfMillimetres(5, 20),
    depth: fc.oneof(fc.constant(0), halfMillimetres(3, 30)),
    shift: fc.oneof(fc.constant(0), halfMillimetres(0.5, 8)),
    bottom: treatment,
    seal: treatment,
    caliper: fc.constantFrom(0.1, 0.15, 0.3, 0.5),
    step: fc.constantFrom(0.5, 1, 1.5875),
    shapes: fc.record({ flap: flapShape, bottom: flapShape, sides: flapShape }),
  })
  .map(({ width, ratio, seam, depth, shift, bottom, seal, caliper, step, shapes }) =>
    envelope({
      face: { width, height: Math.max(40, Math.round((width / ratio) * 2) / 2) },
      seam,
      depth,
      shift,
      corners: depth > 0 ? { bottom: 'notched', seal: 'notched' } : { bottom, seal },
      caliper,
      step,
      ...shapes,
    }),
  );

/** The same with a lining of any inset, fastened in every way; some with a seal tip as round as its edges allow, or nearly. */
export const anyLinedEnvelope = fc
  .record({
    plain: anyEnvelope,
    inset: fc.oneof(fc.constant(0), halfMillimetres(0.5, 20)),
    fasten: fc.constantFrom('glue' as const, 'tuck' as const, 'seal' as const),
    roundness: fc.option(fc.double({ min: 0.2, max: 1, noNaN: true })),
  })
  .map(({ plain, inset, fasten, roundness }) => ({
    ...plain,
    ...(roundness === null ? {} : { flap: { ...plain.flap, value: roundedTip(plain, roundness) } }),
    liner: { ...plain.liner, value: inset },
    fasten: { ...plain.fasten, value: fasten },
  }));

/** A seal tip rounded to a share of the largest radius that its edges hold. */
function roundedTip(plain: Envelope, share: number): FlapShape {
  const sharp = { ...plain, flap: { ...plain.flap, value: { kind: 'rounded' as const, radius: 1 } } };
  const region = flapRegions(asMade(sharp), plain.caliper.value).seal;
  return { kind: 'rounded', radius: share * largestRadius(region) };
}

const anyLength = fc.oneof(
  fc.double({ min: 0, max: 5000, noNaN: true }),
  fc.double({ min: 0, max: 300, noNaN: true }),
);
const some = <T>(value: fc.Arbitrary<T>) => fc.option(value, { freq: 2 });
const anyShape = some(
  fc.oneof(
    anyLength.map((radius) => ({ kind: 'rounded' as const, radius })),
    fc.tuple(anyLength, anyLength).map(([cut, radius]) => ({ kind: 'blunt' as const, cut, radius })),
    fc.constant({ kind: 'pointed' as const }),
  ),
);

/** What may be wished for an envelope, sense or nonsense. */
export const nonsense = fc.record({
  face: fc
    .record({ width: anyLength, height: anyLength })
    .map(({ width, height }) => ({ width: width + 0.1, height: height + 0.1 })),
  seam: anyLength,
  depth: some(anyLength).map((depth) => depth ?? 0),
  shift: some(anyLength).map((shift) => shift ?? 0),
  blank: some(fc.record({ width: anyLength, height: anyLength })).map(
    (blank) => blank && { width: blank.width + 0.1, height: blank.height + 0.1 },
  ),
  sideMarks: some(fc.tuple(anyLength, anyLength)),
  sealMark: some(anyLength),
  bottomMark: some(anyLength),
  flap: anyShape,
  bottom: anyShape,
  sides: anyShape,
  corners: fc.record({ bottom: treatment, seal: treatment }),
  caliper: fc.double({ min: 0, max: 5, noNaN: true }),
  fasten: fc.constantFrom('glue' as const, 'tuck' as const),
  liner: some(anyLength),
});
