import { expect, test } from 'vitest';
import { jsonText } from '../../src/text/json-text.js';

test.each([
  ['a\u202eb', '"a\\u202eb"'],
  ['a\u2028b\u2029c', '"a\\u2028b\\u2029c"'],
  ['\u007f\u0085\u009b\u001b', '"\\u007f\\u0085\\u009b\\u001b"'],
  // Beyond U+FFFF an escape is a pair (RFC 8259, section 7): a tag letter, and the sign before a Kaithi number.
  ['\u{e0041}\u{110bd}', '"\\udb40\\udc41\\ud804\\udcbd"'],
  ['\\\u202e', '"\\\\\\u202e"'],
  ['\ud83d', '"\\ud83d"'],
  ['潮汐 🐚', '"潮汐 🐚"'],
])('%j', (value, json) => {
  expect(jsonText(value)).toBe(json);
  expect(JSON.parse(json)).toBe(value);
});

test('the names of fields are escaped too, and lines end as ever', () => {
  expect(jsonText({ '\u202e': [1] }, 2)).toBe('{\n  "\\u202e": [\n    1\n  ]\n}');
});
