import { figureWords } from '../folding/figure-words.js';
import { readArea } from '../measure/area.js';
import { readMass } from '../measure/mass.js';
import { printShort } from '../measure/number.js';
import { exactLength, otherLength, readDifference, readLength, type Ruler } from '../measure/ruler.js';
import { MM_PER } from '../measure/unit.js';
import type { FigureChange } from './difference.js';

/** A figure that came out otherwise, in words for whoever makes the envelope. */
export interface FigureRow {
  readonly words: string;
  readonly before: string;
  readonly after: string;
  /** With its sign, the other system beside it where there is one; empty where a side has no figure. */
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
  const row = (label: string, from: number | null, to: number | null): FigureRow => ({
    words: label,
    ...readBoth(name, dimension, from, to, ruler),
  });
  if (isOne(before) && isOne(after)) return [row(words, before[0] ?? null, after[0] ?? null)];
  const sides = name === 'blank' ? ['width', 'height'] : ['left', 'right'];
  return sides
    .map((side, index) => ({ side, from: at(before, index), to: at(after, index) }))
    .filter(({ from, to }) => from !== to)
    .map(({ side, from, to }) => row(`${words}, ${side}`, from, to));
}

const isOne = (values: readonly (number | null)[]): boolean => values.every((value) => value === values[0]);

const at = (values: readonly (number | null)[], index: number): number | null =>
  (index < values.length ? values[index] : values[0]) ?? null;

function readBoth(
  name: string,
  dimension: FigureChange['dimension'],
  from: number | null,
  to: number | null,
  ruler: Ruler,
): Omit<FigureRow, 'words'> {
  const { read, precise, difference } =
    READERS[dimension === 'length' && isOffRuler(name) ? 'margin' : dimension];
  const alike = from !== null && to !== null && read(from, ruler) === read(to, ruler);
  const reading = (value: number | null): string =>
    value === null ? NO_FIGURE : (alike ? precise : read)(value, ruler);
  return {
    before: reading(from),
    after: reading(to),
    difference: from === null || to === null ? '' : difference(to - from, ruler),
  };
}

type Read = (value: number, ruler: Ruler) => string;

interface Reader {
  readonly read: Read;
  /** With decimals enough to tell two apart that read alike. */
  readonly precise: Read;
  readonly difference: Read;
}

/** Whether a length is told in decimals: margins, and what is never laid on a ruler. */
const isOffRuler = (name: string): boolean =>
  /^(room-.*|crossing|seam-overlap|seam-length|closure|flap-stop|thickness|depth)$/.test(name);

const decimals: Read = (mm, { units }) =>
  `${printShort(mm / MM_PER[units], units === 'mm' ? 3 : 4)} ${units}`;
const otherDifference: Read = (mm, ruler) => signed(mm, otherLength(mm, ruler));
const both = (own: string, other: string): string => `${own} (${other})`;

/** A number's text with its sign. */
const signed = (value: number, text: string): string => (value > 0 ? `+${text}` : text);

const margin: Read = (mm, { units }) => exactLength(mm, units);
const area: Read = (mm2, { units }) => readArea(mm2, units);
const count: Read = (value) => printShort(value, 3);

const READERS: Readonly<Record<FigureChange['dimension'] | 'margin', Reader>> = {
  length: {
    read: readLength,
    precise: decimals,
    difference: (mm, ruler) => both(readDifference(mm, ruler), otherDifference(mm, ruler)),
  },
  margin: {
    read: margin,
    precise: decimals,
    difference: (mm, ruler) => both(signed(mm, margin(mm, ruler)), otherDifference(mm, ruler)),
  },
  area: { read: area, precise: area, difference: (mm2, ruler) => signed(mm2, area(mm2, ruler)) },
  mass: {
    read: (grams, { units }) => readMass(grams, units).read,
    precise: (grams) => `${printShort(grams, 3)} g`,
    difference: (grams, { units }) => {
      const { read, other } = readMass(grams, units);
      return both(signed(grams, read), signed(grams, other));
    },
  },
  count: { read: count, precise: count, difference: (value, ruler) => signed(value, count(value, ruler)) },
};
