import { figureWords } from '../folding/figure-words.js';
import { readArea } from '../measure/area.js';
import { readMass } from '../measure/mass.js';
import { printShort } from '../measure/number.js';
import { exactLength, otherLength, readDifference, readLength, type Ruler } from '../measure/ruler.js';
import type { FigureChange } from './difference.js';

/** A figure that came out otherwise, in words for whoever makes the envelope. */
export interface FigureRow {
  readonly words: string;
  readonly before: string;
  readonly after: string;
  /** Empty where a side has no figure. */
  readonly difference: string;
}

/** What stands where a figure is unknown, or does not apply. */
const NO_FIGURE = '–';

/**
 * The figures a maker works by: marks along the edge, not the same scores once more square to them. A row for each that
 * is one figure, and for each side where they differ.
 */
export const figureRows = (figures: readonly FigureChange[], ruler: Ruler): readonly FigureRow[] =>
  figures.filter(({ name }) => !SAID_OTHERWISE.test(name)).flatMap((figure) => rowsOf(figure, ruler));

const SAID_OTHERWISE = /-score$|^diagonal$/;

function rowsOf({ name, dimension, before, after }: FigureChange, ruler: Ruler): readonly FigureRow[] {
  const words = figureWords(name);
  const rows = (label: string, from: number | null, to: number | null): readonly FigureRow[] => {
    const readings = readBoth(name, dimension, from, to, ruler);
    return readings ? [{ words: label, ...readings }] : [];
  };
  if (isOne(before) && isOne(after)) return rows(words, before[0] ?? null, after[0] ?? null);
  const sides = name === 'blank' ? ['width', 'height'] : ['left', 'right'];
  return sides.flatMap((side, index) => rows(`${words}, ${side}`, at(before, index), at(after, index)));
}

const isOne = (values: readonly (number | null)[]): boolean => values.every((value) => value === values[0]);

const at = (values: readonly (number | null)[], index: number): number | null =>
  (index < values.length ? values[index] : values[0]) ?? null;

/** Null where both read alike, so that nobody would make them otherwise. */
function readBoth(
  name: string,
  dimension: FigureChange['dimension'],
  from: number | null,
  to: number | null,
  ruler: Ruler,
): Omit<FigureRow, 'words'> | null {
  const { read, difference } = READERS[dimension === 'length' && !LAID_OFF.test(name) ? 'margin' : dimension];
  const reading = (value: number | null): string => (value === null ? NO_FIGURE : read(value, ruler));
  const [before, after] = [reading(from), reading(to)];
  if (before === after) return null;
  return {
    before,
    after,
    difference: from === null || to === null ? '' : difference(to - from, ruler),
  };
}

/** The lengths that are laid off with the ruler; all others follow from them, and are told in decimals. */
const LAID_OFF = /^(blank|.*-mark|liner-.*)$/;

type Read = (value: number, ruler: Ruler) => string;

interface Reader {
  readonly read: Read;
  /** With its sign, the other system beside it where there is one. */
  readonly difference: Read;
}

/** The other system is left out where its decimals show nothing. */
const both = (value: number, own: string, other: string): string =>
  Number.parseFloat(other) === 0 ? signed(value, own) : `${signed(value, own)} (${signed(value, other)})`;

/** A number's text with its sign. */
const signed = (value: number, text: string): string => (value > 0 ? `+${text}` : text);

const area: Read = (mm2, { units }) => readArea(mm2, units);
const count: Read = (value) => printShort(value, 3);

const READERS: Readonly<Record<FigureChange['dimension'] | 'margin', Reader>> = {
  length: {
    read: readLength,
    difference: (mm, ruler) => both(mm, readDifference(mm, ruler.units), otherLength(mm, ruler)),
  },
  margin: {
    read: (mm, { units }) => exactLength(mm, units),
    difference: (mm, ruler) => both(mm, exactLength(mm, ruler.units), otherLength(mm, ruler)),
  },
  area: { read: area, difference: (mm2, ruler) => signed(mm2, area(mm2, ruler)) },
  mass: {
    read: (grams, { units }) => readMass(grams, units).read,
    difference: (grams, { units }) => {
      const { read, other } = readMass(grams, units);
      return both(grams, read, other);
    },
  },
  count: { read: count, difference: (value, ruler) => signed(value, count(value, ruler)) },
};
