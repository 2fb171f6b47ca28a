import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { source } from '../../src/text/source.js';

const read = (text: string) => parse(source('recipe.plica', text));
const found = (text: string): string[] =>
  read(text).diagnostics.map(({ problem, message }) => `${problem.name}: ${message}`);
const nested = (depth: number): string => `let deep = ${'('.repeat(depth)}1${')'.repeat(depth)}`;

test('brackets nest fifty deep, and no deeper', () => {
  expect(found(nested(50))).toEqual([]);
  expect(found(nested(51))).toEqual(['limit: brackets nest too deep here']);
  expect(found(nested(100_000))).toEqual(['limit: brackets nest too deep here']);
});

test('a line adds up five hundred times, and no more', () => {
  expect(found(`let sum = 1${' + 1'.repeat(500)}`)).toEqual([]);
  expect(found(`let sum = 1${' + 1'.repeat(501)}`)).toEqual(['limit: this line adds up too much']);
});

test('a text of a million characters is read, a longer one is not', () => {
  const long = `${'# '.padEnd(999_999, 'x')}\n`;
  expect(found(long)).toEqual([]);
  expect(found(`${long}\n`)).toEqual(['limit: this file is too long to be a recipe']);
  expect(read(`${long}\n`).file.statements).toEqual([]);
});

test('after a thousand slips a file is no recipe', () => {
  const all = found('@\n'.repeat(2000));
  expect(all).toHaveLength(1001);
  expect(all.at(-1)).toBe('limit: this file has too many slips to be a recipe');
});

describe('time grows with the text alone', () => {
  const size = 40_000;
  const fill = (part: string): string => part.repeat(Math.ceil(size / part.length));
  test.each([
    ['digits before a point', `let a = ${fill('1')}.`],
    ['digits and strokes', `let a = ${fill('1/')}`],
    ['numbers with spaces', `let a = ${fill('1 ')}`],
    ['spaces before a fraction', `let a = 1${fill(' ')}1/2`],
    ['points', `let a = 1${fill('.')}`],
    ['quotes', `style s { title: ${fill('"')} }`],
    ['backslashes', `style s { title: "${fill('\\')} }`],
    ['hyphens', `let a = b${fill('-b')}`],
    ['dashes', `let a = 1${fill('-')}`],
    ['brackets', `let a = ${fill('(')}`],
    ['braces', fill('{')],
    ['a list', `style s { tags: ${fill('a, ')} }`],
    ['words', `style s { tags: ${fill('a ')} }`],
    ['entries on one line', `style s { ${fill('a=1 ')} }`],
    ['blocks left open', fill('envelope a {\n')],
    ['curly quotes', fill('“')],
    ['unknown statements with slips in them', fill('a 5,5\n')],
  ])('%s', (_, text) => {
    const start = performance.now();
    read(text);
    // Forty thousand characters take some milliseconds; what is quadratic takes seconds.
    expect(performance.now() - start).toBeLessThan(1500);
  });
});
