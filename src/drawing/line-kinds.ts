import type { Layer, Mark } from './drawing.js';
import { INKS, type Ink } from './inks.js';

/** How a layer's lines are drawn: told apart without colour. */
export interface LineKind {
  /** Line type and number of its use, ISO 128-2. */
  readonly iso: string;
  /** mm on the page, whatever the drawing's scale; 0: no line, the shape is filled. */
  readonly width: number;
  /** Dash, gap, dash, gap …, mm; none: continuous. */
  readonly dashes: readonly number[];
  /** Where a medium has colours; never the only difference. */
  readonly ink: Ink;
}

/** Wide and narrow lines are 2 : 1 (ISO 128-2); this group suits a true-size drawing that is cut by hand. */
const WIDE = 0.5;
const NARROW = 0.25;
/** For lines that only set a page in order; the thinnest of the series, from memory. */
const HAIRLINE = 0.13;

/** Lengths of elements in line widths (ISO 128-2, from memory). */
const LONG = 24;
const DASH = 12;
const SHORT = 6;
const DOT = 0.5;
const GAP = 3;

const kind = (iso: string, width: number, ...elements: readonly number[]): LineKind => ({
  iso,
  width,
  dashes: elements.flatMap((element) => [element * width, GAP * width]),
  ink: INKS.black,
});

const inked = (ink: Ink, lines: LineKind): LineKind => ({ ...lines, ink });

/** A surface: filled, without a line. */
const surface = (ink: Ink): LineKind => ({ iso: '', width: 0, dashes: [], ink });

/**
 * Sources disagree on how a bend is drawn on a flat blank (continuous narrow, or long-dashed double-dotted narrow), so
 * the habit of paper folders is kept: dashes fold towards the reader, dashes with dots away. A key is always printed.
 */
export const LINE_KINDS: Readonly<Record<Layer, LineKind>> = {
  inside: surface(INKS.shade),
  'show-side': surface(INKS.paper),
  card: surface(INKS.paper),
  cut: kind('01.2', WIDE),
  blank: kind('01.1', NARROW),
  waste: kind('01.1', HAIRLINE),
  score: inked(INKS.blue, kind('02.1', NARROW, DASH)),
  'second-score': inked(INKS.green, kind('08.1', NARROW, LONG, SHORT)),
  'odd-score': inked(INKS.vermilion, kind('04.1', NARROW, LONG, DOT)),
  mark: kind('01.1', NARROW),
  seam: inked(INKS.orange, kind('01.1', HAIRLINE)),
  // Narrow dots cannot be seen on a screen.
  glue: inked(INKS.orange, kind('07.2', WIDE, DOT)),
  zone: inked(INKS.purple, kind('04.2', WIDE, LONG, DOT)),
  'raised-zone': inked(INKS.purple, kind('05.1', NARROW, LONG, DOT, DOT)),
  lining: kind('01.2', WIDE),
  'lining-fold': inked(INKS.blue, kind('02.1', NARROW, DASH)),
  edge: kind('01.2', NARROW),
  hidden: kind('02.1', HAIRLINE, DASH),
  dimension: kind('01.1', HAIRLINE),
  join: kind('05.1', HAIRLINE, LONG * 2, DOT * 2, DOT * 2),
  page: kind('01.1', NARROW),
  scale: kind('01.1', NARROW),
  sample: kind('01.1', NARROW),
  rule: kind('01.1', HAIRLINE),
  lettering: kind('01.1', NARROW),
};

/** How a mark is drawn: as its layer is, or as the layer that it is a sample of. */
export const lineKindOf = ({ layer, like }: Mark): LineKind => LINE_KINDS[like ?? layer];
