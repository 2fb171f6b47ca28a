import { expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { applyEdits } from '../../src/text/edit.js';
import { source } from '../../src/text/source.js';

/** A text with all its edits made. */
function mended(text: string): string {
  const { diagnostics } = parse(source('recipe.plica', text));
  return applyEdits(
    text,
    diagnostics.flatMap(({ fix }) => fix ?? []),
  );
}

test.each([
  [
    '`like` on a line of its own leaves no empty line',
    'envelope tides {\n  # from the house\n  like house\n  card: A6\n}\n',
    'envelope tides like house {\n  # from the house\n  card: A6\n}\n',
  ],
  [
    'with a comment behind it, its line stays',
    'envelope tides {\n  like house # since spring\n  card: A6\n}\n',
    'envelope tides like house {\n # since spring\n  card: A6\n}\n',
  ],
  [
    'a `;` between two entries takes the spaces before it along',
    'envelope tides {\r\n  card: A6 ; bulk: 1\r\n}\r\n',
    'envelope tides {\r\n  card: A6\r\n  bulk: 1\r\n}\r\n',
  ],
])('%s', (_, text, after) => {
  expect(mended(text)).toBe(after);
});
