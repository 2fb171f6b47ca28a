import { SHAPES } from '../../fit/fit-sheet.js';
import type { Shape } from '../../fit/fit.js';
import type { Units } from '../../measure/unit.js';
import type { Size } from '../../recipe/recipe.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { readLength } from '../read-length.js';
import { readSize } from '../read-size.js';

/** What is asked. Lengths mm. */
export type Order =
  | {
      readonly kind: 'sheet';
      readonly units: Units;
      readonly sheet: Size;
      readonly depth: number;
      readonly shapes: readonly Shape[];
    }
  | {
      readonly kind: 'card';
      readonly units: Units;
      readonly card: Size;
      readonly bulk: number | null;
      readonly depth: number | null;
      readonly blank: number | null;
    };

/** No sheet or card is larger, in mm. */
const LONGEST = 5000;

/** Reads what is asked out of the arguments, or says what is wrong with it. */
export function readOrder(given: Arguments): Order | string {
  const wrong: string[] = [];
  const size = (name: string): Size | null => {
    const text = given.value(name);
    const read = text === null ? null : readSize(text);
    if (text !== null && (read === null || Math.max(read.width, read.height) > LONGEST))
      wrong.push(
        read === null && text !== null && readSize(`${text}mm`) !== null
          ? `\`--${name} ${visible(text)}\` has no unit: write \`${visible(text)}in\` or \`${visible(text)}mm\``
          : `\`--${name}\` is a size up to 5 m, as \`5x7in\`, \`148x105mm\` or \`A6\`, not \`${visible(text)}\``,
      );
    return read;
  };
  const length = (name: string): number | null => {
    const text = given.value(name);
    const read = text === null ? null : readLength(text);
    if (text !== null && (read === null || read < 0 || read > LONGEST))
      wrong.push(
        `\`--${name}\` is a length with its unit, as \`4mm\` or \`1/4in\`, not \`${visible(text)}\``,
      );
    return read;
  };
  const [sheet, card, shape] = [size('sheet'), size('card'), size('shape')];
  const [bulk, depth, blank] = [length('bulk'), length('depth'), length('blank')];
  const [first] = wrong;
  if (first !== undefined) return first;
  const units = (given.value('units') ?? unitsOf(given.value(sheet ? 'sheet' : 'card') ?? '')) as Units;
  if (sheet && card) return 'say `--sheet` or `--card`: a card is held against papers of the files given';
  if (sheet) {
    if (bulk !== null || blank !== null) return '`--bulk` and `--blank` go with `--card`';
    if (given.has('as-recipe') && shape === null)
      return '`--as-recipe` prints one recipe: say of which shape, as `--shape 5x7in`';
    return { kind: 'sheet', units, sheet, depth: depth ?? 0, shapes: shape ? [shapeOf(shape)] : SHAPES };
  }
  if (card === null) return 'say what to fit: `--sheet 12x12in`, or `--card 5x7in`';
  if (shape !== null) return '`--shape` goes with `--sheet`';
  return { kind: 'card', units, card, bulk, depth, blank };
}

const shapeOf = ({ width, height }: Size): Shape => ({
  name: 'as asked',
  ratio: Math.max(width, height) / Math.min(width, height),
});

/** The units that an argument is written in; a size by name is in mm, but for the US ones. */
const unitsOf = (text: string): Units =>
  /(?:in|["″])\s*$|^(?:us-|letter|legal|tabloid)/i.test(text) ? 'in' : /cm\s*$/.test(text) ? 'cm' : 'mm';
