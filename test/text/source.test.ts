import { expect, test } from 'vitest';
import { applyEdits } from '../../src/text/edit.js';
import { lineText, position, source } from '../../src/text/source.js';
import { spanText, through } from '../../src/text/span.js';

test('LF, CRLF and a lone CR each end a line', () => {
  const given = source('a.plica', 'one\ntwo\r\nthree\rfour');
  expect([1, 2, 3, 4, 5].map((line) => lineText(given, line))).toEqual(['one', 'two', 'three', 'four', '']);
  expect(position(given, given.text.indexOf('three'))).toEqual({ line: 3, column: 1 });
  expect(position(given, given.text.indexOf('ur'))).toEqual({ line: 4, column: 3 });
});

test('columns count code points, from one', () => {
  expect(position(source('a.plica', '🌊é 5'), 4)).toEqual({ line: 1, column: 4 });
});

test('an offset beyond the text is its end', () => {
  expect(position(source('a.plica', 'one\n'), 99)).toEqual({ line: 2, column: 1 });
  expect(position(source('a.plica', ''), 0)).toEqual({ line: 1, column: 1 });
});

test('a span is half-open', () => {
  const given = source('a.plica', 'card: A6');
  const card = { source: given, start: 0, end: 4 };
  const size = { source: given, start: 6, end: 8 };
  expect(spanText(card)).toBe('card');
  expect(spanText(through(card, size))).toBe('card: A6');
});

test('edits apply to the text as it was, in whatever order they are given', () => {
  const given = source('a.plica', 'card = A6');
  const edits = [
    { span: { source: given, start: 9, end: 9 }, text: ' # folded' },
    { span: { source: given, start: 4, end: 6 }, text: ':' },
  ];
  expect(applyEdits(given.text, edits)).toBe('card: A6 # folded');
});

test.each([[[0, 1]], [[1, 0]]])('what is put in at a place comes before what stands there: %j', (order) => {
  const given = source('a.plica', 'blank > 220');
  const edits = [
    { span: { source: given, start: 0, end: 0 }, text: 'expect ' },
    { span: { source: given, start: 0, end: 5 }, text: 'face-width' },
  ];
  const ordered = order.flatMap((index) => edits[index] ?? []);
  expect(applyEdits(given.text, ordered)).toBe('expect face-width > 220');
});
