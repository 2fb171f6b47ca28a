import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { format } from '../../src/format/format.js';
import { PROBLEMS } from '../../src/problems.js';
import { source } from '../../src/text/source.js';
import { referenceExamples } from '../support/reference-examples.js';
import { specs } from '../support/specs.js';

/** The layout of a text that has no slip. */
function formatted(text: string): string {
  const { file, diagnostics } = parse(source('recipe.plica', text));
  expect(diagnostics).toEqual([]);
  return format(file);
}

describe('before and after', () => {
  const names = readdirSync(import.meta.dirname).flatMap(
    (name) => /^(.+)\.before\.plica$/.exec(name)?.[1] ?? [],
  );

  test.each(names)('%s', async (name) => {
    const after = formatted(readFileSync(join(import.meta.dirname, `${name}.before.plica`), 'utf8'));
    await expect(after).toMatchFileSnapshot(`${name}.after.plica`);
    expect(formatted(after)).toBe(after);
  });
});

describe('is in the layout', () => {
  test.each(Object.entries(specs()))('%s', (_, text) => {
    expect(formatted(text)).toBe(text);
  });

  test.each(PROBLEMS)('the example of $name, mended', ({ example: { mended } }) => {
    expect(formatted(mended)).toBe(mended);
  });

  test.each(referenceExamples.filter(({ right }) => right))('the reference at line $line', ({ text }) => {
    expect(formatted(text)).toBe(text);
  });
});

test('of nothing comes nothing', () => {
  expect(formatted('')).toBe('');
  expect(formatted(' \n\t\n')).toBe('');
});

test('comments alone make a file', () => {
  expect(formatted('\n # nothing to cut today \n\n\n\t#')).toBe('# nothing to cut today\n\n#\n');
});

test('a file of one line ends it with LF', () => {
  expect(formatted('units mm')).toBe('units mm\n');
});

test('brackets as deep and sums as long as the language allows', () => {
  const deep = `let deep = ${'('.repeat(50)}hand${')'.repeat(50)}\n`;
  const long = `let long = 1${' + 1'.repeat(500)}\n`;
  expect(formatted(deep.replaceAll('(', '( ').replaceAll(')', ' )'))).toBe(deep);
  expect(formatted(long.replaceAll(' + ', '  +  '))).toBe(long);
});

test('what cannot be seen stays where it stands', () => {
  const hidden = 'units in # \u202e\u2066\ufeff\n\nenvelope tides {\n  title: "\u200bA\u2028\u00a0"\n}\n';
  expect(parse(source('recipe.plica', hidden)).doubts).toHaveLength(2);
  expect(formatted(hidden.replaceAll('  ', '\t '))).toBe(hidden.replace(' #', '  #'));
});

test('a text with a slip comes back as it is', () => {
  for (const text of ['envelope a {\n card: 51/2 x 8\n}', 'card:A6', 'envelope a {let b=2\n}\n']) {
    expect(format(parse(source('recipe.plica', text)).file)).toBe(text);
  }
});
