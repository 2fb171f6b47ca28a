import type { BlockNode, EntryNode, LetNode, StringNode, WordNode } from '../src/syntax/ast.js';
import type { Source } from '../src/text/source.js';
import { endOf, is, spanOf, type Token } from './token.js';
import { Eol, Expect, Let, Like, OpenBrace, Section, Text, Word, X } from './tokens.js';

/** A line that could not be read, with the token that ends it. */
export interface BrokenLine {
  readonly source: Source;
  readonly tokens: readonly Token[];
}

export const nothing = (): null => null;

/** The name, if it can be told, and no value. */
export function brokenLet({ source, tokens }: BrokenLine): LetNode | null {
  const [first, name] = tokens;
  if (!is(first, Let) || !is(name, Word)) return null;
  return { kind: 'let', span: spanOfLine(source, tokens), name: word(source, name as Token), value: null };
}

/** The property's name without values; an `expect` without a value. */
export function brokenEntry({ source, tokens }: BrokenLine): EntryNode | null {
  const [first, name] = tokens;
  const span = spanOfLine(source, tokens);
  if (is(first, Word)) return { kind: 'property', span, name: word(source, first as Token), values: [] };
  if (is(first, Section) && is(name, Text))
    return { kind: 'section', span, title: titleOf(source, name as Token), values: [] };
  if (!is(first, Expect) || !is(name, Word)) return null;
  return {
    kind: 'expect',
    span,
    name: word(source, name as Token),
    compare: '=',
    value: null,
    tolerance: null,
  };
}

/** A block under the name it was surely meant to have, so that what names it finds it. */
export function brokenHeader({ source, tokens }: BrokenLine): BlockNode | null {
  const type = tokens[0] as Token;
  const name = meantName(tokens);
  if (name === null) return null;
  const [like, next] = tokens.slice(tokens.findIndex((token) => is(token, Like)) + 1);
  const isWhole = is(like, Word) && like !== type && is(next, OpenBrace, Eol);
  return {
    kind: 'block',
    span: spanOfLine(source, tokens),
    type: type.image as BlockNode['type'],
    name: { kind: 'word', span: spanOf(source, tokens[1] as Token), text: name },
    like: isWhole ? word(source, like as Token) : null,
    entries: [],
  };
}

/** `5x7` is read as `card-5x7`, `half letter` and `"Half letter"` as `half-letter`; null where nothing can be made of it. */
export function meantName(header: readonly Token[]): string | null {
  const parts: string[] = [];
  for (const token of header.slice(1)) {
    if (is(token, Like, OpenBrace)) break;
    parts.push(is(token, Text) ? String(token.payload ?? '') : token.image);
  }
  const touching = header.slice(2, parts.length + 1).every((token, index) => {
    const before = header[index + 1];
    return before !== undefined && endOf(before) === token.startOffset;
  });
  const plain = parts.join(touching ? '' : ' ').toLowerCase();
  const joined = plain.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
  if (joined === '' || joined.length > 60) return null;
  // `x1` begins with the sign between the sides of a size, and is no name as it stands.
  const isNone = is(header[1], X) && joined === plain;
  return /^[a-z]/.test(joined) && !isNone ? joined : `card-${joined}`;
}

const titleOf = (source: Source, token: Token): StringNode => ({
  kind: 'string',
  span: spanOf(source, token),
  value: String(token.payload ?? ''),
});

const word = (source: Source, token: Token): WordNode => ({
  kind: 'word',
  span: spanOf(source, token),
  text: token.image,
});

/** Up to what ends it. */
const spanOfLine = (source: Source, tokens: readonly Token[]) =>
  spanOf(source, tokens[0] as Token, tokens.at(-2) ?? tokens[0]);
