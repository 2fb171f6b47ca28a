import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { applyEdits } from '../../src/text/edit.js';
import { source } from '../../src/text/source.js';
import { texts } from '../support/texts.js';
import { TREE_LAWS } from '../support/tree-laws.js';

const seed = { seed: 1 };
const read = (text: string) => parse(source('recipe.plica', text));

test('parsing never throws, for any text and for any good recipe with a piece cut, put in, doubled or moved', () => {
  fc.assert(
    fc.property(texts, (text) => {
      expect(read(text).file.kind).toBe('file');
    }),
    { ...seed, numRuns: 1000 },
  );
});

test.each(Object.entries(TREE_LAWS))('%s', (_, against) => {
  fc.assert(
    fc.property(texts, (text) => {
      expect(against(read(text))).toEqual([]);
    }),
    { ...seed, numRuns: 1000 },
  );
});

describe('a fix mends what it is offered for', () => {
  const folder = 'test/rejected/syntax';
  const names = readdirSync(folder).filter((name) => name.endsWith('.plica'));
  test.each(names)('%s', (name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const { diagnostics } = read(text);
    for (const { fix } of diagnostics) {
      if (fix === null) continue;
      const mended = read(applyEdits(text, fix));
      expect(mended.diagnostics).toHaveLength(diagnostics.length - 1);
    }
  });

  test.each(names)('%s: all of them together', (name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    const { diagnostics } = read(text);
    const edits = diagnostics.flatMap(({ fix }) => fix ?? []);
    const left = diagnostics.filter(({ fix }) => fix === null);
    expect(read(applyEdits(text, edits)).diagnostics).toHaveLength(left.length);
  });
});
