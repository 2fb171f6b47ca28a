import type { Diagnostic } from '../src/diagnostics/diagnostic.js';
import type { Report } from '../src/diagnostics/problem.js';
import { lineText, position, type Source } from '../src/text/source.js';
import type { Edit } from '../src/text/edit.js';
import { type BrokenLine, meantName } from './broken.js';
import { characterName } from './characters.js';
import { endOf, is, spanOf, type Token } from './token.js';
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
  FirstOfPhrase,
  Let,
  Like,
  Minus,
  NumberToken,
  OpenBrace,
  OpenBracket,
  Plus,
  PlusMinus,
  Slash,
  Star,
  Stray,
  Text,
  Unclosed,
  Unit,
  Units,
  Use,
  Word,
  X,
} from './tokens.js';
import { gluedSize, unitWords } from './words.js';
import { shown, slip } from './slip.js';

/** The place where a line could not be read on. */
interface Stop {
  readonly source: Source;
  readonly line: readonly Token[];
  readonly token: Token;
  /** The token before it on the line. */
  readonly before: Token | undefined;
  /** Those that follow it on the line. */
  readonly after: readonly Token[];
}

/** What is wrong with a line that could not be read on from `token`, in our words; null if it has been said already. */
export function explain({ source, tokens: line }: BrokenLine, token: Token): Diagnostic | null {
  const index = line.indexOf(token);
  if (line.slice(0, index + 1).some(({ payload }) => payload === null)) return null;
  const stop = { source, line, token, before: line[index - 1], after: line.slice(index + 1) };
  for (const recognise of slips) {
    const what = recognise(stop);
    if (what !== null) return slip(what);
  }
  return slip(unexpected(stop));
}

type Recognise = (stop: Stop) => Report | null;

/** The slips that people make, the telling ones first. */
const slips: readonly Recognise[] = [
  inchMarkInString,
  inchMarkApart,
  unclosedString,
  strayCharacter,
  quotedWord,
  nothingAfter,
  headerName,
  sizeInOneWord,
  numberBesideBracket,
  unitApart,
  reservedWord,
  listForOne,
  sumAmongWords,
  thirdSide,
  leadingPlus,
  numbersSideBySide,
  openBracket,
  closedBracket,
  blockAsValue,
];

