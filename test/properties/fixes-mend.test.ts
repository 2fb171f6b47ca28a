import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { applyEdits } from '../../src/text/edit.js';
import { source } from '../../src/text/source.js';
import { spanText } from '../../src/text/span.js';
import { withUnseen } from '../../src/text/visible.js';
import { compileText } from '../support/compile-text.js';
import { fixedText } from '../support/fixed-text.js';
import { refusedRecipes } from '../support/rejected.js';

const recipes = refusedRecipes().map((path) => {
  const text = readFileSync(path, 'utf8');
  return { path, text, found: compileText(text).diagnostics };
});
const mendable = recipes.filter(({ found }) => found.some(({ fix }) => fix));
const wholly = mendable.filter(({ found }) =>
  found.every(({ severity, fix }) => severity === 'note' || fix !== null),
);

const errors = (found: readonly Diagnostic[]): readonly string[] =>
  found.filter(({ severity }) => severity === 'error').map(({ message }) => message);

/** The comments of a text, each without what surrounds it, and as it is seen: what cannot be seen is what an edit may take out. */
const comments = (text: string): readonly string[] =>
  parse(source('', text)).file.comments.map(({ span }) =>
    withUnseen(spanText(span), () => '')
      .replaceAll(/\s+/g, ' ')
      .trimEnd(),
  );

/** That texts stand in another in their order; more may have come (a comment written as elsewhere becomes one of ours). */
function expectKept(texts: readonly string[], within: string): void {
  let from = 0;
  for (const text of texts) {
    const at = within.indexOf(text, from);
    expect(at, `${text} in ${within}`).toBeGreaterThanOrEqual(0);
    from = at + text.length;
  }
}

test('there are recipes for each law', () => {
  expect(mendable.length).toBeGreaterThan(20);
  expect(wholly.length).toBeGreaterThan(10);
});

describe('where every error and warning carries an edit, all edits together make the recipe pass', () => {
  test.each(wholly)('$path', ({ text, found }) => {
    const edits = found.flatMap(({ fix }) => fix ?? []);
    expect(errors(compileText(applyEdits(text, edits)).diagnostics)).toEqual([]);
  });
});

describe('mending makes no more errors, keeps the comments, and leaves nothing to mend', () => {
  test.each(mendable)('$path', ({ text, found }) => {
    const once = fixedText(text);
    expect(once.fixed).not.toEqual([]);
    expect(errors(compileText(once.text).diagnostics).length).toBeLessThanOrEqual(errors(found).length);
    expectKept(comments(text), comments(once.text).join('\n'));
    expect(fixedText(once.text)).toEqual({ text: once.text, fixed: [] });
  });

  test.each(mendable)('$path, with CRLF: the same, and no other line end comes in', ({ text }) => {
    const { text: mended } = fixedText(text.replaceAll('\n', '\r\n'));
    expect(mended).not.toMatch(/(?<!\r)\n|\r(?!\n)/);
    expect(mended.replaceAll('\r\n', '\n')).toBe(fixedText(text).text);
  });
});

describe('the help names what the edit writes', () => {
  /** What edits put in, but for spaces and marks; of one over several lines the words that were not there before. */
  const spoken = mendable.flatMap(({ path, found }) =>
    found.flatMap(({ help, message, fix }) =>
      (fix ?? [])
        .flatMap(({ span, text }) =>
          text.trim().includes('\n')
            ? text.split(/\s+/).filter((word) => !spanText(span).includes(word))
            : [text.trim().replaceAll(/\s+/g, ' ')],
        )
        .filter((text) => /[\p{L}\d]/u.test(text))
        .map((text) => ({ path, message, help: help ?? '', text })),
    ),
  );
  test.each(spoken)('$path: $text', ({ help, message, text }) => {
    expect(`${message}\n${help}`).toContain(text);
  });
});
