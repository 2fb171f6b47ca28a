/*
 * fit/: the other way round: what a sheet, a card or an old blank can be.
 * In: sizes in mm, and a way to compile. Out: wishes that pass every check, with what they come to.
 * Refuses to know: how an envelope folds: whether something works is asked of the compiler, never worked out here.
 */
import type { Severity } from '../diagnostics/diagnostic.js';
import type { Facts } from '../folding/facts.js';
import { printShort } from '../measure/number.js';
import { readLength } from '../measure/ruler.js';
import { sameLength } from '../measure/slack.js';
import { MM_PER, type Units } from '../measure/unit.js';
import type { Envelope, Size } from '../recipe/recipe.js';

/** A recipe in little: what is left out follows by default. Lengths mm. */
export interface Wish {
  readonly units: Units;
  readonly card: Size;
  readonly bulk?: number;
  readonly depth?: number;
  readonly blank?: number;
  /** Cut from a sheet of this size. */
  readonly sheet?: Size;
}

/** What an envelope comes to, and how grave what there is to say about it is. */
export interface Tried {
  readonly envelope: Envelope;
  readonly facts: Facts;
  readonly severities: ReadonlySet<Severity>;
}

/** Tries the text of a recipe with one envelope; null where it cannot be read. */
export type Try = (text: string) => Tried | null;

/** Whether a recipe passes every check: nothing is found but notes. */
export const passes = (tried: Tried | null): tried is Tried =>
  tried !== null && !tried.severities.has('error') && !tried.severities.has('warning');

/** The recipe of a wish: valid, and in the one layout. */
export function recipeText(wish: Wish): string {
  const { units, card, bulk, depth, blank, sheet } = wish;
  const length = (mm: number): string => written(mm, units);
  const size = ({ width, height }: Size): string => `${length(width)} x ${length(height)}`;
  const lines = [
    `card: ${size(card)}`,
    ...(blank === undefined ? [] : [`blank: ${length(blank)}`]),
    ...(bulk === undefined ? [] : [`bulk: ${length(bulk)}`]),
    ...(depth === undefined || depth === 0 ? [] : [`depth: ${length(depth)}`]),
    ...(sheet === undefined ? [] : [`paper: ${SHEET}`]),
  ];
  const paper = sheet === undefined ? '' : `paper ${SHEET} { sheet: ${size(sheet)} }\n\n`;
  const block = lines.length === 1 ? `{ ${lines[0]} }` : `{\n${lines.map((line) => `  ${line}\n`).join('')}}`;
  return `units ${units}\n\n${paper}envelope ${nameOf(wish)} ${block}\n`;
}

/** What the paper of a wish is called. */
const SHEET = 'from-sheet';

/** `card-5x7`, `card-148x105` */
function nameOf({ units, card }: Wish): string {
  const side = (mm: number): string => printShort(mm / MM_PER[units], 3).replaceAll(/\D+/g, '-');
  return `card-${side(card.width)}-by-${side(card.height)}`;
}

/** With its unit, as a ruler reads it, or in decimals of a mm where no ruler does. */
function written(mm: number, units: Units): string {
  const finest = FINEST[units];
  return sameLength(mm, Math.round(mm / finest) * finest)
    ? readLength(mm, { units, step: finest })
    : `${printShort(mm, 6)} mm`;
}

const FINEST: Readonly<Record<Units, number>> = { mm: 0.01, cm: 0.01, in: MM_PER.in / 64 };
