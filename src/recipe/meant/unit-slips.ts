import { describingWords } from '../../../grammar/words.js';
import { printShort } from '../../measure/number.js';

/** The unit that a word surely meant: `in` for `inches`, `mm` for `MM`; undefined where it would be a guess. */
export const unitMeant = (word: string): string | undefined => MEANT.get(word.toLowerCase());

/** A unit, and what people write for it. */
const SLIPS: readonly (readonly [unit: string, ...slips: readonly string[]])[] = [
  ['in', 'inch', 'inches', 'ins'],
  ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  ['mm', 'mms', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  ['mil', 'pt', 'pts', 'point', 'points', 'mils', 'thou', 'thous'],
  ['um', 'micron', 'microns'],
  ['gsm', 'gms'],
  ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'],
  ['oz', 'ozs', 'ounce', 'ounces'],
  ['%', 'percent'],
];

/** The count of a larger unit in one that is known here: `60 in` for 5 `ft`; undefined where there is no such unit. */
export function inKnownUnit(count: number, word: string): string | undefined {
  const [unit, factor] = LARGER.get(word.toLowerCase()) ?? ['', Infinity];
  return count * factor < MOST ? `${printShort(count * factor, 4)} ${unit}` : undefined;
}

/** Beyond this a count is no help. */
const MOST = 1e6;

const LARGER: ReadonlyMap<string, readonly [unit: string, factor: number]> = new Map(
  (
    [
      ['in', 12, 'ft', 'foot', 'feet'],
      ['in', 36, 'yd', 'yds', 'yard', 'yards'],
      ['cm', 100, 'm', 'metre', 'metres', 'meter', 'meters'],
      ['g', 1000, 'kg', 'kilo', 'kilos', 'kilogram', 'kilograms'],
    ] as const
  ).flatMap(([unit, factor, ...words]) => words.map((word) => [word, [unit, factor]] as const)),
);

/** Whether a word only says what is measured (`1/4 deep`), of a count what is counted (`9 sheets`), or of a price the currency. */
export const isIdle = (word: string, what: string): boolean =>
  what === '`price`' || describingWords.has(word.toLowerCase()) || (COUNTS.has(what) && COUNTED.test(word));

/** What is a count, as findings name it. */
const COUNTS: ReadonlySet<string> = new Set(['`stock`', '`expect per-sheet`', '`expect layers`']);

const COUNTED = /^(?:sheet|piece|blank|envelope|layer|pc)s?$/i;

/** Each unit by itself too, since capitals are a slip. */
const MEANT: ReadonlyMap<string, string> = new Map(
  SLIPS.flatMap(([unit, ...slips]) => [unit, ...slips].map((slip) => [slip, unit] as const)),
);