/** `title: "The 5" card"` */
function inchMarkInString({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, Text)) return null;
  const close = endOf(before) - 1;
  if (!/[0-9¼-¾⅐-⅞]/.test(source.text[close - 1] ?? '')) return null;
  const { line } = position(source, close);
  const end = (source.lineStarts[line - 1] ?? 0) + lineText(source, line).length;
  const rest = source.text.slice(close, end);
  const marks = [...rest.matchAll(/"/g)].map(({ index }) => close + index);
  if (marks.length < 2) return null;
  const sure = !/",/.test(rest) && !is(token, Colon);
  const edits: Edit[] = marks
    .slice(0, -1)
    .map((at) => ({ span: { source, start: at, end: at }, text: '\\' }));
  return {
    message: 'the string ends at the inch mark inside it',
    at: { source, start: close, end: close + 1 },
    label: 'the string ends here',
    help: 'write `\\"` for an inch mark in a string, or `in`',
    ...(sure ? { fix: edits } : {}),
  };
}

/** `8 1/2 "` */
function inchMarkApart({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, NumberToken) || !is(token, Text, Unclosed)) return null;
  const gap = { source, start: endOf(before), end: token.startOffset };
  const second = is(token, Text) ? /[0-9¼-¾⅐-⅞]([ \t]+)["”]$/.exec(token.image) : null;
  const fix: Edit[] = [{ span: gap, text: '' }];
  if (second?.[1] !== undefined) {
    const end = endOf(token) - 1;
    fix.push({ span: { source, start: end - second[1].length, end }, text: '' });
  }
  return {
    message: 'an inch mark touches its number',
    at: { source, start: token.startOffset, end: token.startOffset + 1 },
    help: `write \`${before.image}"\` or \`${before.image} in\``,
    ...(token.image.startsWith('"') ? { fix } : {}),
  };
}

/** `title: "Half letter` */
function unclosedString({ source, token }: Stop): Report | null {
  if (!is(token, Unclosed)) return null;
  const end = token.startOffset + token.image.trimEnd().length;
  return {
    message: 'this string is not closed',
    at: { source, start: token.startOffset, end: token.startOffset + 1 },
    why: 'a string ends on its line',
    help:
      token.image.trim() === '"'
        ? 'take the quote out, or write the string after it'
        : `write \`${token.image.trimEnd()}"\``,
    ...(token.image.trim() === '"' ? {} : { fix: [{ span: { source, start: end, end }, text: '"' }] }),
  };
}

/** What is typed for something else. */
const instead: ReadonlyMap<string, string> = new Map([
  ['_', 'names are joined by `-`'],
  ["'", 'a string stands between double quotes `"`, and an inch mark is `"`'],
  ['[', 'brackets are round, blocks stand between `{` and `}`, and a list needs neither'],
  [']', 'brackets are round, blocks stand between `{` and `}`, and a list needs neither'],
  ['&', 'join words by `-`, and list them by commas'],
  ['|', 'list values by commas'],
  ['~', 'write a tolerance as `+- 1/16`'],
  ['÷', 'divide by `/`'],
  ['·', 'multiply by `*`'],
  ['^', 'multiply by `*`'],
  ['$', 'a name needs no sign before it, and a price no currency'],
  ['€', 'a price needs no currency'],
  ['£', 'a price needs no currency'],
  ['\\', 'a line needs no sign to go on: a list goes on after its comma'],
  ['°', 'a recipe has no angles'],
  ['“', 'a string stands between double quotes `"`'],
  ['”', 'a string stands between double quotes `"`'],
  ['‘', 'a string stands between double quotes `"`'],
  ['’', 'a string stands between double quotes `"`'],
  ['.', 'a number is written `0.5` or `.5`, and no line ends in a point'],
]);

function strayCharacter({ source, token }: Stop): Report | null {
  if (!is(token, Stray)) return null;
  const character = String.fromCodePoint(token.image.codePointAt(0) ?? 0);
  const letter = /^\p{L}/u.test(token.image);
  return {
    message: letter
      ? `\`${token.image}\` is not a letter that names are made of`
      : `${shown(token)} has no meaning here`,
    at: spanOf(source, token),
    label: /[ -~\p{L}]/u.test(character) ? '' : `this is ${characterName(character.codePointAt(0) ?? 0)}`,
    help: letter
      ? 'use the letters a to z; a `title` may have any'
      : (instead.get(character) ?? 'take it out; inside a string it may stand'),
  };
}

/** `flap: "rounded" 3/8` */
function quotedWord({ source, token, before }: Stop): Report | null {
  if (before === undefined || !is(before, Text) || !is(token, NumberToken, Word)) return null;
  const value = String(before.payload ?? '');
  const bare = /^[a-z][a-z0-9-]*$/.test(value);
  const at = spanOf(source, before);
  return {
    message: `nothing follows a string but a comma, and ${shown(token)} does`,
    at,
    help: bare
      ? `write \`${value} ${token.image}\`, without quotes`
      : 'put all of it between the quotes, or a comma after them',
    ...(bare ? { fix: [{ span: at, text: value }] } : {}),
  };
}

/** The line, or a bracket, ends where something is still wanted. */
function nothingAfter({ source, line, token, before }: Stop): Report | null {
  if (before === undefined || !is(token, Eol, Comma, CloseBracket)) return null;
  const wanted = waiting.find(({ types }) => is(before, ...types));
  if (wanted !== undefined)
    return {
      message: `${wanted.missing} is missing after ${shown(before)}`,
      at: spanOf(source, before),
      help: wanted.help,
    };
  if (is(line[0], Expect) && line.indexOf(before) < 2) {
    return {
      message: `${shown(before)} is compared with nothing`,
      at: spanOf(source, before),
      help: 'write `expect NAME = VALUE`; `<`, `<=`, `>` and `>=` compare too',
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

/** `envelope 5x7 {` */
function headerName({ source, line, token, before }: Stop): Report | null {
  const [type, name] = line;
  if (type === undefined || !is(type, BlockType)) return null;
  if (before !== undefined && !is(before, BlockType) && !is(name, Word)) return null;
  if (is(token, OpenBrace)) {
    const after = before ?? type;
    return {
      message: is(before, BlockType)
        ? `this ${type.image} has no name`
        : `a name is missing after ${shown(after)}`,
      at: spanOf(source, after),
      help: `write \`${type.image} NAME {\` or \`${type.image} NAME like OTHER {\``,
    };
  }
  const words = line.slice(1).findIndex((part) => !is(part, Word, NumberToken, X, Text, Unit, Minus, Stray));
  const last = line[words] ?? token;
  const meant = meantName(line);
  const at = words > 0 && name !== undefined ? spanOf(source, name, last) : spanOf(source, token);
  return {
    message: `\`${source.text.slice(at.start, at.end)}\` is not a name`,
    at,
    why: 'a name is one word: a letter, then letters, digits and single hyphens; what it is `like` follows it',
    help:
      meant === null
        ? `write \`${type.image} NAME {\``
        : `write \`${type.image} ${meant}\`; a \`title\` may have any letters`,
  };
}

/** `5inx7in` */
function sizeInOneWord({ source, token, before }: Stop): Report | null {
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

/** `2 (a + b)` */
function numberBesideBracket({ source, token, before }: Stop): Report | null {
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
function unitApart({ source, token, before }: Stop): Report | null {
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

/** `let x = 5` */
function reservedWord({ source, token, before }: Stop): Report | null {
  if (!is(token, X) || !is(before, Let, Expect, BlockType, Like)) return null;
  return {
    message: '`x` names nothing, because it stands between the sides of a size',
    at: spanOf(source, token),
    help: 'choose a longer name',
  };
}

/** `let sides = 5, 7` */
function listForOne({ source, line, token }: Stop): Report | null {
  if (!is(token, Comma) || !is(line[0], Let, Expect)) return null;
  return {
    message: `${shown(line[0])} takes one value, and no list`,
    at: spanOf(source, token),
    help: is(line[0], Let)
      ? 'write a `let` for each, or `x` between the sides of a size'
      : 'write an `expect` for each',
  };
}

/** `rounded 1/4 + 1/8`, `half letter x 5` */
function sumAmongWords({ source, line, token }: Stop): Report | null {
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

/** `5 x 7 x 1/4` */
function thirdSide({ source, token, after }: Stop): Report | null {
  if (!is(token, X)) return null;
  const third = after.find((part) => is(part, NumberToken, Word));
  return {
    message: 'a size has two sides',
    at: third === undefined ? spanOf(source, token) : spanOf(source, token, third),
    help: `write the thickness as a property of its own: \`depth: ${third?.image ?? '1/4'}\` for a box, \`bulk: ${third?.image ?? '1/4'}\` for a thick card`,
  };
}

/** `+5` */
function leadingPlus({ source, token, after }: Stop): Report | null {
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
function numbersSideBySide({ source, token, before }: Stop): Report | null {
  if (!is(token, NumberToken) || !is(before, NumberToken, Unit) || before === undefined) return null;
  return {
    message: `${shown(before)} and ${shown(token)} stand side by side`,
    at: spanOf(source, before, token),
    help: 'put an `x` between the sides of a size, a comma between the items of a list, a sign between values',
  };
}

/** `(5 + 3` */
function openBracket({ source, line, token }: Stop): Report | null {
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

function closedBracket({ source, token }: Stop): Report | null {
  if (!is(token, CloseBracket)) return null;
  const at = spanOf(source, token);
  return { message: 'this bracket closes nothing', at, help: 'take it out, or write `(` where it begins' };
}

/** `card: { A6 }` */
function blockAsValue({ source, token }: Stop): Report | null {
  if (!is(token, OpenBrace, CloseBrace)) return null;
  return {
    message: 'a value takes no braces',
    at: spanOf(source, token),
    help: 'write the value right after the colon, a list with commas',
  };
}

/** Any other: what stands there, and what could. */
function unexpected({ source, line, token, before }: Stop): Report {
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
