import { printShort } from '../measure/number.js';
import { readGraduation } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import { MM_PER, UNITS, type Units } from '../measure/unit.js';
import type { ExpectDimension } from '../recipe/expect-names.js';
import type { PropertyName, ValueOf } from '../recipe/properties.js';
import type { FlapShape, Size } from '../recipe/recipe.js';

/** What a property's value comes to, as a recipe could write it (`5 1/2 x 8 1/2 in`); null where it is but words. */
export function readingOf(name: PropertyName, value: unknown, units: Units): string | null {
  const read = READINGS[name] as ((value: unknown, units: Units) => string) | undefined;
  return read && value !== null ? read(value, units) : null;
}

/** Whether a text tells its value by itself: numbers, units and words of the language, but no names and no sums. */
export const tellsItself = (text: string): boolean =>
  !/[a-z(+*/-]/i.test(
    text
      .replaceAll(/\d+[/⁄]\d+|(?<![a-z-])x(?![a-z-])|\+-/gi, '')
      .replaceAll(/[a-z][a-z0-9-]*/gi, (word) => (UNITS.has(word) || WORDS.has(word) ? '' : word)),
  );

const WORDS: ReadonlySet<string> = new Set(['pointed', 'rounded', 'blunt', 'inset', 'default']);

type Read<T> = (value: T, units: Units) => string;

/** As a ruler of the units has it; else as one of millimetres has it; else in decimals. */
export const lengthReading: Read<number> = (mm, units) =>
  readGraduation(mm, units) ?? readGraduation(mm, 'mm') ?? `${printShort(mm / MM_PER[units], 5)} ${units}`;

const listReading: Read<readonly number[]> = (lengths, units) =>
  (lengths.every((length) => sameLength(length, lengths[0] ?? 0)) ? lengths.slice(0, 1) : lengths)
    .map((length) => lengthReading(length, units))
    .join(', ');

const sizeReading: Read<Size> = (size, units) => {
  const [width, height] = [lengthReading(size.width, units), lengthReading(size.height, units)];
  return `${unitOf(width) === unitOf(height) ? width.replace(/ [a-z]+$/, '') : width} x ${height}`;
};

const unitOf = (length: string): string => length.replace(/^.* /, '');

/** One length where both sides are alike. */
const squareReading: Read<Size> = (size, units) =>
  sameLength(size.width, size.height) ? lengthReading(size.width, units) : sizeReading(size, units);

const massReading: Read<number> = (grams) => `${printShort(grams, 4)} g`;
const numberReading: Read<number> = (value) => printShort(value, 4);

const shapeReading: Read<FlapShape> = (shape, units) => {
  if (shape.kind === 'pointed') return shape.kind;
  const rounded = shape.radius > 0 ? [`rounded ${lengthReading(shape.radius, units)}`] : [];
  return [...(shape.kind === 'blunt' ? [`blunt ${lengthReading(shape.cut, units)}`] : []), ...rounded].join(
    ' ',
  );
};

const READINGS: { readonly [Name in PropertyName]?: Read<ValueOf<Name>> } = {
  card: sizeReading,
  bulk: lengthReading,
  contents: massReading,
  depth: lengthReading,
  ease: squareReading,
  face: sizeReading,
  seam: lengthReading,
  blank: squareReading,
  'side-mark': listReading,
  'seal-mark': lengthReading,
  'bottom-mark': lengthReading,
  shift: lengthReading,
  flap: shapeReading,
  bottom: shapeReading,
  sides: shapeReading,
  step: lengthReading,
  tolerance: lengthReading,
  tape: lengthReading,
  liner: (inset, units) => `inset ${lengthReading(inset, units)}`,
  sheet: sizeReading,
  weight: (gsm) => `${printShort(gsm, 4)} gsm`,
  caliper: lengthReading,
  price: numberReading,
  stock: numberReading,
};

/** The same of an expected value, by what it measures. */
export const EXPECTED_READINGS: Readonly<Record<ExpectDimension, Read<number>>> = {
  length: lengthReading,
  area: (mm2) => `${printShort(mm2, 4)} mm²`,
  mass: massReading,
  number: numberReading,
};
