import type { ExpressionNode, ItemNode, NumberNode } from '../syntax/ast.js';
import { type Span, spanText } from '../text/span.js';

type Spelled = ItemNode | ExpressionNode;

/**
 * An item on one line, spelled as its author spelled it: one space about a sign between two values and before a unit that
 * is a word; a minus sign touches what it negates, brackets what they hold.
 */
export const spell = (node: Spelled): string => SPELLINGS[node.kind](node as never);

/** A row for each kind of node. */
const SPELLINGS: { readonly [Kind in Spelled['kind']]: (node: Extract<Spelled, { kind: Kind }>) => string } =
  {
    string: ({ span }) => spanText(span),
    word: ({ span }) => spanText(span),
    number: spellNumber,
    group: ({ inner }) => `(${spell(inner)})`,
    negate: ({ operand }) => `-${spell(operand)}`,
    binary: ({ left, right }) => `${spell(left)} ${signBetween(left, right)} ${spell(right)}`,
    size: ({ first, second }) => `${spell(first)} ${signBetween(first, second)} ${spell(second)}`,
    phrase: ({ atoms }) => atoms.map(spell).join(' '),
  };

/** The sign that stands between two nodes of a line: the tree knows what it means, the text how it is written. */
export const signBetween = (left: Placed, right: Placed): string =>
  spanText({ ...left.span, start: left.span.end, end: right.span.start }).trim();

interface Placed {
  readonly span: Span;
}

/** `5 ½"`, `2%`, `65 lb cover`: a mark touches its number. */
function spellNumber({ span, unit }: NumberNode): string {
  const number = onlyOneSpace(spanText({ ...span, end: unit?.span.start ?? span.end }).trim());
  if (unit === null) return number;
  const written = onlyOneSpace(spanText(unit.span));
  return /^[a-z]/i.test(written) ? `${number} ${written}` : number + written;
}

const onlyOneSpace = (text: string): string => text.replace(/[ \t]+/g, ' ');
