import type { TokenType } from 'chevrotain';
import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import type { CommentNode } from '../src/syntax/ast.js';
import type { Source } from '../src/text/source.js';
import type { Span } from '../src/text/span.js';
import {
  characterName,
  oddCharacters,
  type Oddness,
  oddness,
  plainForm,
  withPlainCharacters,
} from './characters.js';
import { lookAtEntity, lookAtOddComment, reportFences } from './looks/foreign.js';
import type { Look } from './looks/look.js';
import {
  lookAtFeet,
  lookAtGrammage,
  lookAtNumber,
  lookAtOddInch,
  lookAtPoint,
  lookAtPounds,
} from './looks/numbers.js';
import { lookAtCompare, lookAtMinus, lookAtOddX, lookAtPlusMinus } from './looks/signs.js';
import { lookAtOddText, lookAtText } from './looks/strings.js';
import { lookAtWord } from './looks/words.js';
import { scan } from './scan.js';
import { slip } from './slip.js';
import { endOf, is, spanOf, type Token } from './token.js';
import {
  Comment,
  Compare,
  Fence,
  Feet,
  Minus,
  NumberToken,
  OddComment,
  OddEntity,
  OddGrammage,
  OddInch,
  OddPoint,
  OddPounds,
  OddText,
  OddX,
  PlusMinus,
  Text,
  Word,
} from './tokens.js';
import { reportUnseen } from './unseen.js';

export interface Scan {
  readonly tokens: readonly Token[];
  readonly comments: readonly CommentNode[];
  readonly diagnostics: readonly Diagnostic[];
  /** What can be read, and yet wants a look. */
  readonly doubts: readonly Diagnostic[];
}

/**
 * The tokens of a text, each number and string with its value. Marks that only look like the right ones are reported and
 * read as what they look like; a wrong number is reported and carries no value.
 */
export function lex(source: Source): Scan {
  const { tokens: found, comments } = scan(withPlainCharacters(source.text));
  const tokens: Token[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const [index, token] of found.entries()) {
    const look = looks.get(token.tokenType);
    if (look === undefined) {
      tokens.push(token);
      continue;
    }
    const { reading, finding } = look(token, source, found[index - 1]);
    if (reading !== null) tokens.push(reading);
    if (finding !== undefined) diagnostics.push(finding);
  }
  const fences = found.filter((token) => is(token, Fence));
  const shownOnly = [...found, ...comments]
    .filter((token) => is(token, Text, OddText, Comment, OddComment, Fence))
    .toSorted((a, b) => a.startOffset - b.startOffset);
  return {
    tokens,
    comments: comments.map((token) => ({ kind: 'comment', span: spanOf(source, token) })),
    diagnostics: diagnostics.concat(reportFences(source, fences), reportOddCharacters(source, shownOnly)),
    doubts: reportUnseen(source, shownOnly),
  };
}

/** The tokens that need a closer look. */
const looks: ReadonlyMap<TokenType, Look> = new Map<TokenType, Look>([
  [NumberToken, lookAtNumber],
  [Word, lookAtWord],
  [Text, lookAtText],
  [OddText, lookAtOddText],
  [OddInch, lookAtOddInch],
  [Feet, lookAtFeet],
  [OddPounds, lookAtPounds],
  [OddGrammage, lookAtGrammage],
  [OddPoint, lookAtPoint],
  [OddX, lookAtOddX],
  [Minus, lookAtMinus],
  [PlusMinus, lookAtPlusMinus],
  [Compare, lookAtCompare],
  [OddComment, lookAtOddComment],
  [OddEntity, lookAtEntity],
  [Fence, () => ({ reading: null })],
]);

/** One finding a line for characters that are not what they look like; in strings and comments they are left alone. */
function reportOddCharacters(source: Source, covered: readonly Token[]): Diagnostic[] {
  const offsets = [...oddCharacters(source.text)];
  if (offsets.length === 0) return [];
  const lines = new Map<number, Span[]>();
  let next = 0;
  let line = 0;
  for (const offset of offsets) {
    while (next < covered.length && endOf(covered[next] as Token) <= offset) next++;
    if ((covered[next]?.startOffset ?? Infinity) <= offset) continue;
    while ((source.lineStarts[line + 1] ?? Infinity) <= offset) line++;
    const spans = lines.get(line) ?? [];
    lines.set(line, spans);
    spans.push({ source, start: offset, end: offset + 1 });
  }
  return [...lines.values()].map((spans) => oddCharacter(source, spans));
}

function oddCharacter(source: Source, spans: readonly Span[]): Diagnostic {
  const at = spans[0] as Span;
  const character = source.text.charAt(at.start);
  const plain = plainForm(character);
  const { message, help } = wanted[oddness(character)](plain);
  const more =
    ['', ', here and once more on this line'][spans.length - 1] ?? ', wherever one stands on this line';
  return slip({
    message,
    at,
    label: `this is ${characterName(character.charCodeAt(0))}`,
    help: `${help}${more}`,
    fix: spans.map((span) => ({ span, text: plainForm(source.text.charAt(span.start)) })),
  });
}

const wanted: Readonly<
  Record<Oddness, (plain: string) => { readonly message: string; readonly help: string }>
> = {
  space: () => ({ message: 'a plain space is wanted here', help: 'type a space instead' }),
  unseen: () => ({ message: 'something that cannot be seen stands here', help: 'take it out' }),
  wide: (plain) => ({
    message: `a plain \`${plain}\` is wanted here`,
    help: 'type the plain character instead',
  }),
};
