import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { report } from '../../diagnostics/problem.js';
import { asDimension, calculate, type Dimension, isRefusal, negate, number } from '../../measure/quantity.js';
import { exactLength } from '../../measure/ruler.js';
import { MM_PER } from '../../measure/unit.js';
import { type NamedSize, sizeNamed, usNamesake } from '../../stock/sizes.js';
import type {
  BinaryNode,
  ExpressionNode,
  ItemNode,
  NumberNode,
  PhraseNode,
  StringNode,
  WordNode,
} from '../../syntax/ast.js';
import { type Span, spanText } from '../../text/span.js';
import { isSize } from './is-size.js';
import { letLabel } from './let-label.js';
import type { Place } from '../place.js';
import { range, wrongKind } from '../problems.js';
import { quote } from '../quote.js';
import type { Size } from '../recipe.js';
import { refuseConversion, refuseSum } from './refusals.js';
import { foldMeant, sizeMeant } from '../meant/size-slips.js';
import { unitOf } from './units.js';
import { otherSize, unknownWord } from '../meant/unknown-word.js';
import { type Amount, kindOf, type Value } from './value.js';

/** What an item comes to; null where it is broken, which has been reported. */
export function evaluate(item: Exclude<ItemNode, StringNode>, place: Place): Value | null {
  if (item.kind === 'phrase') return folded(item, place);
  if (item.kind === 'binary' && dividesSheet(item, place)) return null;
  if (item.kind !== 'size') return expression(item, place);
  const first = lengthAt(item.first, place);
  const second = lengthAt(item.second, place);
  return first === null || second === null ? null : { kind: 'size', size: { width: first, height: second } };
}

/** The length in mm that an expression comes to; anything else is reported. */
export const lengthAt = (node: ExpressionNode, place: Place): number | null =>
  dimensionAt(node, 'length', place);

/** The value of an expression in the inner unit of the wanted dimension; anything else is reported. */
export function dimensionAt(node: ExpressionNode, wanted: Dimension, place: Place): number | null {
  const value = expression(node, place);
  return value && dimensionOf(value, wanted, node.span, place);
}

/** The same of a value already worked out, which stands at `at`. */
export function dimensionOf(value: Value, wanted: Dimension, at: Span, place: Place): number | null {
  const result = value.kind === 'size' ? 'unlike' : asDimension(value.quantity, wanted);
  if (isRefusal(result)) {
    refuseConversion(result, value, wanted, at, place);
    return null;
  }
  if (wanted === 'length') noteBare(value, place);
  return result;
}

/** Sums are worked out along their left spine, so that a long one needs no deep stack. */
function expression(node: ExpressionNode, place: Place): Value | null {
  const steps: BinaryNode[] = [];
  let leftmost = node;
  while (leftmost.kind === 'binary') {
    steps.push(leftmost);
    leftmost = leftmost.left;
  }
  let value = operand(leftmost, place);
  for (const step of steps.reverse()) {
    const right = expression(step.right, place);
    value = value && right && combine(value, right, step, place);
  }
  return value;
}

function operand(node: Exclude<ExpressionNode, BinaryNode>, place: Place): Value | null {
  if (node.kind === 'number') return numberValue(node, place);
  if (node.kind === 'word') return wordValue(node, place);
  if (node.kind === 'group') return expression(node.inner, place);
  const value = expression(node.operand, place);
  if (value?.kind === 'size') return sumOfSize(node.span, place);
  return value && { ...value, quantity: negate(value.quantity) };
}

function numberValue(node: NumberNode, place: Place): Value | null {
  const { units } = place.file;
  const { span, value } = node;
  const written = node.unit ?? place.carried.get(node);
  if (!written) {
    const known = units === 'none' || units === 'broken' ? null : units;
    const quantity = number(value, known ?? 'none');
    return finite({ kind: 'quantity', quantity, bare: span, unitless: known ? null : span }, span, place);
  }
  const unit = unitOf(written, node, place);
  if (unit === null) return null;
  const { dimension, factor } = unit;
  const own = units !== 'none' && units !== 'broken' && MM_PER[units] === factor;
  if (dimension === 'length' && !own) place.foreign.push(span);
  const quantity =
    dimension === 'number' ? number(value * factor, 'pure') : { dimension, value: value * factor };
  return finite({ kind: 'quantity', quantity, bare: null, unitless: null }, span, place);
}

/** A let's value, or a size by name: an envelope, a style or a paper of that name does not hide the size. */
function wordValue(node: WordNode, place: Place): Value | null {
  const declaration = place.context.names.find(node.text, place.file);
  if (declaration?.kind === 'let') {
    const value = place.context.lets.get(declaration.node) ?? null;
    return value?.kind === 'quantity' ? { ...value, bare: null } : value;
  }
  const size = sizeNamed(node.text);
  if (size) {
    doubtIsoName(node, size, place);
    return { kind: 'size', size: { width: size.short, height: size.long } };
  }
  unknownWord(node, place);
  return null;
}

/** Under `units in`, a plain ISO name of a card may have been meant for the US envelope of that name. */
function doubtIsoName({ span, text }: WordNode, { short, long }: NamedSize, place: Place): void {
  const us = place.file.units === 'in' && !place.sheet ? usNamesake(text) : undefined;
  if (!us) return;
  place.context.tell(
    report(wrongKind, {
      severity: 'warning',
      message: `${quote(span)} is the ISO size, and \`units in\` suggests the US one`,
      at: span,
      why: `ISO ${text.toUpperCase()} is ${sides(short, long)}; the card for a US ${text.toUpperCase()} envelope is ${sides(us.short, us.long)}`,
      help: `write \`${us.name}\` for the US card, or \`iso-${text.toLowerCase()}\` for the ISO size`,
    }),
  );
}

