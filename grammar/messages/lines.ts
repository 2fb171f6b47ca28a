import type { Report } from '../../src/diagnostics/problem.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf } from '../token.js';
import {
  BlockType,
  CloseBrace,
  CloseBracket,
  Colon,
  Comma,
  Compare,
  Eol,
  Equals,
  Expect,
  Let,
  Minus,
  NumberToken,
  OpenBrace,
  OpenBracket,
  Plus,
  PlusMinus,
  Slash,
  Star,
  Units,
  Use,
  Word,
  X,
} from '../tokens.js';
import type { Stop } from './stop.js';

/** The line, or a bracket, ends where something is still wanted. */
export function nothingAfter({ source, line, token, before }: Stop): Report | null {
  if (before === undefined || !is(token, Eol, Comma, CloseBracket)) return null;
  const wanted = waiting.find(({ types }) => is(before, ...types));
  if (wanted !== undefined)
    return {
      message: `${wanted.missing} is missing after ${shown(before)}`,
      at: spanOf(source, before),
      ...(/^[ \t]*#\S/.test(source.text.slice(endOf(before), endOf(before) + 50))
        ? { why: '`#` begins a comment, so what follows it is not read' }
        : {}),
      help: wanted.help,
    };
  if (is(line[0], Expect) && line.indexOf(before) < 2) {
    return {
      message: `${shown(before)} is compared with nothing`,
      at: spanOf(source, before),
      help:
        before.image === 'post'
          ? 'write `expect post us-letter`, with the class of post that must take it'
          : 'write `expect NAME = VALUE`; `<`, `<=`, `>` and `>=` compare too',
    };
  }
  if (is(line[0], Word) && line.length === 2) {
    return {
      message: `${shown(before)} has no value`,
      at: spanOf(source, before),
      help: `write \`${before.image}: VALUE\``,
    };
  }
  return null;
}

const waiting = [
  {
    types: [Colon],
    missing: 'a value',
    help: 'write the value, or take the line out to leave the property to its default',
  },
  { types: [Equals, Compare, PlusMinus], missing: 'a value', help: 'write the value' },
  { types: [Comma], missing: 'an item', help: 'write it, or take the comma out' },
  {
    types: [Plus, Minus, Star, Slash, OpenBracket],
    missing: 'a value',
    help: 'write it, or take the sign out',
  },
  { types: [X], missing: 'the second side', help: 'write both sides, as in `5 x 7`' },
  { types: [Units], missing: '`mm`, `cm` or `in`', help: 'write `units mm`, `units cm` or `units in`' },
  { types: [Use], missing: 'a file', help: 'write `use "papers.plica"`' },
  { types: [Let], missing: 'a name', help: 'write `let NAME = VALUE`' },
  { types: [Expect], missing: 'a name', help: 'write `expect NAME = VALUE`' },
];

/** `bulk:: 1/4` */
export function doubled({ source, token, before }: Stop): Report | null {
  if (before === undefined || token.tokenType !== before.tokenType || !is(token, Colon, Equals, X))
    return null;
  const span = spanOf(source, token);
  return {
    message: `${shown(token)} stands twice`,
    at: span,
    help: 'take one out',
    fix: [{ span, text: '' }],
  };
}

/** `expect 5 < blank` */
export function expectBackwards({ source, line, token, after }: Stop): Report | null {
  if (!is(line[0], Expect) || line[1] !== token || !is(token, NumberToken)) return null;
  const sign = after.findIndex((part) => is(part, Compare, Equals));
  const name = after[sign + 1];
  const turned = turns.get(after[sign]?.image ?? '');
  return {
    message: 'an `expect` begins with the name of what is measured',
    at: spanOf(source, token),
    help:
      sign >= 0 && turned !== undefined && is(name, Word)
        ? `write \`expect ${name?.image} ${turned} ${source.text.slice(token.startOffset, endOf(line[sign + 1] ?? token))}\``
        : 'write `expect NAME = VALUE`',
  };
}

const turns: ReadonlyMap<string, string> = new Map([
  ['=', '='],
  ['<', '>'],
  ['<=', '>='],
  ['>', '<'],
  ['>=', '<='],
]);

/** `let sides = 5, 7` */
export function listForOne({ source, line, token }: Stop): Report | null {
  if (!is(token, Comma) || !is(line[0], Let, Expect, Use)) return null;
  return {
    message: `${shown(line[0])} takes one value, and no list`,
    at: spanOf(source, token),
    help: is(line[0], Let)
      ? 'write a `let` for each, or `x` between the sides of a size'
      : `write ${is(line[0], Use) ? 'a `use`' : 'an `expect`'} for each, on a line of its own`,
  };
}

/** `card: { A6 }` */
export function blockAsValue({ source, token }: Stop): Report | null {
  if (!is(token, OpenBrace, CloseBrace)) return null;
  return {
    message: 'a value takes no braces',
    at: spanOf(source, token),
    help: 'write the value right after the colon, a list with commas',
  };
}

/** Any other: what stands there, and what could. */
export function unexpected({ source, line, token, before }: Stop): Report {
  const at = token.image === '' && before !== undefined ? spanOf(source, before) : spanOf(source, token);
  const place = before === undefined ? '' : ` after ${shown(before)}`;
  const form = forms.find(({ type }) => is(line[0], type));
  return {
    message: `${shown(token)} cannot stand here${place}`,
    at,
    help: form?.help ?? 'write `NAME: VALUE`',
  };
}

const forms = [
  { type: Units, help: 'write `units mm`, `units cm` or `units in`, and nothing else on the line' },
  { type: Use, help: 'write `use "papers.plica"`, and nothing else on the line' },
  { type: Let, help: 'write `let NAME = VALUE`' },
  { type: BlockType, help: 'write `envelope NAME {` or `envelope NAME like OTHER {`' },
  { type: Expect, help: 'write `expect NAME = VALUE`, with `+- VALUE` after it if need be' },
];
