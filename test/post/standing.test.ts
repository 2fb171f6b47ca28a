import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type PostPiece, postStanding } from '../../src/post/standing.js';
import { POST_CLASSES, type PostClass } from '../../src/stock/post-classes.js';
import { SOURCES } from '../../src/stock/sources.js';

const classNamed = (name: string): PostClass => {
  const found = POST_CLASSES.find((each) => each.name === name);
  if (!found) throw new Error(name);
  return found;
};

/** The published limits (test/reference/postal.json, with the source of each), by the ids of that file. */
const PUBLISHED: Readonly<Record<string, string>> = {
  'us-letter': 'usps_letter',
  'us-flat': 'usps_flat',
  'us-international-letter': 'usps_international_letter',
  'gb-letter': 'rm_letter',
  'gb-large-letter': 'rm_large_letter',
  'gb-small-parcel': 'rm_small_parcel',
  'ca-standard': 'cp_standard',
  'ca-other': 'cp_other',
  'de-standard': 'dp_standard',
  'de-kompakt': 'dp_kompakt',
  'de-gross': 'dp_gross',
  'de-maxi': 'dp_maxi',
  'au-small': 'ap_small',
  'au-large': 'ap_large',
  'jp-standard': 'jp_standard',
  'jp-nonstandard': 'jp_nonstandard_within',
  'jp-nonstandard-over': 'jp_nonstandard_over',
  'upu-letter': 'upu_letter',
  'upu-standardized': 'upu_standardized',
  'be-standardised': 'be_standardised',
};

interface Limits {
  readonly min_mm: number | null;
  readonly max_mm: number | null;
}
interface Published {
  readonly id: string;
  readonly length: Limits;
  readonly height: Limits;
  readonly thickness: Limits & {
    readonly conditional_min?: { readonly min_mm: number; readonly when: string };
  };
  readonly weight: { readonly min: number | null; readonly max_g: number };
  readonly aspect_ratio: { readonly min: number | null; readonly max: number | null } | null;
  readonly sum_of_three_mm_max?: number;
}
const postal = JSON.parse(readFileSync(new URL('../reference/postal.json', import.meta.url), 'utf8')) as {
  readonly operators: readonly { readonly classes: readonly Published[] }[];
};
const published = (name: string): Published => {
  const found = postal.operators.flatMap(({ classes }) => classes).find(({ id }) => id === PUBLISHED[name]);
  if (!found) throw new Error(name);
  return found;
};

test('the table has the published limits, no more classes and no fewer', () => {
  expect(POST_CLASSES.map(({ name }) => name)).toEqual(Object.keys(PUBLISHED));
  for (const { name, length, height, thickness, mass, ratio, sum } of POST_CLASSES) {
    const wanted = published(name);
    for (const [made, limits] of [
      [length, wanted.length],
      [height, wanted.height],
      [thickness, wanted.thickness],
    ] as const) {
      expect(made.min ?? 0, name).toBeCloseTo(limits.min_mm ?? 0, 9);
      expect(made.max ?? 0, name).toBeCloseTo(limits.max_mm ?? 0, 9);
    }
    // The reference prints ounces in grams with three decimals.
    expect(mass.max, name).toBeCloseTo(wanted.weight.max_g, 2);
    expect(mass.min, name).toBe(wanted.weight.min);
    expect(ratio?.min ?? null, name).toBe(wanted.aspect_ratio?.min ?? null);
    expect(ratio?.max ?? null, name).toBe(wanted.aspect_ratio?.max ?? null);
    expect(sum, name).toBe(wanted.sum_of_three_mm_max ?? null);
  }
});

/** A piece in the middle of everything that the class allows. */
function inside({ length, height, thickness, mass, sum, ratio }: PostClass): PostPiece {
  const high = ((height.min ?? 60) + (height.max ?? 140)) / 2;
  const long = Math.max(
    Math.min((length.max ?? 300) - 10, high * (ratio === null ? 1.5 : 1.6), (sum ?? 1e6) - high - 50),
    length.min ?? 0,
  );
  return {
    sides: [long, high],
    thickness: ((thickness.min ?? 0) + (thickness.max ?? 10)) / 2,
    mass: ((mass.min ?? 0) + (mass.max ?? 100)) / 2,
    uneven: false,
  };
}

describe.each(POST_CLASSES.map((post) => [post.name, post] as const))('%s', (_, post) => {
  const good = inside(post);
  const least = 0.01;

  test('takes a piece well within its limits', () => {
    expect(postStanding(good, post)).toMatchObject({
      accepted: true,
      reasons: [],
      surcharges: [],
      unknown: [],
    });
  });

  const measures = (['length', 'height', 'thickness', 'mass'] as const).flatMap((measure) =>
    (['min', 'max'] as const).flatMap((end) => {
      const limit = post[measure][end];
      return limit === null ? [] : [[measure, end, limit] as const];
    }),
  );
  test.each(measures)('%s, %s %d: at the limit, just inside, just outside', (measure, end, limit) => {
    const [long, high] = good.sides;
    const withThis = (value: number): PostPiece =>
      measure === 'length'
        ? { ...good, sides: [value, Math.min(high, value)] }
        : measure === 'height'
          ? { ...good, sides: [Math.max(long, value), value] }
          : { ...good, [measure]: value };
    const said = (value: number) =>
      postStanding(withThis(value), post).reasons.filter((reason) => reason.measure === measure);
    const out = end === 'min' ? -1 : 1;
    const nudge = measure === 'thickness' ? least / 10 : least;
    expect(said(limit)).toEqual([]);
    expect(said(limit - out * nudge)).toEqual([]);
    const value = limit + out * nudge;
    expect(said(value)).toEqual([{ measure, value, limit, bound: end === 'min' ? 'least' : 'most' }]);
    expect(postStanding(withThis(value), post).accepted).toBe(false);
  });

  test('a piece of unknown mass is neither taken nor refused', () => {
    expect(postStanding({ ...good, mass: null }, post)).toMatchObject({ accepted: null, unknown: ['mass'] });
  });
});

