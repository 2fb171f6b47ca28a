import type { Report } from '../../src/diagnostics/problem.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf } from '../token.js';
import { CloseBracket, Colon, Comma, Equals, NumberToken, OpenBracket, Word, X } from '../tokens.js';
import { gluedRange, gluedSize } from '../words.js';
import type { Stop } from './stop.js';

/** `5inx7in` */
export function sizeInOneWord({ source, token, before }: Stop): Report | null {
  if (!is(before, NumberToken) || !is(token, Word)) return null;
  const parts = gluedSize.exec(token.image);
  if (parts === null) return null;
  const [, unit = '', side = '', second = ''] = parts;
  const spaced = `${unit} x ${side}${second === '' ? '' : ` ${second}`}`.trimEnd();
  const at = spanOf(source, token);
  return {
    message: `${shown(token)} reads as one word`,
    at,
    why: 'a unit and the `x` after it need a space between them',
    help: `write \`${before?.image} ${spaced}\``,
    fix: [{ span: at, text: ` ${spaced}` }],
  };
}

/** `2mm-3mm` */
export function rangeInOneWord({ source, token, before }: Stop): Report | null {
  const parts = is(token, Word) ? gluedRange.exec(token.image) : null;
  if (parts === null || before === undefined || !is(before, NumberToken)) return null;
  const [, unit = '', second = '', other = ''] = parts;
  return {
    message: 'a range is no value',
    at: spanOf(source, before, token),
    help: `write one of the two, \`${before.image} ${unit}\` or \`${second} ${other || unit}\``,
  };
}

/** `(5 x 7)` */
export function bracketedSize({ source, line, token }: Stop): Report | null {
  if (!is(token, X)) return null;
  const open = line.findIndex((part) => is(part, OpenBracket));
  if (
    open < 0 ||
    open > line.indexOf(token) ||
    line.slice(open, line.indexOf(token)).some((part) => is(part, CloseBracket))
  )
    return null;
  const [first, last] = [line[open], line.at(-2)];
  const marks = first !== undefined && last !== undefined && is(last, CloseBracket) ? [first, last] : [];
  const only =
    marks.length > 0 && is(line[open - 1], Colon, Equals, Comma) && endOf(last ?? token) > endOf(token);
  return {
    message: 'a size stands without brackets',
    at: spanOf(source, first ?? token),
    help: 'take the brackets away; they stand about a sum within one side',
    ...(only ? { fix: marks.map((mark) => ({ span: spanOf(source, mark), text: '' })) } : {}),
  };
}

/** `x 7` */
export function firstSide({ source, token, before }: Stop): Report | null {
  if (!is(token, X) || !is(before, Colon, Equals, Comma)) return null;
  return {
    message: 'the first side is missing before `x`',
    at: spanOf(source, token),
    help: 'write both sides, as in `5 x 7`',
  };
}

/** `5 x 7 x 1/4` */
export function thirdSide({ source, token, after }: Stop): Report | null {
  if (!is(token, X)) return null;
  const third = after.find((part) => is(part, NumberToken, Word));
  return {
    message: 'a size has two sides',
    at: third === undefined ? spanOf(source, token) : spanOf(source, token, third),
    help: `write the thickness as a property of its own: \`depth: ${third?.image ?? '1/4'}\` for a box, \`bulk: ${third?.image ?? '1/4'}\` for a thick card`,
  };
}