const sides = (short: number, long: number): string =>
  `${exactLength(short, 'in').replace(' in', '')} × ${exactLength(long, 'in')}`;

function combine(left: Value, right: Value, step: BinaryNode, place: Place): Value | null {
  if (left.kind === 'size' || right.kind === 'size') return sumOfSize(step.span, place);
  const { operator, span } = step;
  const quantity = calculate(left.quantity, operator, right.quantity);
  if (isRefusal(quantity)) {
    refuseSum(quantity, left, right, step, place);
    return null;
  }
  if (quantity.dimension === 'length' && (operator === '+' || operator === '-')) {
    noteBare(left, place);
    noteBare(right, place);
  }
  return finite({ kind: 'quantity', quantity, ...writtenBare(left, right, operator) }, span, place);
}

/** A plain factor by a name stays free; a bare number plus anything plain is still a bare number. */
function writtenBare(
  left: Amount,
  right: Amount,
  operator: BinaryNode['operator'],
): Pick<Amount, 'bare' | 'unitless'> {
  const unitless = left.unitless ?? right.unitless;
  if (operator === '*') return { bare: right.bare && left.bare, unitless };
  return { bare: operator === '/' ? left.bare : (left.bare ?? right.bare), unitless };
}

/** Remembers that a bare number of this value has become a length; nothing is nothing in any unit. */
function noteBare(value: Value, place: Place): void {
  if (value.kind !== 'quantity' || value.quantity.dimension !== 'number') return;
  if (value.bare && value.quantity.value !== 0) place.bare.push(value.bare);
}

/** Reports `letter / 2` and `1/2 * letter`, which are a folded sheet, and no sums. */
function dividesSheet({ left, operator, right, span }: BinaryNode, place: Place): boolean {
  const [sheet, number] = left.kind === 'word' ? [left, right] : [right, left];
  if (sheet.kind !== 'word' || number.kind !== 'number' || number.unit !== null) return false;
  const parts = operator === '*' ? 1 / number.value : operator === '/' && sheet === left ? number.value : 1;
  const meant = isSize(sheet.text, place) ? foldMeant(sheet.text, parts) : null;
  if (meant !== null) place.context.tell(otherSize(span, meant));
  return meant !== null;
}

function sumOfSize(at: Span, place: Place): null {
  place.context.tell(
    report(wrongKind, {
      message: `${quote(at)} does sums with a size, which has two sides`,
      at,
      help: 'write the two sides with `x` between them, each a sum of its own',
    }),
  );
  return null;
}

function finite(value: Amount, at: Span, place: Place): Value | null {
  if (Number.isFinite(value.quantity.value)) return value;
  place.context.tell(
    report(range, {
      message: `${quote(at)} is too large a number`,
      at,
      why: 'no length here exceeds 5 m',
      help: 'write a number that a ruler has',
    }),
  );
  return null;
}

/** How a folding word folds: across whichever side is then the longer, into so many parts each time. */
const FOLDS: ReadonlyMap<string, readonly number[]> = new Map([
  ['half', [2]],
  ['third', [3]],
  ['quarter', [2, 2]],
]);

/** `half letter`, `third A4`, `quarter base`: a sheet by name, folded. Sizes stay exact. */
function folded(phrase: PhraseNode, place: Place): Value | null {
  const [word, sheet, ...more] = phrase.atoms;
  const folds = word?.kind === 'word' ? FOLDS.get(word.text.toLowerCase()) : undefined;
  if (!folds || !sheet || more.length > 0) return oddPhrase(phrase, place);
  const value = expression(sheet, { ...place, sheet: true });
  if (value === null) return null;
  if (value.kind === 'size') return { kind: 'size', size: folds.reduce(foldOnce, value.size) };
  place.context.tell(
    report(wrongKind, {
      message: `${quote(phrase.span)} folds ${quote(sheet.span)}, which is ${kindOf(value)}, not a size`,
      at: sheet.span,
      related: letLabel(sheet.span, place),
      help: 'fold a size by name (`half letter`), or a `let` that is a size',
    }),
  );
  return null;
}

const foldOnce = ({ width, height }: Size, parts: number): Size =>
  width > height ? { width: width / parts, height } : { width, height: height / parts };

function oddPhrase({ span }: PhraseNode, place: Place): null {
  const { names, tell } = place.context;
  const meant = sizeMeant(spanText(span), (word) => names.find(word, place.file)?.kind === 'let');
  if (meant) {
    tell(otherSize(span, meant));
    return null;
  }
  const [, size] = WAY_ROUND.exec(spanText(span)) ?? [];
  if (size !== undefined) {
    tell(wayRound(span, size));
    return null;
  }
  tell(
    report(wrongKind, {
      message: `${quote(span)} is not a value that ${place.what} can have`,
      at: span,
      why: 'words stand side by side only where a sheet is folded (`half letter`) or a flap is shaped (`blunt 20 rounded 3`)',
      help: 'write one value; a product is written with `*`, a list with commas',
    }),
  );
  return null;
}

/** A size and a word for which way round it lies. */
const WAY_ROUND =
  /^(.*\S)[ \t]+\(?(?:landscape|portrait|horizontal|vertical|upright|sideways|crosswise|lengthwise)\)?$/i;

const wayRound = (at: Span, size: string): Diagnostic =>
  report(wrongKind, {
    message: `${quote(at)} says which way round it lies, and a size does not`,
    at,
    why: 'a size is the same whichever side stands first; `opens` says on which edge of the card the flap is hinged',
    help: `write \`${size}\`, and \`opens: end\` for a flap on the short edge`,
    fix: [{ span: at, text: size }],
  });