describe('the shape of a piece: length / height', () => {
  const of = (long: number, high: number, name: string) =>
    postStanding({ sides: [high, long], thickness: 1, mass: 10, uneven: false }, classNamed(name));

  // Published ratios: No. 10 envelope 230 %, A2 131 %, A6 137 %, A7 138 % (an encyclopaedia's table of envelope sizes).
  test.each([
    [241.3, 104.775, 2.3],
    [146.05, 111.125, 1.31],
    [165.1, 120.65, 1.37],
    [184.15, 133.35, 1.38],
  ])('%d × %d mm is %d, and an ordinary letter in the United States', (long, high, ratio) => {
    expect(Math.round((long / high) * 100) / 100).toBeCloseTo(ratio, 2);
    expect(of(long, high, 'us-letter')).toMatchObject({ accepted: true, surcharges: [] });
  });

  test('a square of 5 in is a letter there, for a surcharge; in Germany it needs the large class', () => {
    const ratio = { measure: 'ratio', value: 1, bound: 'least' };
    expect(of(127, 127, 'us-letter')).toMatchObject({
      accepted: true,
      surcharges: [{ ...ratio, limit: 1.3 }],
    });
    expect(of(140, 140, 'de-standard').reasons).toContainEqual({ ...ratio, limit: 1.4 });
    expect(of(140, 140, 'de-gross')).toMatchObject({ accepted: true, reasons: [] });
  });

  // "C6, B6 and DL all fit": the operator's help page, as restated.
  test.each([
    ['C6', 162, 114],
    ['B6', 176, 125],
    ['DL', 220, 110],
  ])('%s goes as a Standardbrief', (_, long, high) => {
    expect(of(long, high, 'de-standard').accepted).toBe(true);
  });

  test('at the ratio, just inside, just outside', () => {
    expect(of(130, 100, 'us-letter').surcharges).toEqual([]);
    expect(of(130.01, 100, 'us-letter').surcharges).toEqual([]);
    expect(of(129.99, 100, 'us-letter').surcharges).toHaveLength(1);
    expect(of(250, 100, 'us-letter').surcharges).toEqual([]);
    expect(of(250.01, 100, 'us-letter').surcharges).toHaveLength(1);
    expect(of(140, 100, 'de-standard').accepted).toBe(true);
    expect(of(139.99, 100, 'de-standard').accepted).toBe(false);
  });
});

test('no box and nothing uneven goes as a flat in the United States', () => {
  const box: PostPiece = { sides: [300, 200], thickness: 12, mass: 100, uneven: true };
  expect(postStanding(box, classNamed('us-flat')).reasons).toEqual([{ measure: 'uneven' }]);
  expect(postStanding(box, classNamed('gb-large-letter')).accepted).toBe(true);
});

test('three sides together, between countries: at most 900 mm', () => {
  const of = (thickness: number) =>
    postStanding({ sides: [500, 300], thickness, mass: 900, uneven: false }, classNamed('upu-letter'));
  expect(of(99.99).accepted).toBe(true);
  expect(of(100).accepted).toBe(true);
  expect(of(100.01).reasons).toMatchObject([{ measure: 'sum', limit: 900, bound: 'most' }]);
});

test('every class names sources that are known', () => {
  for (const { name, sources } of POST_CLASSES)
    for (const id of sources.split(';')) expect(SOURCES.has(id), `${name}: ${id}`).toBe(true);
});

// Domestic Mail Manual 101, 1.1 and 1.2f: a letter over 6 in long or 4 1/4 in high and under 0.009 in thick is nonmachinable.
describe('a large letter that is thin costs more in the United States', () => {
  const of = (long: number, high: number, thickness: number) =>
    postStanding(
      { sides: [long * 25.4, high * 25.4], thickness: thickness * 25.4, mass: 10, uneven: false },
      classNamed('us-letter'),
    );
  const [limits] = postal.operators
    .flatMap(({ classes }) => classes)
    .filter(({ id }) => id === 'usps_letter');

  test('the table has the published figure', () => {
    expect(classNamed('us-letter').thin?.thickness).toBeCloseTo(
      limits?.thickness.conditional_min?.min_mm ?? 0,
      9,
    );
    expect(limits?.thickness.conditional_min?.when).toBe('length > 6 in or height > 4.25 in');
  });

  test('at the sides and at the thickness, just inside, just outside', () => {
    const thin = { measure: 'thickness', bound: 'least' };
    expect(of(6, 4.25, 0.0075)).toMatchObject({ accepted: true, surcharges: [] });
    expect(of(6.01, 4.25, 0.0075)).toMatchObject({ accepted: true, surcharges: [thin] });
    expect(of(5.99, 4.26, 0.0075)).toMatchObject({ accepted: true, surcharges: [thin] });
    expect(of(6.01, 4.25, 0.009).surcharges).toEqual([]);
    expect(of(6.01, 4.25, 0.0089).surcharges).toHaveLength(1);
    expect(of(6.01, 4.25, 0.0069).accepted).toBe(false);
  });
});
