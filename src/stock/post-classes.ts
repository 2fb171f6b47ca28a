import { G_PER_POUND, MM_PER } from '../measure/unit.js';

/** The least and the most of a measure, both allowed; null: no limit is stated. */
export interface Bounds {
  readonly min: number | null;
  readonly max: number | null;
}

/** A class of post: what a piece may measure. Lengths mm, mass g. */
export interface PostClass {
  /** Country, and the operator's own word for the class: `us-letter`. */
  readonly name: string;
  /** What the operator, or the body that sets the rule, calls it. */
  readonly title: string;
  /** The longer side of the piece, and the other. */
  readonly length: Bounds;
  readonly height: Bounds;
  readonly thickness: Bounds;
  readonly mass: Bounds;
  /** The most that length, height and thickness come to together; null: no limit is stated. */
  readonly sum: number | null;
  /** Length / height; outside, a piece is refused, or costs more. */
  readonly ratio: (Bounds & { readonly outside: 'refused' | 'surcharge' }) | null;
  /** A piece longer or higher than these costs more if it is thinner than that; null: no such rule is stated. */
  readonly thin: { readonly length: number; readonly height: number; readonly thickness: number } | null;
  /** Whether a box, or a piece of uneven thickness, is refused. */
  readonly evenOnly: boolean;
  /** Which edition of the rules the figures were read in. */
  readonly edition: string;
  /** Ids of stock/sources.ts. */
  readonly sources: string;
  /** Which figure no page confirms; null: each was read on one. */
  readonly fromMemory: string | null;
  /** Where the pages disagree: the other figure, and which counts here; null: they agree. */
  readonly disputed: string | null;
}

type Row = Pick<PostClass, 'name' | 'title' | 'edition' | 'sources'> &
  Partial<Pick<PostClass, 'sum' | 'ratio' | 'evenOnly' | 'fromMemory' | 'disputed'>> & {
    readonly units: 'mm' | 'in';
    readonly thin?: NonNullable<PostClass['thin']>;
    readonly length: Pair;
    readonly height: Pair;
    readonly thickness: Pair;
    /** g beside mm, oz beside in. */
    readonly mass: Pair;
  };

type Pair = readonly [min: number | null, max: number | null];

const US_RATIO = { min: 1.3, max: 2.5, outside: 'surcharge' } as const;
const SQUARE_ROOT = { min: 1.4, max: null, outside: 'refused' } as const;

