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

/** Each unit by itself too, since capitals are a slip. */
const MEANT: ReadonlyMap<string, string> = new Map(
  SLIPS.flatMap(([unit, ...slips]) => [unit, ...slips].map((slip) => [slip, unit] as const)),
);
