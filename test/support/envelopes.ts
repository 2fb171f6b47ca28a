import type { Envelope, Paper, Size } from '../../src/recipe/recipe.js';
import type { Origin, Stated } from '../../src/recipe/origin.js';
import { source } from '../../src/text/source.js';

const NOWHERE = { source: source('made-up.plica', ''), start: 0, end: 0 };
const origin: Origin = { kind: 'written', span: NOWHERE };

/** A value as if a recipe stated it. */
export const stated = <T>(value: T): Stated<T> => ({ value, origin });

/** What a test wants to say about an envelope; every length in mm, nothing derived from anything else. */
export interface Wishes {
  readonly card?: Size;
  readonly face?: Size;
  readonly bulk?: number;
  readonly depth?: number;
  readonly shift?: number;
  readonly seam?: number;
  readonly blank?: Size | null;
  readonly sideMarks?: readonly [number, number] | null;
  readonly sealMark?: number | null;
  readonly bottomMark?: number | null;
  readonly corners?: Envelope['corners']['value'];
  readonly flap?: Envelope['flap']['value'];
  readonly bottom?: Envelope['bottom']['value'];
  readonly sides?: Envelope['sides']['value'];
  readonly fasten?: Envelope['fasten']['value'];
  readonly step?: number;
  readonly tolerance?: number;
  readonly caliper?: number;
  readonly tape?: number;
  readonly paper?: Paper | null;
  readonly liner?: number | null;
  readonly linerPaper?: Paper | null;
  readonly linerCaliper?: number;
}

/** An envelope stated outright, without a recipe's text: for tests of the folding alone. */
export function envelope(wishes: Wishes): Envelope {
  const face = wishes.face ?? { width: 160, height: 110 };
  return {
    name: 'made-up',
    span: NOWHERE,
    statement: NOWHERE,
    units: 'mm',
    title: stated('Made up'),
    note: stated([]),
    tags: stated([]),
    card: stated(wishes.card ?? { width: face.width - 5, height: face.height - 5 }),
    bulk: stated(wishes.bulk ?? 1),
    contents: stated(null),
    depth: stated(wishes.depth ?? 0),
    ease: stated({ width: 5, height: 5 }),
    face: stated(face),
    seam: stated(wishes.seam ?? 12),
    blank: stated(wishes.blank ?? null),
    sideMarks: stated(wishes.sideMarks ?? null),
    sealMark: stated(wishes.sealMark ?? null),
    bottomMark: stated(wishes.bottomMark ?? null),
    opens: stated(face.width >= face.height ? 'side' : 'end'),
    shift: stated(wishes.shift ?? 0),
    flap: stated(wishes.flap ?? null),
    bottom: stated(wishes.bottom ?? null),
    sides: stated(wishes.sides ?? null),
    corners: stated(wishes.corners ?? { bottom: 'folded', seal: 'notched' }),
    fasten: stated(wishes.fasten ?? 'glue'),
    step: stated(wishes.step ?? 0.5),
    tolerance: stated(wishes.tolerance ?? 0.8),
    paper: stated(wishes.paper ?? null),
    caliper: { value: wishes.caliper ?? 0.15, basis: 'stated' },
    tape: stated(wishes.tape ?? 6),
    liner: stated(wishes.liner ?? null),
    linerPaper: stated(wishes.linerPaper ?? wishes.paper ?? null),
    linerCaliper: { value: wishes.linerCaliper ?? wishes.caliper ?? 0.15, basis: 'stated' },
    post: stated([]),
    expects: [],
    expectsPost: [],
    layers: [],
  };
}

const INCH = 25.4;

/** Common practice, no source: blank 11 1/4 in, side marks 5 1/16 in, seal and bottom marks 7 3/16 in. */
export const HALF_LETTER: Wishes = {
  card: { width: 8.5 * INCH, height: 5.5 * INCH },
  blank: { width: 11.25 * INCH, height: 11.25 * INCH },
  sideMarks: [5.0625 * INCH, 5.0625 * INCH],
  sealMark: 7.1875 * INCH,
  bottomMark: 7.1875 * INCH,
};

/** Common practice, no source: a box 1/4 in deep from a blank of 8 1/4 in; first marks 4 3/16 and 5 1/16 in. */
export const QUARTER_LETTER_BOX: Wishes = {
  card: { width: 5.5 * INCH, height: 4.25 * INCH },
  blank: { width: 8.25 * INCH, height: 8.25 * INCH },
  sideMarks: [4.1875 * INCH, 4.1875 * INCH],
  sealMark: 5.0625 * INCH,
  bottomMark: 5.0625 * INCH,
  depth: 0.25 * INCH,
  step: INCH / 16,
  corners: { bottom: 'notched', seal: 'notched' },
  fasten: 'tuck',
};

/** A paper of which nothing is stated but its name, and what is wished. */
export const paper = (wishes: Partial<Paper> = {}): Paper => ({
  name: 'office',
  span: NOWHERE,
  title: 'Office',
  sheet: null,
  weight: null,
  caliper: null,
  grain: null,
  price: null,
  stock: null,
  layers: [],
  ...wishes,
});
