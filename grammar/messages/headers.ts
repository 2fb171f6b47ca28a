import type { Report } from '../../src/diagnostics/problem.js';
import { nearest } from '../../src/text/nearest.js';
import { meantName } from '../broken.js';
import { shown } from '../slip.js';
import { is, spanOf, type Token } from '../token.js';
import {
  BlockType,
  Eol,
  Expect,
  Let,
  Like,
  Minus,
  NumberToken,
  OpenBrace,
  Stray,
  Text,
  Unit,
  Word,
  X,
} from '../tokens.js';
import type { Stop } from './stop.js';

/** `envelope 5x7 {` */
export function headerName(stop: Stop): Report | null {
  const { source, line, token, before } = stop;
  const [type, name] = line;
  if (type === undefined || !is(type, BlockType)) return null;
  if (before !== undefined && !is(before, BlockType) && !is(name, Word)) return null;
  if (is(token, OpenBrace)) return nameMissing(stop, type);
  if (is(line[2], Like) && token !== name) return null;
  const [, second, third, ...others] = line.slice(1, -1);
  if (is(name, Word) && is(second, Word) && is(third, Word) && others.length === 0) {
    if (second !== undefined && nearest(second.image, ['like']).length > 0) return likeMisspelt(stop, second);
  }
  const meant = meantName(line);
  if (is(token, Stray) && (meant === null || !/^[ -~]+$/.test(token.image))) return null;
  const end = line.findIndex((part, index) => index > 0 && !is(part, ...partsOfNames));
  const at = end > 1 && name !== undefined ? spanOf(source, name, line[end - 1]) : spanOf(source, token);
  const words = line.slice(1, end);
  const orLike =
    words.length === 2 && words.every((word) => is(word, Word)) && !is(line[end], Like)
      ? `, or \`${type.image} ${words
          .map(({ image }) => image)
          .join(' like ')
          .toLowerCase()}\``
      : '; a `title` may have any letters';
  return {
    message: `\`${source.text.slice(at.start, at.end)}\` is not a name`,
    at,
    why: 'a name is one word: a letter, then letters, digits and single hyphens; what it is `like` follows it',
    help: meant === null ? `write \`${type.image} NAME {\`` : `write \`${type.image} ${meant}\`${orLike}`,
    ...(meant === null || words.length === 0 || orLike.startsWith(',')
      ? {}
      : { fix: [{ span: at, text: meant }] }),
  };
}

/** `envelope tides liek house {` */
const likeMisspelt = ({ source }: Stop, word: Token): Report => ({
  message: `\`${word.image}\` is written \`like\` here`,
  at: spanOf(source, word),
  help: 'write `like`',
  fix: [{ span: spanOf(source, word), text: 'like' }],
});

const partsOfNames = [Word, NumberToken, X, Text, Unit, Minus, Stray];

function nameMissing({ source, before }: Stop, type: Token): Report {
  const after = before ?? type;
  return {
    message: is(before, BlockType)
      ? `this ${type.image} has no name`
      : `a name is missing after ${shown(after)}`,
    at: spanOf(source, after),
    help: `write \`${type.image} NAME {\` or \`${type.image} NAME like OTHER {\``,
  };
}

/** `envelope tides like house! {`, `envelope tides like half letter {` */
export function likeName({ source, line, token }: Stop): Report | null {
  const [type] = line;
  const first = line.findIndex((part) => is(part, Like)) + 1;
  const end = line.findIndex((part, index) => index > first && is(part, OpenBrace, Eol));
  const parts = line.slice(first, end);
  if (type === undefined || !is(type, BlockType) || first === 0 || line.indexOf(token) < first) return null;
  if (end < 0 || parts.length === 0 || is(parts[0], X)) return null;
  const at = spanOf(source, parts[0] as Token, parts.at(-1));
  const written = source.text.slice(at.start, at.end);
  const [, name] = /^[^a-z0-9]*([a-z](?:-?[a-z0-9])*)[^a-z0-9]*$/.exec(written.replaceAll('_', '-')) ?? [];
  return {
    message: `\`${written}\` is not a name`,
    at,
    why: 'a block is like one other, and that one’s name is one word: a letter, then letters, digits and single hyphens',
    ...(name === undefined
      ? { help: likeHelp(parts, written) }
      : { help: `write \`like ${name}\``, fix: [{ span: at, text: name }] }),
  };
}

function likeHelp(parts: readonly Token[], written: string): string {
  if (/^[^"]*\.plica$/.test(written))
    return `a file is brought in by \`use "${written}"\`; after \`like\` stands the name of a block in it`;
  const joined = meantName([parts[0] as Token, ...parts]);
  return joined === null || !is(parts[0], Word, Text)
    ? 'write the name as it is declared'
    : `write the name as it is declared, such as \`like ${joined}\``;
}

/** `let x = 5` */
export function reservedWord({ source, token, before }: Stop): Report | null {
  if (!is(token, X) || !is(before, Let, Expect, BlockType, Like)) return null;
  return {
    message: '`x` names nothing, because it stands between the sides of a size',
    at: spanOf(source, token),
    help: 'choose a longer name',
  };
}
