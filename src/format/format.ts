/*
 * format/: the one layout of a recipe file.
 * In: the tree of a text, with its comments and its source. Out: the same text with other white space.
 * Refuses to know: what anything in it means, and how a text is read.
 */
import type { FileNode } from '../syntax/ast.js';
import { linesOf } from './lines.js';
import { firstLineEnd, withoutWhiteSpace } from './white-space.js';

/**
 * The text of a file in the one layout. Nothing but spaces, tabs and line ends changes; every line ends as the first one
 * of the text does, the last one too. Where the tree does not hold all of the text, because a slip was found in it, the
 * text comes back as it is.
 */
export function format(file: FileNode): string {
  const { text } = file.source;
  const lineEnd = firstLineEnd(text) ?? '\n';
  const mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : '';
  const formatted =
    mark +
    linesOf(file)
      .map((line) => line + lineEnd)
      .join('');
  return withoutWhiteSpace(formatted) === withoutWhiteSpace(text) ? formatted : text;
}

const BYTE_ORDER_MARK = '\ufeff';
