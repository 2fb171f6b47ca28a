import { expect, test } from 'vitest';
import { arrange } from '../../../src/emit/catalogue/arrange.js';
import type { Row } from '../../../src/emit/catalogue/leaf.js';
import { repeatedNames } from '../../../src/emit/catalogue/repeated-names.js';
import type { CatalogueSection } from '../../../src/recipe/catalogue.js';
import { stating } from '../../support/book.js';

const row = (name: string, ...tags: string[]): Row => ({ name, tags, units: 'in' }) as unknown as Row;
const NOWHERE = stating({}).span;
const section = (title: string, ...takes: string[]): CatalogueSection => ({
  title,
  span: NOWHERE,
  takes: takes.map((word) =>
    word.startsWith('#')
      ? { by: 'tag', word: word.slice(1), span: NOWHERE }
      : { by: 'name', word, span: NOWHERE },
  ),
});

const ROWS = [row('ebb', 'box'), row('flood', 'thin'), row('neap', 'box', 'thin'), row('spring')];

const order = (...sections: CatalogueSection[]) =>
  arrange({ catalogue: stating({ sections }), folder: 'tides', rows: ROWS, problems: [] }).chapters.map(
    ({ title, rows }) => [title, rows.map(({ name }) => name).join(' ')],
  );

test('without sections there is one chapter, in the order of the folder', () => {
  expect(order()).toEqual([[null, 'ebb flood neap spring']]);
});

test('sections come as written, what they take as they name it, a tag’s in the order of the folder; the rest last', () => {
  expect(order(section('Second', 'spring', 'flood'), section('Boxes', '#box'))).toEqual([
    ['Second', 'spring flood'],
    ['Boxes', 'ebb neap'],
  ]);
  expect(order(section('Boxes', '#box'))).toEqual([
    ['Boxes', 'ebb neap'],
    ['Others', 'flood spring'],
  ]);
});

test('a recipe stands once: in the section that names it, else in the first that takes its tag', () => {
  expect(order(section('Boxes', '#box'), section('Thin', '#thin'), section('Named', 'ebb'))).toEqual([
    ['Boxes', 'neap'],
    ['Thin', 'flood'],
    ['Named', 'ebb'],
    ['Others', 'spring'],
  ]);
});

test('a section that takes nothing vanishes', () => {
  expect(order(section('Lost', 'gone', '#gone'))).toEqual([['Others', 'ebb flood neap spring']]);
});

test('a page that is not stated is half a letter sheet for inches, A5 for millimetres (ISO 216)', () => {
  const page = (units: 'in' | 'mm') =>
    arrange({ catalogue: stating({ units }), folder: 'tides', rows: ROWS, problems: [] }).page;
  expect(page('in')).toEqual({ width: 139.7, height: 215.9 });
  expect(page('mm')).toEqual({ width: 148, height: 210 });
});

test('of two envelopes of one name the first in the folder’s order keeps it', () => {
  const file = (name: string, ...names: string[]) => ({
    file: name,
    rows: [],
    findings: [],
    names: names.map((each, index) => ({ name: each, line: 3 * index + 1, column: 10 })),
  });
  expect(repeatedNames([file('a.plica', 'ebb', 'neap'), file('b.plica', 'neap', 'ebb', 'spring')])).toEqual([
    expect.objectContaining({
      rule: 'repeated',
      file: 'b.plica',
      line: 1,
      why: expect.stringContaining('a.plica:4'),
    }),
    expect.objectContaining({
      rule: 'repeated',
      file: 'b.plica',
      line: 4,
      why: expect.stringContaining('a.plica:1'),
    }),
  ]);
});
