import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { report } from '../../src/diagnostics/problem.js';
import { limit } from '../../src/syntax/problems.js';
import type { Edit } from '../../src/text/edit.js';
import type { Source } from '../../src/text/source.js';
import { absent, endOf, is, readAs, spanOf, type Token } from '../token.js';
import {
  CloseBracket,
  Colon,
  Comma,
  Equals,
  FirstOfPhrase,
  InchMark,
  Minus,
  NumberToken,
  OddInch,
  OpenBracket,
  Percent,
  Plus,
  Slash,
  Star,
  Stray,
  Text,
  Unit,
  Word,
} from '../tokens.js';
import { foldingWords, gluedRange, gluedSize, statementWords, unitWords } from '../words.js';
import { slip } from '../slip.js';

const deepest = 50;
const longest = 500;

export interface Line {
  readonly tokens: readonly Token[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * What the tokens of one line, after `preceding`, mean by their place: a word after a number is a unit, a `-` stands between two values or
 * touches the one it negates. Brackets nest at most 50 deep and a line adds and multiplies at most 500 times, so that
 * no later stage can be sent down too deep; what goes beyond is cut off.
 */
export function readLine(source: Source, preceding: Token, line: readonly Token[]): Line {
  const tokens: Token[] = [];
  const diagnostics: Diagnostic[] = [];
  let depth = 0;
  let terms = 0;
  let phrase = false;
  for (const [index, token] of line.entries()) {
    const before = tokens.at(-1) ?? preceding;
    if (is(token, OpenBracket)) depth++;
    if (is(token, CloseBracket)) depth--;
    if (is(token, Plus, Minus, Star, Slash)) terms++;
    if (depth > deepest || terms > longest) {
      diagnostics.push(tooMuch(source, token, depth > deepest));
      tokens.push(absent(Stray, token.startOffset, null));
      break;
    }
    const after = line[index + 1];
    if (is(before, Colon, Equals, Comma)) phrase = is(token, Word) && beginsAtom(after);
    if (phrase && is(before, Colon, Equals, Comma)) tokens.push(readAs(FirstOfPhrase, token));
    else if (isUnit(token, before, after, phrase && depth === 0)) tokens.push(readAs(Unit, token));
    else if (is(token, Minus, Slash)) tokens.push(readSign(source, token, before, after, diagnostics));
    else tokens.push(token);
  }
  return { tokens, diagnostics };
}

/**
 * After a number every word is taken for its unit, known or not. Among the words of a phrase (`blunt 20 rounded 3`) only
 * a known one is; and never one that begins the next entry or statement, on this line by mistake.
 */
function isUnit(token: Token, before: Token | undefined, after: Token | undefined, phrase: boolean): boolean {
  if (!is(before, NumberToken))
    return is(before, Unit) && pounds.test(before?.image ?? '') && is(token, Word);
  if (is(token, InchMark, OddInch, Percent)) return true;
  if (!is(token, Word) || gluedSize.test(token.image) || gluedRange.test(token.image)) return false;
  if (unitWords.has(token.image)) return true;
  return !phrase && !is(after, Colon) && token.image !== 'expect' && !statementWords.has(token.image);
}

/** Right or wrong, a grade follows. */
const pounds = /^(?:lbs?|pounds?)$/i;

const beginsAtom = (token: Token | undefined): boolean => is(token, Word, NumberToken, OpenBracket);

/** A `-` or `/`, doubtful (payload null) when the spaces about it leave its meaning open. */
function readSign(
  source: Source,
  token: Token,
  before: Token,
  after: Token | undefined,
  diagnostics: Diagnostic[],
): Token {
  if (after === undefined || token.payload === null) return token;
  const spaceBefore = endOf(before) < token.startOffset;
  const spaceAfter = endOf(token) < after.startOffset;
  const at = spanOf(source, token);
  const sign = `\`${token.image}\``;
  if (is(before, NumberToken, Unit, Word, CloseBracket, Text)) {
    if (spaceBefore && spaceAfter) return token;
    const { text } = source;
    const list = is(token, Minus) && !spaceAfter && spaceBefore;
    const name = text.slice(before.startOffset, endOf(before));
    const fold = is(token, Slash) && is(before, Word) ? foldingWords.get(after.image) : undefined;
    const other = list
      ? ', or a comma before it if this is a list'
      : fold === undefined
        ? ''
        : `, or \`${fold} ${name}\` if this is a sheet that is folded`;
    diagnostics.push(
      slip({
        message: `${sign} between two values has a space on both sides`,
        at,
        help: `write \`${name} ${token.image} ${after.image}\`${other}`,
        ...(other === '' ? { fix: spaces(source, token, spaceBefore, spaceAfter) } : {}),
      }),
    );
    return readAs(token.tokenType, token, null);
  }
  if (is(token, Minus) && spaceAfter && is(after, NumberToken, Word, OpenBracket)) {
    diagnostics.push(
      slip({
        message: `${sign} touches what it negates`,
        at,
        help: `write \`-${after.image}\``,
        fix: [{ span: { source, start: endOf(token), end: after.startOffset }, text: '' }],
      }),
    );
  }
  return token;
}

/** The spaces that are wanting about a sign. */
function spaces(source: Source, sign: Token, before: boolean, after: boolean): readonly Edit[] {
  const start = sign.startOffset;
  const end = endOf(sign);
  return [
    ...(before ? [] : [{ span: { source, start, end: start }, text: ' ' }]),
    ...(after ? [] : [{ span: { source, start: end, end }, text: ' ' }]),
  ];
}

function tooMuch(source: Source, token: Token, brackets: boolean): Diagnostic {
  return report(limit, {
    message: brackets ? 'brackets nest too deep here' : 'this line adds up too much',
    at: spanOf(source, token),
    why: brackets ? `they nest at most ${deepest} deep` : `a line has at most ${longest} of \`+ - * /\``,
    help: 'give a part of it a name with `let`',
  });
}
