import { describe, expect, test } from 'vitest';
import { parse } from '../../grammar/parser.js';
import { source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';

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

test('a hundred strings and comments with something unseen are told one by one, the last for all others', () => {
  const { doubts } = read('# \u200b\n'.repeat(250));
  expect(doubts).toHaveLength(100);
  expect(doubts.map(({ fix }) => fix?.length)).toEqual([...Array(99).fill(1), 151]);
  expect(doubts.at(-1)?.help).toContain('with the 150 others');
});

test('a word has sixty letters, and no more; one that is longer is shown shortened', () => {
  expect(found(`let ${'a'.repeat(60)} = 1`)).toEqual([]);
  const [finding, ...more] = found(`let ${'a'.repeat(10_000)} = 1`);
  expect(finding).toMatch(/^limit: `a{59}…` is too long for a word$/);
  expect(more).toEqual([]);
  for (const text of ['envelope LONG { card: A6 }', 'style s { LONG: 1 }', 'style s { ease: 1 LONG }']) {
    expect(found(text.replace('LONG', 'b'.repeat(61)))).toHaveLength(1);
  }
});

test('a command takes a hundred thousand statements and entries, and no more', () => {
  const said = (count: number): string[] =>
    compileText('let a=1\n'.repeat(count)).diagnostics.map(({ problem }) => problem.name);
  expect(said(100_001)).toEqual(['limit']);
  expect(said(100)).not.toContain('limit');
});

describe('forty thousand characters of one thing are read to the end', () => {
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
    ['blocks left open on one line', fill('envelope a {')],
    ['names with capitals', fill('let A = B\n')],
    ['blocks inside a block', `style a {\n${fill('envelope b { }\n')}}`],
    ['fraction glyphs', fill('½')],
    ['commas', fill(',')],
    ['comment signs', fill('#')],
    ['carriage returns', fill('\r')],
    ['no-break spaces', fill('\u00a0')],
    ['spaces of no width in a word', fill('a\u200b')],
    ['comments of elsewhere, never ended', fill('/*')],
    ['lines of back quotes', fill('```\n')],
    ['characters as a web page spells them', fill('&quot;')],
    ['feet', fill("5'")],
    ['grams for square metres', fill('5 g/m2 ')],
    ['wide braces', fill('\uff5b')],
    ['curly quotes', fill('“')],
    ['unknown statements with slips in them', fill('a 5,5\n')],
  ])('%s', (_, text) => {
    const { file, diagnostics } = read(text);
    expect(file.span).toMatchObject({ start: 0, end: text.length });
    expect(diagnostics.length).toBeLessThanOrEqual(1001);
    expect(diagnostics.filter(({ primary }) => primary.span.end > text.length)).toEqual([]);
  });
});