/** Each row in the units that its source prints, so that it can be read beside it. Prices are left out. */
const ROWS: readonly Row[] = [
  {
    name: 'us-letter',
    title: 'letter (United States)',
    units: 'in',
    length: [5, 11.5],
    height: [3.5, 6.125],
    thickness: [0.007, 0.25],
    mass: [null, 3.5],
    ratio: US_RATIO,
    thin: { length: 6, height: 4.25, thickness: 0.009 },
    edition: 'Domestic Mail Manual 101, 2023-07-09',
    sources: 'dmm23;dmm21;dmm10;postcalc',
  },
  {
    name: 'us-flat',
    title: 'flat, or large envelope (United States)',
    units: 'in',
    length: [null, 15],
    height: [null, 12],
    thickness: [0.007, 0.75],
    mass: [null, 13],
    evenOnly: true,
    edition: 'Domestic Mail Manual 301, 2010-09; mass 2023-07-09',
    sources: 'pb22291;dmm301;pb22213;dmm23',
  },
  {
    name: 'us-international-letter',
    title: 'letter to other countries (United States)',
    units: 'in',
    length: [5.5, 11.5],
    height: [3.5, 6.125],
    thickness: [0.007, 0.25],
    mass: [null, 3.5],
    ratio: US_RATIO,
    edition: 'training manual, undated',
    disputed: 'one page has 5 in as the least length; the stricter 5.5 in counts',
    sources: 'navypc;dms',
  },
  {
    name: 'gb-letter',
    title: 'letter (United Kingdom)',
    units: 'mm',
    length: [null, 240],
    height: [null, 165],
    thickness: [null, 5],
    mass: [null, 100],
    edition: 'undated',
    disputed: 'a page for business mail abroad has 245 mm as the most length; the stricter 240 mm counts',
    sources: 'ofcom;antalis;guard08',
  },
  {
    name: 'gb-large-letter',
    title: 'large letter (United Kingdom)',
    units: 'mm',
    length: [null, 353],
    height: [null, 250],
    thickness: [null, 25],
    mass: [null, 750],
    edition: 'undated',
    sources: 'ofcom;antalis',
  },
  {
    name: 'gb-small-parcel',
    title: 'small parcel (United Kingdom)',
    units: 'mm',
    length: [null, 450],
    height: [null, 350],
    thickness: [null, 160],
    mass: [null, 2000],
    edition: '2024',
    sources: 'boxtopia;antalis',
  },
  {
    name: 'ca-standard',
    title: 'standard letter (Canada)',
    units: 'mm',
    length: [140, 245],
    height: [90, 156],
    thickness: [0.18, 5],
    mass: [2, 50],
    ratio: { min: 1.3, max: 2.6, outside: 'surcharge' },
    edition: '2021-01-11',
    disputed: 'some pages print no ratio; the stricter page counts',
    sources: 'cpreq;cpsize;cppg;cpratio',
  },
  {
    name: 'ca-other',
    title: 'non-standard or oversize letter (Canada)',
    units: 'mm',
    length: [140, 380],
    height: [90, 270],
    thickness: [0.18, 20],
    mass: [3, 500],
    edition: 'undated',
    sources: 'cpreq;cpsize',
  },
  {
    name: 'de-standard',
    title: 'Standardbrief (Germany)',
    units: 'mm',
    length: [140, 235],
    height: [90, 125],
    thickness: [null, 5],
    mass: [null, 20],
    ratio: SQUARE_ROOT,
    edition: '2025-02-12',
    disputed:
      'one page alone has 120 mm as the most height, and 1.414 as the least ratio; the operator’s own 125 mm and 1.4 count',
    sources: 'dpstn;dphelp;dp25',
  },
  {
    name: 'de-kompakt',
    title: 'Kompaktbrief (Germany)',
    units: 'mm',
    length: [100, 235],
    height: [70, 125],
    thickness: [null, 10],
    mass: [null, 50],
    ratio: SQUARE_ROOT,
    edition: '2025-02-12',
    disputed: 'one page alone has 1.414 as the least ratio; the operator’s own 1.4 counts',
    sources: 'dpstn;dphelp;dp25',
  },
  {
    name: 'de-gross',
    title: 'Grossbrief (Germany)',
    units: 'mm',
    length: [100, 353],
    height: [70, 250],
    thickness: [null, 20],
    mass: [null, 500],
    edition: '2025-02-12',
    sources: 'dp25;dphelp;dpeasy;dpsq',
  },
  {
    name: 'de-maxi',
    title: 'Maxibrief (Germany)',
    units: 'mm',
    length: [100, 353],
    height: [70, 250],
    thickness: [null, 50],
    mass: [null, 1000],
    edition: 'undated',
    sources: 'dpsq',
    fromMemory: 'the thickness',
  },
  {
    name: 'au-small',
    title: 'small letter (Australia)',
    units: 'mm',
    length: [null, 240],
    height: [null, 130],
    thickness: [null, 5],
    mass: [null, 250],
    edition: '2024-2025',
    sources: 'apdom;aptips;apcopy',
  },
  {
    name: 'au-large',
    title: 'large letter (Australia)',
    units: 'mm',
    length: [null, 360],
    height: [null, 260],
    thickness: [null, 20],
    mass: [null, 500],
    edition: '2024-2025',
    sources: 'apcmp;apdom;aptips;apcopy',
  },
  {
    name: 'jp-standard',
    title: 'standard-size mail (Japan)',
    units: 'mm',
    length: [140, 235],
    height: [90, 120],
    thickness: [null, 10],
    mass: [null, 50],
    edition: 'after 2024-10',
    sources: 'jpint;jpota;jpguide;jpgem',
  },
  {
    name: 'jp-nonstandard',
    title: 'non-standard mail within the size limits (Japan)',
    units: 'mm',
    length: [140, 340],
    height: [90, 250],
    thickness: [null, 30],
    mass: [null, 1000],
    edition: 'after 2024-10',
    sources: 'jpota;jpguide',
  },
  {
    name: 'jp-nonstandard-over',
    title: 'non-standard mail over the size limits (Japan)',
    units: 'mm',
    length: [140, 600],
    height: [90, null],
    thickness: [null, null],
    mass: [null, 4000],
    sum: 900,
    edition: 'after 2024-10',
    sources: 'jpota;jpguide;jpint',
  },
  {
    name: 'upu-letter',
    title: 'letter-post item between countries',
    units: 'mm',
    length: [140, 600],
    height: [90, null],
    thickness: [null, null],
    mass: [null, 2000],
    sum: 900,
    edition: 'Letter Post Regulations, as restated, undated',
    sources: 'upukr;upucy;upuhr;upuin',
  },
  {
    name: 'upu-standardized',
    title: 'standardized item between countries',
    units: 'mm',
    length: [140, 235],
    height: [90, 120],
    thickness: [null, 5],
    mass: [null, 20],
    ratio: SQUARE_ROOT,
    edition: 'Letter Post Regulations, as restated, undated',
    disputed: 'one page has 125 mm as the most height; the stricter 120 mm counts',
    sources: 'upukr;upucy',
  },
  {
    name: 'be-standardised',
    title: 'standardised letter (Belgium)',
    units: 'mm',
    length: [140, 235],
    height: [90, 125],
    thickness: [0.15, 5],
    mass: [null, 50],
    edition: 'undated',
    sources: 'ibpt',
  },
];

const times = (factor: number, [min, max]: Pair): Bounds => ({
  min: min === null ? null : min * factor,
  max: max === null ? null : max * factor,
});

const GRAMS_BESIDE = { mm: 1, in: G_PER_POUND / 16 } as const;

/** Every class of post that is known, by country. */
export const POST_CLASSES: readonly PostClass[] = ROWS.map(
  ({ units, length, height, thickness, mass, thin, ...row }) => ({
    sum: null,
    ratio: null,
    evenOnly: false,
    fromMemory: null,
    disputed: null,
    ...row,
    length: times(MM_PER[units], length),
    height: times(MM_PER[units], height),
    thickness: times(MM_PER[units], thickness),
    thin: thin
      ? {
          length: thin.length * MM_PER[units],
          height: thin.height * MM_PER[units],
          thickness: thin.thickness * MM_PER[units],
        }
      : null,
    mass: times(GRAMS_BESIDE[units], mass),
  }),
);

const BY_NAME: ReadonlyMap<string, PostClass> = new Map(POST_CLASSES.map((post) => [post.name, post]));

export const postClassNamed = (name: string): PostClass | undefined => BY_NAME.get(name);

export const postClassNames = (): readonly string[] => [...BY_NAME.keys()];
