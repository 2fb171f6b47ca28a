import { parse } from '../../grammar/parser.js';
import { format } from '../../src/format/format.js';
import type { FileNode } from '../../src/syntax/ast.js';
import { source } from '../../src/text/source.js';
import { spanText } from '../../src/text/span.js';
import { printTree } from './print-tree.js';

const read = (text: string) => parse(source('recipe.plica', text));

export const formatted = (text: string): string => format(read(text).file);

export const withoutWhiteSpace = (text: string): string => text.replace(/[ \t\r\n]/g, '');

/** Of no text is a character lost, whatever is wrong with it. */
export const losesNothing = (text: string): boolean =>
  withoutWhiteSpace(formatted(text)) === withoutWhiteSpace(text);

/** What must hold of the layout of any text in whose writing nothing is wrong. */
export const LAYOUT_LAWS: Readonly<Record<string, (text: string) => boolean>> = {
  'white space changes and nothing else': losesNothing,
  'what is laid out parses without a finding, to the same tree, with the same comments in order': (text) => {
    const [before, after] = [read(text), read(formatted(text))];
    return (
      after.diagnostics.length === 0 &&
      printTree(after.file) === printTree(before.file) &&
      commentsOf(after.file).join('\n') === commentsOf(before.file).join('\n')
    );
  },
  'laid out twice is laid out once': (text) => formatted(formatted(text)) === formatted(text),
  'every line ends as the first does, in no blank; no two empty lines, none at the start or the end': (
    text,
  ) => {
    const lineEnd = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
    const after = formatted(text);
    if (after === '' || after === '\ufeff') return true;
    const lines = after.slice(0, -lineEnd.length).split(lineEnd);
    return (
      after.endsWith(lineEnd) &&
      !lines.some((line) => /[\r\n]|[ \t]$/.test(line)) &&
      !lines.some((line, index) => line === '' && (lines[index - 1] ?? '') === '') &&
      lines.at(-1) !== ''
    );
  },
};

const commentsOf = ({ comments }: FileNode): readonly string[] =>
  comments.map(({ span }) => spanText(span).replace(/[ \t]+$/, ''));
