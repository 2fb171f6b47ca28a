import { type Block, LEADING, paragraph } from '../../drawing/block.js';
import type { Weight } from '../../drawing/drawing.js';
import { place } from '../../drawing/place.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure, wrap } from '../../drawing/text-measure.js';
import type { Point } from '../../plane/point.js';
import { operatorsOf } from '../pdf/operators.js';
import type { Item, Run } from './page.js';
import { WIDTH } from './sizes.js';

/** A strip across a page, hanging from its upper left corner; in mm. What is set there is known once its place is. */
export interface Strip {
  readonly height: number;
  readonly items: (corner: Point) => readonly Item[];
  /** Clear paper above it where something stands there; left out: what is usual. */
  readonly above?: number;
  /** Stays with the strip that follows. */
  readonly keep?: boolean;
}

/** The lines of a block that holds nothing but lettering. */
export const runsOf = (
  { drawing }: Block,
  corner: Point,
  measure: TextMeasure,
  ink: Run['ink'] = 'full',
): readonly Run[] =>
  operatorsOf(place(drawing, corner), measure).runs.map((run) => (ink === 'full' ? run : { ...run, ink }));

/** A heading or a paragraph. */
export const wordStrip = (
  role: 'H1' | 'H2' | 'H3' | 'P',
  block: Block,
  measure: TextMeasure,
  ink: Run['ink'] = 'full',
): Strip => ({
  height: block.height,
  items: (corner) => [{ role, runs: runsOf(block, corner, measure, ink) }],
});

/** Lines that stay together: a text of more is set in several strips, which may stand on several pages. */
const MOST_LINES = 24;

/** A text of any length as headings or paragraphs of one size, in mm. */
export function textStrips(
  role: 'H1' | 'H2' | 'P',
  text: string,
  size: number,
  measure: TextMeasure,
  { weight = 'regular', ink = 'full' }: { readonly weight?: Weight; readonly ink?: Run['ink'] } = {},
): readonly Strip[] {
  const lines = wrap(text, WIDTH, size, measure, weight);
  const parts = Array.from({ length: Math.ceil(lines.length / MOST_LINES) }, (_, part) =>
    lines.slice(part * MOST_LINES, (part + 1) * MOST_LINES),
  );
  return parts.map((part, index) => ({
    ...wordStrip(role, paragraph(part.join(' '), WIDTH, size, measure, weight), measure, ink),
    ...(index > 0 ? { above: (LEADING - CAP_HEIGHT - DESCENT) * size } : {}),
  }));
}

/** A picture with what is to be seen in it. */
export const pictureStrip = (block: Block, alt: string, measure: TextMeasure): Strip => ({
  height: block.height,
  items: (corner) => [{ role: 'Figure', alt, ...operatorsOf(place(block.drawing, corner), measure) }],
});

/** One strip over another, `gap` mm apart. */
export const over = (gap: number, upper: Strip, lower: Strip): Strip => ({
  height: upper.height + gap + lower.height,
  items: ({ x, y }) => [...upper.items({ x, y }), ...lower.items({ x, y: y - upper.height - gap })],
});
