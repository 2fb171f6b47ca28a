import type { Report } from '../../src/diagnostics/problem.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf, type Token } from '../token.js';
import {
  CloseBracket,
  Comma,
  Eol,
  FirstOfPhrase,
  Minus,
  NumberToken,
  OpenBracket,
  Plus,
  Slash,
  Star,
  Unit,
  Word,
  X,
} from '../tokens.js';
import { describingWords, unitWords } from '../words.js';
import type { Stop } from './stop.js';

/** `2 (a + b)` */
export function numberBesideBracket({ source, token, before }: Stop): Report | null {
  if (!is(before, NumberToken, Unit) || !is(token, OpenBracket)) return null;
  const at = spanOf(source, token);
  return {
    message: 'a value and a bracket stand side by side',
    at,
    help: 'write `*` between them to multiply',
    fix: [{ span: { ...at, end: at.start }, text: '* ' }],
  };
}

/** `(5 + 3) in` */
export function unitApart({ source, token, before }: Stop): Report | null {
  if (!is(before, CloseBracket) || !is(token, Word)) return null;
  return {
    message: unitWords.has(token.image)
      ? 'a unit stands only after a number'
      : `${shown(token)} cannot follow a bracket`,
    at: spanOf(source, token),
    help: unitWords.has(token.image)
      ? 'give the unit to a number inside the bracket'
      : 'put a sign or a comma before it',
  };
}

/** `6 mm deep`, `5 in wide x 7 in high` */
export function wordAfterValue({ source, line, token, before }: Stop): Report | null {
  if (!is(token, Word) || !is(before, Unit)) return null;
  const words = line.flatMap((word, index) => {
    const unit = line[index - 1];
    const alone = !is(line[index + 1], Word);
    return unit !== undefined && is(unit, Unit) && is(word, Word) ? [{ unit, word, alone }] : [];
  });
  const idle = words.every(({ word, alone }) => alone && describingWords.has(word.image.toLowerCase()));
  return {
    message: `the value ends before ${shown(token)}`,
    at: spanOf(source, token),
    help: idle
      ? 'take the word out; what is measured is said by the name before the value'
      : 'take it out, or put a comma or a sign before it; a comment begins with `#`',
    ...(idle
      ? {
          fix: words.map(({ unit, word }) => ({
            span: { source, start: endOf(unit), end: endOf(word) },
            text: '',
          })),
        }
      : {}),
  };
}

/** `rounded 1/4 + 1/8`, `half letter x 5` */
export function sumAmongWords({ source, line, token }: Stop): Report | null {
  if (!is(token, Plus, Minus, Star, Slash, X) || !line.some((part) => is(part, FirstOfPhrase))) return null;
  return is(token, X)
    ? {
        message: 'a size in words is complete, and no side follows it',
        at: spanOf(source, token),
        help: 'write `half letter`, or two sides as in `5 x 7`',
      }
    : {
        message: 'a sum among words stands between brackets',
        at: spanOf(source, token),
        help: 'write it as in `rounded (1/4 + 1/8)`',
      };
}

/** `+5` */
export function leadingPlus({ source, token, after }: Stop): Report | null {
  if (!is(token, Plus)) return null;
  const [value] = after;
  return {
    message: 'no sign stands before a value but `-`',
    at: spanOf(source, token),
    help: value === undefined ? 'take it out' : `write \`${value.image}\``,
    ...(value === undefined
      ? {}
      : { fix: [{ span: { source, start: token.startOffset, end: value.startOffset }, text: '' }] }),
  };
}

/** `5 7` */
export function numbersSideBySide({ source, token, before }: Stop): Report | null {
  if (!is(token, NumberToken) || !is(before, NumberToken, Unit) || before === undefined) return null;
  return {
    message: `${shown(before)} and ${shown(token)} stand side by side`,
    at: spanOf(source, before, token),
    help: `${thousands(before, token)}put an \`x\` between the sides of a size, a comma between the items of a list, a sign between values`,
  };
}

/** `1 000` */
const thousands = (before: Token, { image }: Token): string =>
  /^\d{1,2}$/.test(before.image) && /^\d{3}$/.test(image)
    ? `write \`${before.image}${image}\` if it is one number; else `
    : '';

/** `(5 + 3` */
export function openBracket({ source, line, token }: Stop): Report | null {
  if (!is(token, Eol, Comma, X)) return null;
  const open: Token[] = [];
  for (const part of line.slice(0, line.indexOf(token))) {
    if (is(part, OpenBracket)) open.push(part);
    if (is(part, CloseBracket)) open.pop();
  }
  const last = open.at(-1);
  if (last === undefined) return null;
  return { message: 'this bracket is not closed', at: spanOf(source, last), help: 'write `)` where it ends' };
}

export function closedBracket({ source, token }: Stop): Report | null {
  if (!is(token, CloseBracket)) return null;
  const at = spanOf(source, token);
  return { message: 'this bracket closes nothing', at, help: 'take it out, or write `(` where it begins' };
}
