import Ajv from 'ajv';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { json } from '../../../src/emit/catalogue/json.js';
import { markdown } from '../../../src/emit/catalogue/markdown.js';
import { renderFacts } from '../../../src/emit/json/render-facts.js';
import { bookOf, MANY_KINDS, writtenBy } from '../../support/book.js';
import { compileText } from '../../support/compile-text.js';

test('as JSON a book is the facts of its recipes, as `show` prints them, in the book’s order', async () => {
  const written = (await writtenBy(json, await bookOf(MANY_KINDS))).toString();
  const book = JSON.parse(written);
  const shown = JSON.parse(renderFacts(compileText(MANY_KINDS, { name: 'tides.plica' }).recipes));
  expect(JSON.stringify(book.recipes)).toBe(JSON.stringify(shown.recipes));
  expect(book.catalogue.sections).toEqual([
    { title: null, recipes: ['half-letter', 'quarter', 'shell-box', 'lined', 'ferry'] },
  ]);
  expect(book.problems).toEqual([]);
});

test('the schema that plica ships describes it', async () => {
  const ajv = new Ajv.default({ strict: false });
  const valid = ajv.compile(JSON.parse(readFileSync('src/emit/json/facts.schema.json', 'utf8')));
  const book = JSON.parse((await writtenBy(json, await bookOf(MANY_KINDS))).toString());
  expect(valid(book)).toBe(true);
  expect(valid({ ...book, catalogue: { title: 'Tides' } })).toBe(false);
});

test('in Markdown no text of a recipe is anything but text', async () => {
  const text = (await writtenBy(markdown, await bookOf(MANY_KINDS))).toString();
  const lines = text.split('\n').filter((line) => line.startsWith('| '));
  expect(lines).toHaveLength(2 + 5);
  expect(new Set(lines.map((line) => line.split('|').length)).size).toBe(1);
  expect(text).not.toContain('<b>');
  expect(lines.find((line) => line.includes('half-letter'))).toContain(
    '11 1/4 in (285.8 mm)'.replaceAll(' ', '\u00a0').replace('\u00a0(', ' ('),
  );
});

test('sections are headings, and what keeps recipes out is listed', async () => {
  const broken = `${MANY_KINDS}\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n`;
  const section = (title: string, word: string) => ({
    title,
    takes: [{ by: 'tag' as const, word, span: null as never }],
    span: null as never,
  });
  const source = await bookOf(broken, { title: 'Tides', sections: [section('Boxes', 'box')] });
  const text = (await writtenBy(markdown, source)).toString();
  expect(text.match(/^##? .*$/gm)).toEqual([
    '# `Tides`',
    '## `Boxes`',
    '## `Others`',
    '## Not in this book yet',
  ]);
  expect(text).toMatch(/^- `tides\.plica:46` creases-cross: /m);
});
