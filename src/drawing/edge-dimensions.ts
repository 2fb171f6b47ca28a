import { otherLength, readLength, type Ruler } from '../measure/ruler.js';
import { NEARLY } from '../measure/slack.js';
import { distance, type Point } from '../plane/point.js';
import { lettering, line, type Mark } from './drawing.js';
import { CAP_HEIGHT, type TextMeasure } from './text-measure.js';

/** Sizes on the page, in mm: the ruler's figures, and the other system's beneath. */
export const FIGURE = 2.9;
export const OTHER = 2.5;
/** From one dimension line to the next further out. */
export const LEVEL = 7;
/** An extension line starts this far off the edge and runs as far past its dimension line. */
export const EXTENSION_GAP = 0.8;
const STROKE = 0.9;
/** Between a dimension line and its figures, and between a line and any other lettering. */
export const CLEAR = 0.9;
/** An edge that runs this little to the side is upright. */
const UPRIGHT = 1e-9;

/** What figures are read with, and how many mm on the page a mm of the blank is. */
export interface Measures {
  readonly ruler: Ruler;
  readonly measure: TextMeasure;
  readonly scale: number;
  /** How far off the edge something else is drawn that they keep clear of, in mm on the page. */
  readonly lift?: number;
}

/** A length along an edge, in mm of the blank, and what stands beneath its reading. */
export interface Length {
  readonly length: number;
  readonly beneath: string;
}

/** Lengths with the other system beneath. */
export const inBothSystems = (lengths: readonly number[], ruler: Ruler): readonly Length[] =>
  lengths.map((length) => ({ length, beneath: otherLength(length, ruler) }));

/** Dimension lines one outside the other along the edge from `start` to `end`, both on the page, on its right-hand side. */
export function edgeDimensions(
  start: Point,
  end: Point,
  all: readonly Length[],
  { ruler, measure, scale, lift = 0 }: Measures,
): readonly Mark[] {
  const edge = distance(start, end) || 1;
  const along = { x: (end.x - start.x) / edge, y: (end.y - start.y) / edge };
  const out = { x: along.y, y: -along.x };
  const at = (t: number, off: number): Point => ({
    x: start.x + along.x * t + out.x * off,
    y: start.y + along.y * t + out.y * off,
  });
  // Read from the left, or from the right side of the page (ISO 129-1, from memory), whichever way the edge runs; figures
  // stand on the upper side of their line.
  const forwards = Math.abs(along.x) < UPRIGHT ? along.y > 0 : along.x > 0;
  const angleDegrees = (Math.atan2(along.y, along.x) * 180) / Math.PI + (forwards ? 0 : 180);
  const upwards = forwards ? -1 : 1;
  const outermost = lift + all.length * LEVEL;
  const dimensioned = all.map(({ length, beneath }): Dimension => {
    const reading = readLength(length, ruler);
    const wide = Math.max(measure(reading, FIGURE, 'regular'), measure(beneath, OTHER, 'regular'));
    const to = length * scale;
    return { to, reading, beneath, wide, inside: wide + 2 * CLEAR + 2 * STROKE <= to };
  });
  return [
    line('dimension', at(0, EXTENSION_GAP), at(0, outermost + EXTENSION_GAP)),
    ...inLevels(dimensioned, edge).flatMap(
      ({ to, reading, beneath, wide, inside, middle, beyond }, level) => {
        const off = lift + (level + 1) * LEVEL;
        const from = beyond + CLEAR + STROKE;
        const text = (words: string, size: number, aside: number): Mark =>
          lettering(
            words,
            at(inside ? middle : from, off + upwards * aside),
            size,
            {
              anchor: inside ? 'middle' : forwards ? 'start' : 'end',
              angleDegrees,
            },
            'dimension',
          );
        return [
          line('dimension', at(to, EXTENSION_GAP), at(to, off + EXTENSION_GAP)),
          line('dimension', at(0, off), at(inside ? to : from + wide, off)),
          stroke(at, 0, off),
          stroke(at, to, off),
          text(reading, FIGURE, CLEAR),
          text(beneath, OTHER, -CLEAR - OTHER * CAP_HEIGHT),
        ];
      },
    ),
  ];
}

interface Dimension {
  /** Where it ends along the edge, on the page. */
  readonly to: number;
  readonly reading: string;
  readonly beneath: string;
  /** How wide its figures are. */
  readonly wide: number;
  /** Whether it is long enough to hold them. */
  readonly inside: boolean;
}

/** A dimension at its level, with the places for its figures along the edge. */
interface Placed extends Dimension {
  /** Their middle, where they stand between its ends: in the widest gap between the extension lines that cross it. */
  readonly middle: number;
  /** Where they begin, if it is too short: beyond its end, in the first gap between those that reach its level. */
  readonly beyond: number;
}

/**
 * Dimensions from the innermost level out: the shortest first; but one whose figures find no gap on the edge goes outermost,
 * where no other's extension line reaches.
 */
function inLevels(dimensions: readonly Dimension[], edge: number): readonly Placed[] {
  const room = ({ to, wide }: Dimension, further: readonly Dimension[]): number => {
    const stops = [...further.map((other) => other.to), edge].filter((stop) => stop <= edge + NEARLY);
    return roomAfter(
      to,
      stops.sort((a, b) => a - b),
      wide + 2 * (CLEAR + STROKE),
    );
  };
  const isCrowded = (one: Dimension): boolean => !one.inside && room(one, dimensions) > edge - NEARLY;
  const levels = [
    ...dimensions.filter((one) => !isCrowded(one)),
    ...dimensions.filter((one) => isCrowded(one)),
  ];
  return levels.map((one, level) => {
    const further = levels.slice(level + 1);
    return { ...one, middle: middleOfWidest(one, further), beyond: room(one, [one, ...further]) };
  });
}

function middleOfWidest({ to }: Dimension, further: readonly Dimension[]): number {
  const crossings = further.map((other) => other.to).filter((crossing) => crossing < to - NEARLY);
  const stops = [0, ...crossings.sort((a, b) => a - b), to];
  const gaps = stops.slice(1).map((end, index) => ({ from: stops[index] ?? 0, end }));
  const widest = gaps.reduce((best, gap) => (gap.end - gap.from > best.end - best.from ? gap : best));
  return (widest.from + widest.end) / 2;
}

/** Where the first gap of a width starts at or after `from`, between stops in order; past them all where none does. */
function roomAfter(from: number, stops: readonly number[], width: number): number {
  const starts = stops.filter((stop) => stop >= from - NEARLY);
  const free = starts.find((start, index) => (starts[index + 1] ?? Infinity) - start >= width);
  return free ?? from;
}

/** The end of a dimension line: an oblique stroke. */
const stroke = (at: (t: number, off: number) => Point, t: number, off: number): Mark =>
  line('dimension', at(t - STROKE / 2, off - STROKE / 2), at(t + STROKE / 2, off + STROKE / 2));
