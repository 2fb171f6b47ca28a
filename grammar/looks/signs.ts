import type { Source } from '../../src/text/source.js';
import type { Span } from '../../src/text/span.js';
import { characterName } from '../characters.js';
import { slip } from '../slip.js';
import { is, readAs, spanOf, type Token } from '../token.js';
import {
  CloseBracket,
  Compare,
  Eol,
  InchMark,
  Minus,
  NumberToken,
  OddInch,
  Percent,
  Word,
  X,
} from '../tokens.js';
import { unitWords } from '../words.js';
import type { Seen } from './look.js';

/** A capital, another alphabet's letter, a cross or `by` where `x` is meant. */
export function lookAtOddX(token: Token, source: Source, before: Token | undefined): Seen {
  const between =
    is(before, NumberToken, CloseBracket, InchMark, OddInch, Percent) || unitWords.has(before?.image ?? '');
  const by = /^by$/i.test(token.image);
  if ((token.image === 'X' || by) && !between) return { reading: readAs(Word, token) };
  const at = spanOf(source, token);
  const finding = slip({
    message: by ? 'between the sides of a size stands `x`' : 'between the sides of a size stands a small `x`',
    at,
    ...(by ? {} : { label: `this is ${characterName(token.image.charCodeAt(0))}` }),
    help: 'write `x`',
    fix: [{ span: at, text: 'x' }],
  });
  return { reading: readAs(X, token), finding };
}

/** A dash or a mathematical minus for `-`; one that begins its line is no minus, and is met as what it is. */
export function lookAtMinus(token: Token, source: Source, before: Token | undefined): Seen {
  const begins = before === undefined || is(before, Eol);
  if (token.image === '-' || begins) return { reading: token };
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

export function lookAtPlusMinus(token: Token, source: Source): Seen {
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
  ['&lt;', '<'],
  ['&gt;', '>'],
]);

/** What git puts about the two sides of a conflict. */
const conflictMark = /^([<=>])\1{6}$/;

const conflict = (token: Token, at: Span) =>
  slip({
    message: `\`${token.image}\` was left by a merge that met a conflict`,
    at,
    help: 'keep what is to hold of the two, and take these marks out',
  });

export function lookAtCompare(token: Token, source: Source): Seen {
  const known = comparisons.get(token.image);
  if (known !== undefined) return { reading: readAs(Compare, token, known) };
  const at = spanOf(source, token);
  if (conflictMark.test(token.image))
    return { reading: readAs(Compare, token, null), finding: conflict(token, at) };
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
