import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { format } from '../../src/format/format.js';
import type { FileNode } from '../../src/syntax/ast.js';
import { source } from '../../src/text/source.js';
import { spanText } from '../../src/text/span.js';
import { printTree } from '../support/print-tree.js';
import { texts } from '../support/texts.js';
import { goodRecipes, looseLayouts, respacedRecipes } from './loose-layouts.js';

const seed = { seed: 1, numRuns: 500 };

const read = (text: string): FileNode => parse(source('recipe.plica', text)).file;
const formatted = (text: string): string => format(read(text));
const withoutWhiteSpace = (text: string): string => text.replace(/[ \t\r\n]/g, '');
const commentsOf = ({ comments }: FileNode): readonly string[] =>
  comments.map(({ span }) => spanText(span).replace(/[ \t]+$/, ''));

/** A law holds for good recipes as they are, and however they are laid out. */
const layouts = fc.oneof({ weight: 20, arbitrary: looseLayouts }, fc.constantFrom(...goodRecipes));

test('the layouts made up for these laws are good recipes, and odd in every way', () => {
  const seen: string[] = [];
  fc.assert(
    fc.property(looseLayouts, (text) => {
      seen.push(text);
      expect(parse(source('recipe.plica', text)).diagnostics).toEqual([]);
    }),
    { ...seed, numRuns: 1500 },
  );
  const oddities = [
    /like[ \t]+house[ \t]*\n[ \t]*\{/, // a brace on the next line
    /like[ \t]+house[ \t]*(?:#.*)?\n[ \t]*#.*\n[ \t]*\{/, // comments before it
    /\{[ \t]*#/,
    /,[ \t]*#/,
    /\}[ \t]*#/,
    /^\s*#/,
    /\n[ \t]*\n[ \t]*\n/,
    /\r(?!\n)/,
    /\r\n/,
    /\S$/,
  ];
  expect(oddities.filter((oddity) => !seen.some((text) => oddity.test(text)))).toEqual([]);
});

test('white space changes and nothing else', () => {
  fc.assert(
    fc.property(layouts, (text) => {
      expect(withoutWhiteSpace(formatted(text))).toBe(withoutWhiteSpace(text));
    }),
    seed,
  );
});

test('what is laid out parses without a finding, to the same tree, with the same comments in order', () => {
  fc.assert(
    fc.property(layouts, (text) => {
      const before = read(text);
      const after = parse(source('recipe.plica', format(before)));
      expect(after.diagnostics).toEqual([]);
      expect(printTree(after.file)).toBe(printTree(before));
      expect(commentsOf(after.file)).toEqual(commentsOf(before));
    }),
    seed,
  );
});

test('laid out twice is laid out once', () => {
  fc.assert(
    fc.property(layouts, (text) => {
      const once = formatted(text);
      expect(formatted(once)).toBe(once);
    }),
    seed,
  );
});

test('every line ends as the first does, in no blank; no two empty lines, none at the start or the end', () => {
  fc.assert(
    fc.property(layouts, (text) => {
      const lineEnd = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
      const after = formatted(text);
      expect(after.endsWith(lineEnd)).toBe(true);
      const lines = after.slice(0, -lineEnd.length).split(lineEnd);
      expect(lines.filter((line) => /[\r\n]|[ \t]$/.test(line))).toEqual([]);
      expect(lines.filter((line, index) => line === '' && (lines[index - 1] ?? '') === '')).toEqual([]);
      expect(lines.at(-1)).not.toBe('');
    }),
    seed,
  );
});

test('a block has an empty line before it and after it, and none at its edges', () => {
  fc.assert(
    fc.property(respacedRecipes, ([, text]) => {
      const lines = formatted(text).split('\n');
      for (const [index, line] of lines.entries()) {
        if (/^(paper|style|envelope) /.test(line) && index > 0) expect(lines[index - 1]).toBe('');
        if (line.endsWith('}')) expect(lines[index + 1]).toBe('');
        if (line.endsWith('{')) expect(lines[index + 1]).not.toBe('');
        if (line === '}') expect(lines[index - 1]).not.toBe('');
      }
    }),
    seed,
  );
});

test('how many spaces or tabs there were in a line makes no difference', () => {
  fc.assert(
    fc.property(respacedRecipes, ([text, respaced]) => {
      expect(formatted(respaced)).toBe(formatted(text));
    }),
    seed,
  );
});

test('a byte order mark and the line ends of another system are kept', () => {
  fc.assert(
    fc.property(fc.constantFrom(...goodRecipes), fc.constantFrom('\r\n', '\r'), (text, lineEnd) => {
      const foreign = (lines: string): string => `\ufeff${lines.replaceAll('\n', lineEnd)}`;
      expect(formatted(foreign(text))).toBe(foreign(formatted(text)));
    }),
    seed,
  );
});

test('of no text is a character lost, whatever is wrong with it', () => {
  fc.assert(
    fc.property(texts, (text) => {
      expect(withoutWhiteSpace(formatted(text))).toBe(withoutWhiteSpace(text));
    }),
    { ...seed, numRuns: 3000 },
  );
});
