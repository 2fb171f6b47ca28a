import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { source } from '../../src/text/source.js';
import { formatted, LAYOUT_LAWS, losesNothing } from '../support/layout-laws.js';
import { texts } from '../support/texts.js';
import { goodRecipes, looseLayouts, respacedRecipes } from './loose-layouts.js';

const seed = { seed: 1, numRuns: 500 };

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

test.each(Object.entries(LAYOUT_LAWS))('%s', (_, holds) => {
  fc.assert(fc.property(layouts, holds), seed);
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
  fc.assert(fc.property(texts, losesNothing), { ...seed, numRuns: 3000 });
});
