import type { CommentNode, FileNode } from '../syntax/ast.js';
import { spanText } from '../text/span.js';
import type { Piece } from './piece.js';
import { piecesOf } from './pieces.js';
import { lineEnds } from './white-space.js';

/** The lines of the layout, without their ends; an empty line is an empty text. */
export function linesOf({ source: { text }, statements, comments }: FileNode): readonly string[] {
  const lines: string[] = [];
  let before = START;
  let next = 0;
  for (const piece of piecesOf(statements)) {
    const first = next;
    while ((comments[next]?.span.start ?? Infinity) < piece.start) next++;
    const depth = piece.kind === 'close' ? piece.depth + 1 : piece.depth;
    const led = comments.slice(first, next).map((comment) => commentPiece(comment, depth));
    setDown(lines, text, before, [...led, piece]);
    before = piece;
  }
  const rest = comments.slice(next).map((comment) => commentPiece(comment, 0));
  setDown(lines, text, before, rest);
  return lines;
}

/** What stands before the first piece. */
const START: Piece = { kind: 'start', text: '', start: 0, end: 0, space: null, depth: 0 };

/** A comment, indented as what follows it unless it trails what precedes it. */
const commentPiece = ({ span }: CommentNode, depth: number): Piece => ({
  kind: 'comment',
  text: spanText(span).replace(/[ \t]+$/, ''),
  start: span.start,
  end: span.end,
  space: '  ',
  depth,
});

/** Adds a piece, and the comments that lead up to it, to the lines. */
function setDown(lines: string[], text: string, before: Piece, run: readonly Piece[]): void {
  const breaks = run.map((piece, index) => breakBefore(text, run[index - 1] ?? before, piece));
  const lacking = standApart(before, run.at(-1)) && !breaks.includes('empty line');
  const first = lacking ? breaks.indexOf('line') : -1;
  for (const [index, { text: written, space, depth }] of run.entries()) {
    if (breaks[index] === 'none') {
      lines[lines.length - 1] += `${space}${written}`;
      continue;
    }
    if (breaks[index] === 'empty line' || index === first) lines.push('');
    lines.push(INDENT.repeat(depth) + written);
  }
}

const INDENT = '  ';

/** What comes between two neighbours; of any empty lines one is kept. */
function breakBefore(text: string, before: Piece, piece: Piece): 'none' | 'line' | 'empty line' {
  const ends = lineEnds(text, before.end, piece.start);
  const trails = piece.kind === 'comment' ? ends === 0 : piece.space !== null && before.kind !== 'comment';
  if (trails && before.kind !== 'start') return 'none';
  const close = FOLLOWED_AT_ONCE.has(before.kind) || FOLLOWING_AT_ONCE.has(piece.kind);
  return ends > 1 && !close ? 'empty line' : 'line';
}

/** No empty line comes after these, nor before those. */
const FOLLOWED_AT_ONCE: ReadonlySet<Piece['kind']> = new Set(['start', 'header', 'open']);
const FOLLOWING_AT_ONCE: ReadonlySet<Piece['kind']> = new Set(['open', 'close']);

/**
 * Whether an empty line parts two neighbours among the pieces: a block and another statement. Where comments stand between
 * them and none of their empty lines is kept, it comes before the first that has a line of its own.
 */
const standApart = (before: Piece, piece: Piece | undefined): boolean =>
  (before.kind === 'close' && piece?.kind === 'statement') ||
  (before.kind !== 'start' && piece?.kind === 'header');
