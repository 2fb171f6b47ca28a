import type {
  BlockNode,
  CatalogueNode,
  EntryNode,
  ExpectNode,
  ExpectPostNode,
  SectionNode,
  StatementNode,
  PropertyNode,
} from '../syntax/ast.js';
import type { Span } from '../text/span.js';
import type { Piece } from './piece.js';
import { signBetween, spell } from './spelling.js';
import { lineEnds } from './white-space.js';

/** The statements of a file as pieces, in the order of the text. */
export const piecesOf = (statements: readonly StatementNode[]): readonly Piece[] =>
  statements.flatMap((statement) => {
    if (statement.kind === 'block' || statement.kind === 'catalogue') return blockPieces(statement);
    return [piece('statement', statementText(statement), statement.span, null, 0)];
  });

function statementText(statement: Exclude<StatementNode, BlockNode | CatalogueNode>): string {
  if (statement.kind === 'units') return `units ${spell(statement.unit)}`;
  if (statement.kind === 'use') return `use ${spell(statement.path)}`;
  const { name, value } = statement;
  return `let ${spell(name)} =${value === null ? '' : ` ${spell(value)}`}`;
}

/** A block of one entry that stands on one line stays on one line. */
function blockPieces(block: BlockNode | CatalogueNode): readonly Piece[] {
  const { entries, span } = block;
  const { text } = span.source;
  const { header, headerEnd } = headerOf(block);
  const open = nextMark(text, headerEnd);
  const close = span.end - 1;
  const within = entries.length < 2 && lineEnds(text, open, close) === 0 ? ' ' : null;
  return [
    piece('header', header, { start: span.start, end: headerEnd }, null, 0),
    piece('open', '{', { start: open, end: open + 1 }, ' ', 0),
    ...entries.flatMap((entry) => entryPieces(entry, within)),
    piece('close', '}', { start: close, end: span.end }, entries.length === 0 ? '' : within, 0),
  ];
}

function headerOf(block: BlockNode | CatalogueNode): { readonly header: string; readonly headerEnd: number } {
  if (block.kind === 'catalogue') return { header: spell(block.head), headerEnd: block.head.span.end };
  const { type, name, like } = block;
  const header = `${type} ${spell(name)}${like === null ? '' : ` like ${spell(like)}`}`;
  return { header, headerEnd: (like ?? name).span.end };
}

const entryPieces = (entry: EntryNode, space: string | null): readonly Piece[] =>
  entry.kind === 'expect' || entry.kind === 'expect-post'
    ? [piece('entry', expectText(entry), entry.span, space, 1)]
    : listPieces(entry, space);

/** A piece for each item of the list, with its comma; an item begins a line where its author began one. */
function listPieces(entry: PropertyNode | SectionNode, space: string | null): readonly Piece[] {
  const { values, span } = entry;
  const name = entry.kind === 'property' ? spell(entry.name) : `section ${spell(entry.title)}`;
  const { text } = span.source;
  return values.map((value, index) => {
    const isLast = index === values.length - 1;
    const written = isLast ? spell(value) : `${spell(value)},`;
    const end = isLast ? span.end : nextMark(text, value.span.end) + 1;
    const before = values[index - 1];
    if (before === undefined) {
      return piece('entry', `${name}: ${written}`, { start: span.start, end }, space, 1);
    }
    const { start } = value.span;
    const beginsLine = lineEnds(text, before.span.end, start) > 0;
    return piece('entry', written, { start, end }, beginsLine ? null : ' ', 2);
  });
}

function expectText(entry: ExpectNode | ExpectPostNode): string {
  if (entry.kind === 'expect-post') return `expect post ${spell(entry.post)}`;
  const { name, value, tolerance } = entry;
  if (value === null) return `expect ${spell(name)}`;
  const wanted = `expect ${spell(name)} ${signBetween(name, value)} ${spell(value)}`;
  return tolerance === null ? wanted : `${wanted} ${signBetween(value, tolerance)} ${spell(tolerance)}`;
}

/** Where the next mark stands, past white space and comments. */
function nextMark(text: string, offset: number): number {
  const passed = /(?:[ \t\r\n]+|#[^\r\n]*)*/y;
  passed.lastIndex = offset;
  passed.test(text);
  return passed.lastIndex;
}

const piece = (
  kind: Piece['kind'],
  text: string,
  { start, end }: Pick<Span, 'start' | 'end'>,
  space: string | null,
  depth: number,
): Piece => ({ kind, text, start, end, space, depth });
