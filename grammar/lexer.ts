import type { TokenType } from 'chevrotain';
import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import type { CommentNode } from '../src/syntax/ast.js';
import type { Span } from '../src/text/span.js';
import { position, type Source } from '../src/text/source.js';
import { characterName, oddSpaces, withPlainSpaces } from './characters.js';
import { readNumber } from './number.js';
import { scan } from './scan.js';
import { slip } from './slip.js';
import { endOf, is, readAs, spanOf, type Token } from './token.js';
import {
  CloseBracket,
  Comment,
  Compare,
  InchMark,
  Minus,
  NumberToken,
  OddInch,
  OddText,
  OddX,
  Percent,
  PlusMinus,
  Text,
  Word,
  X,
} from './tokens.js';
import { unitWords } from './words.js';

export interface Scan {
  readonly tokens: readonly Token[];
  readonly comments: readonly CommentNode[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The tokens of a text, each number and string with its value. Marks that only look like the right ones are reported and
 * read as what they look like; a wrong number is reported and carries no value.
 */
export function lex(source: Source): Scan {
  const { tokens: found, comments } = scan(withPlainSpaces(source.text));
  const diagnostics: Diagnostic[] = [];
  const tokens = found.map((token, index) => {
    const look = looks.get(token.tokenType);
    if (look === undefined) return token;
    const { reading, finding } = look(token, source, found[index - 1]);
    if (finding !== undefined) diagnostics.push(finding);
    return reading;
  });
  const spaces = [...oddSpaces(source.text)];
  return {
    tokens,
    comments: comments.map((token) => ({ kind: 'comment', span: spanOf(source, token) })),
    diagnostics: diagnostics.concat(reportOddSpaces(source, spaces, [...found, ...comments])),
  };
}

interface Seen {
  readonly reading: Token;
  readonly finding?: Diagnostic;
}

type Look = (token: Token, source: Source, before: Token | undefined) => Seen;

/** The tokens that need a closer look. */
const looks: ReadonlyMap<TokenType, Look> = new Map<TokenType, Look>([
  [NumberToken, lookAtNumber],
  [Text, lookAtText],
  [OddText, lookAtOddText],
  [OddInch, lookAtOddInch],
  [OddX, lookAtOddX],
  [Minus, lookAtMinus],
  [PlusMinus, lookAtPlusMinus],
  [Compare, lookAtCompare],
]);

function lookAtNumber(token: Token, source: Source): Seen {
  const value = readNumber(token.image);
  if (typeof value === 'number') return { reading: readAs(NumberToken, token, value) };
  const at = spanOf(source, token);
  const [only, ...others] = value.readings;
  const finding = slip({
    message: `\`${token.image}\` ${value.wrong}`,
    at,
    ...(value.why === undefined ? {} : { why: value.why }),
    help:
      only === undefined
        ? (value.help ?? 'write it as `12`, `0.5`, `1/2` or `5 1/2`')
        : `write ${either(value.readings)}`,
    ...(only !== undefined && others.length === 0 ? { fix: [{ span: at, text: only }] } : {}),
  });
  return { reading: readAs(NumberToken, token, null), finding };
}

/** `a`, `a or b`, `a, b or c`, each in back quotes. */
function either(readings: readonly string[]): string {
  const quoted = readings.map((reading) => `\`${reading}\``);
  return quoted.length < 2 ? quoted.join() : `${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`;
}

function lookAtText(token: Token, source: Source): Seen {
  const raw = source.text.slice(token.startOffset + 1, endOf(token) - 1);
  if (!raw.includes('\\')) return { reading: readAs(Text, token, raw) };
  const wrong = /\\[^"\\]/.exec(raw.replace(/\\["\\]/g, '  '));
  if (wrong === null) return { reading: readAs(Text, token, raw.replace(/\\(["\\])/g, '$1')) };
  const start = token.startOffset + 1 + wrong.index;
  const finding = slip({
    message: `\`${wrong[0]}\` in a string has no meaning`,
    at: { source, start, end: start + 2 },
    why: 'only `\\"` and `\\\\` are written with a backslash',
    help: 'write `\\\\` for a backslash, or leave it out',
  });
  return { reading: readAs(Text, token, null), finding };
}

function lookAtOddText(token: Token, source: Source, before: Token | undefined): Seen {
  const value = source.text.slice(token.startOffset + 1, endOf(token) - 1);
  // After a number it is a pair of inch marks; the parser stops at it and says so.
  if (is(before, NumberToken)) return { reading: readAs(Text, token, null) };
  const marks = [token.startOffset, endOf(token) - 1].filter((offset) => source.text[offset] !== '"');
  const spans: Span[] = marks.map((start) => ({ source, start, end: start + 1 }));
  const finding = slip({
    message: 'a string stands between straight double quotes',
    at: spans[0] ?? spanOf(source, token),
    label: `this is ${characterName(source.text.charCodeAt(marks[0] ?? token.startOffset))}`,
    help: `write \`"${value}"\``,
    ...(/["\\]/.test(value) ? {} : { fix: spans.map((span) => ({ span, text: '"' })) }),
  });
  return { reading: readAs(Text, token, value), finding };
}

function lookAtOddInch(token: Token, source: Source, before: Token | undefined): Seen {
  const touches = before !== undefined && endOf(before) === token.startOffset;
  const at = spanOf(source, token);
  const finding = slip({
    message: touches ? 'an inch mark is a straight `"`' : 'an inch mark touches its number',
    at,
    label: `this is ${characterName(token.image.charCodeAt(0))}`,
    help: 'write `"` right after the number, or `in`',
    ...(is(before, NumberToken)
      ? { fix: [{ span: { ...at, start: endOf(before as Token) }, text: '"' }] }
      : {}),
  });
  return { reading: { ...token, image: '"' }, finding };
}

function lookAtOddX(token: Token, source: Source, before: Token | undefined): Seen {
  const between =
    is(before, NumberToken, CloseBracket, InchMark, OddInch, Percent) || unitWords.has(before?.image ?? '');
  if (token.image === 'X' && !between) return { reading: readAs(Word, token) };
  const at = spanOf(source, token);
  const finding = slip({
    message: 'between the sides of a size stands a small `x`',
    at,
    label: `this is ${characterName(token.image.charCodeAt(0))}`,
    help: 'write `x`',
    fix: [{ span: at, text: 'x' }],
  });
  return { reading: readAs(X, token), finding };
}

function lookAtMinus(token: Token, source: Source): Seen {
  if (token.image === '-') return { reading: token };
  const at = spanOf(source, token);
  const alone = /^[ \t].[ \t]$/.test(source.text.slice(at.start - 1, at.end + 1));
  const finding = slip({
    message: 'a minus sign and a hyphen are both typed `-`',
    at,
    label: `this is ${characterName(token.image.charCodeAt(0))}`,
    help: 'write `-`',
    fix: [{ span: at, text: '-' }],
  });
  return { reading: alone ? token : readAs(Minus, token, null), finding };
}

function lookAtPlusMinus(token: Token, source: Source): Seen {
  if (token.image !== '+/-') return { reading: token };
  const at = spanOf(source, token);
  const finding = slip({
    message: 'plus or minus is written `+-` or `±`',
    at,
    help: 'write `+-`',
    fix: [{ span: at, text: '+-' }],
  });
  return { reading: token, finding };
}

const comparisons: ReadonlyMap<string, string> = new Map([
  ['<', '<'],
  ['<=', '<='],
  ['≤', '<='],
  ['>', '>'],
  ['>=', '>='],
  ['≥', '>='],
]);

/** Comparisons typed as elsewhere, and what they surely mean. */
const otherComparisons: ReadonlyMap<string, string> = new Map([
  ['==', '='],
  ['===', '='],
  ['=<', '<='],
  ['=>', '>='],
]);

function lookAtCompare(token: Token, source: Source): Seen {
  const known = comparisons.get(token.image);
  if (known !== undefined) return { reading: readAs(Compare, token, known) };
  const at = spanOf(source, token);
  const meant = otherComparisons.get(token.image);
  const finding = slip({
    message: `\`${token.image}\` is not a comparison`,
    at,
    why: 'an `expect` compares by `=`, `<`, `<=`, `>` or `>=`',
    help: meant === undefined ? 'write one of these' : `write \`${meant}\``,
    ...(meant === undefined ? {} : { fix: [{ span: at, text: meant }] }),
  });
  return { reading: readAs(Compare, token, meant ?? null), finding };
}

/** One finding a line for spaces that are not spaces; in strings and comments they are left alone. */
function reportOddSpaces(source: Source, offsets: readonly number[], tokens: readonly Token[]): Diagnostic[] {
  if (offsets.length === 0) return [];
  const covered = tokens.filter((token) => is(token, Text, OddText, Comment));
  covered.sort((a, b) => a.startOffset - b.startOffset);
  const lines = new Map<number, Span[]>();
  let next = 0;
  for (const offset of offsets) {
    while (next < covered.length && endOf(covered[next] as Token) <= offset) next++;
    if ((covered[next]?.startOffset ?? Infinity) <= offset) continue;
    const { line } = position(source, offset);
    const spans = lines.get(line) ?? [];
    lines.set(line, spans);
    spans.push({ source, start: offset, end: offset + 1 });
  }
  return [...lines.values()].map((spans) => {
    const at = spans[0] as Span;
    return slip({
      message: 'a plain space is wanted here',
      at,
      label: `this is ${characterName(source.text.charCodeAt(at.start))}`,
      help: `type a space instead${['', ', here and once more on this line'][spans.length - 1] ?? ', wherever it stands on this line'}`,
      fix: spans.map((span) => ({ span, text: ' ' })),
    });
  });
}
