import { expect, test } from 'vitest';
import { applyFixes, type Look } from '../../src/diagnostics/apply-fixes.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { applyEdits } from '../../src/text/edit.js';
import { lineEnd, type Source, source } from '../../src/text/source.js';
import { finding } from './findings.js';

/** Finds every stretch that a pattern matches, and offers to write something instead. */
const wherever =
  (pattern: RegExp, instead: string): Look =>
  (sources) =>
    sources.flatMap((given) =>
      [...given.text.matchAll(pattern)].map(({ index, 0: text }) => {
        const at = { source: given, start: index, end: index + text.length };
        return finding({
          at,
          message: `no ${text}`,
          fix: [{ span: at, text: instead }],
        });
      }),
    );

const both =
  (...looks: readonly Look[]): Look =>
  (sources) =>
    looks.flatMap((look) => look(sources));

const texts = (sources: readonly Source[]): readonly string[] => sources.map(({ text }) => text);
const messages = (found: readonly Diagnostic[]): readonly string[] => found.map(({ message }) => message);

test('edits in several texts, and again where one brings the next to light', () => {
  const look = both(wherever(/aa/g, 'b'), wherever(/bb/g, 'c'));
  const { sources, fixed } = applyFixes([source('one', 'aaaa'), source('two', 'x aa')], look);
  expect(texts(sources)).toEqual(['c', 'x b']);
  expect(messages(fixed)).toEqual(['no aa', 'no aa', 'no aa', 'no bb']);
});

test('an edit that does not serve is told from those that do', () => {
  const given = source('one', 'a a a bad a a');
  const look = both(wherever(/\ba\b/g, 'A'), wherever(/bad|worse/g, 'worse '.repeat(9)));
  const { sources, fixed } = applyFixes([given], look);
  expect(texts(sources)).toEqual(['A A A bad A A']);
  expect(messages(fixed)).toEqual(Array(5).fill('no a'));
});

test('an edit after which the same is found in its place mends nothing', () => {
  const given = source('one', 'a b');
  expect(applyFixes([given], wherever(/a/g, 'a'))).toEqual({ sources: [given], fixed: [] });
});

test('two texts that are mended for ever are left at some point', () => {
  let looks = 0;
  const flip = both(wherever(/tide/g, 'ebb'), wherever(/ebb/g, 'tide'));
  applyFixes([source('one', 'tide')], (sources) => {
    looks++;
    return flip(sources);
  });
  expect(looks).toBeLessThanOrEqual(100);
});

test('edits of a text that was not given are not made, nor those that belong to them', () => {
  const other = source('other', 'a');
  const look: Look = ([given]) => {
    const at = { source: given as Source, start: 0, end: 1 };
    return [
      finding({
        at,
        fix: [
          { span: at, text: 'b' },
          { span: { ...at, source: other }, text: 'b' },
        ],
      }),
    ];
  };
  const given = source('one', 'a');
  expect(applyFixes([given], look)).toEqual({ sources: [given], fixed: [] });
});

test('what is found after the edits of a text is looked for where it then stands', () => {
  const given = source('one', 'long long a, a');
  const { sources } = applyFixes([given], both(wherever(/long/g, ''), wherever(/\ba\b/g, 'bb')));
  expect(texts(sources)).toEqual(['  bb, bb']);
});

test.each([
  ['LF', 'a\nb\r\n', '\n'],
  ['CRLF', 'a\r\nb\n', '\r\n'],
  ['CR', 'a\rb', '\r'],
  ['none', 'a', '\n'],
])('%s: what is put in ends its lines like the first line there', (_, text, end) => {
  const given = source('one', text);
  expect(lineEnd(given)).toBe(end);
  const at = { source: given, start: 0, end: 0 };
  const { fix } = finding({ at, fix: [{ span: at, text: 'x\ny\r\n' }] });
  expect(applyEdits(text, fix ?? [])).toBe(`x${end}y${end}${text}`);
});

test('a finding that only moved is told from one of its kind that was not mended', () => {
  const given = source('one', 'tide tide ebb tide');
  // Each edit moves what comes after it; the one about `ebb` is written as it was, and so mends nothing.
  const look = both(wherever(/tide/g, 'low water'), wherever(/ebb/g, 'ebb'));
  const { sources, fixed } = applyFixes([given], look);
  expect(texts(sources)).toEqual(['low water low water ebb low water']);
  expect(messages(fixed)).toEqual(Array(3).fill('no tide'));
});
