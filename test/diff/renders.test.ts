/* A difference as people and programs are handed it: two states of a recipe, and what is said of them in every format. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { renderJson } from '../../src/diff/render-json.js';
import { renderMarkdown } from '../../src/diff/render-markdown.js';
import { renderText } from '../../src/diff/render-text.js';
import { columnsOf } from '../../src/text/width.js';
import { compareFiles } from '../support/compare.js';

const names = readdirSync(import.meta.dirname).flatMap((file) => /^(.*)\.old\.plica$/.exec(file)?.[1] ?? []);

const differenceOf = (name: string) => {
  const read = (state: string) => readFileSync(`${import.meta.dirname}/${name}.${state}.plica`, 'utf8');
  return compareFiles({ 'tides.plica': read('old') }, { 'tides.plica': read('new') });
};

test.each(names)('%s: in the terminal, to paste into a review, for programs', async (name) => {
  const difference = differenceOf(name);
  await expect(renderText(difference)).toMatchFileSnapshot(`${name}.changes.txt`);
  await expect(renderMarkdown(difference)).toMatchFileSnapshot(`${name}.changes.md`);
  await expect(renderJson(difference)).toMatchFileSnapshot(`${name}.changes.json`);
});

test.each(names)('%s: no line in the terminal is wider than 80 columns', (name) => {
  for (const line of renderText(differenceOf(name)).split('\n'))
    expect(columnsOf(line)).toBeLessThanOrEqual(80);
});

test('layout, order, comments and another spelling of a length are no change: one line', () => {
  expect(renderText(differenceOf('only-layout'))).toBe('Nothing changed\n');
  expect(renderMarkdown(differenceOf('only-layout'))).toBe('**Nothing changed.**\n');
});

test('where not all could be read, nothing claims that all is told', () => {
  const said = (name: string) =>
    renderText({ ...differenceOf(name), isPartial: true })
      .split('\n')
      .at(-2);
  expect(said('only-layout')).toBe('Nothing changed in what could be read');
  expect(said('only-words')).toMatch(/^\d+ envelopes? changed: .*; not all could be read$/);
  expect(renderMarkdown({ ...differenceOf('only-layout'), isPartial: true })).toBe(
    '**Nothing changed in what could be read.**\n',
  );
  const { isPartial } = JSON.parse(renderJson({ ...differenceOf('only-layout'), isPartial: true })) as {
    isPartial: unknown;
  };
  expect(isPartial).toBe(true);
});

test('an eighth of an inch more ease, worked out by hand', () => {
  // Face 8 7/8 × 5 7/8: blank 14.75/√2 + 1 = 11.430 → 11 7/16 in. D = 11.4375·√2 = 16.175: side mark (D − 8.875)/√2 =
  // 5.162 → 5 3/16, seal mark (D − 5.875)/√2 = 7.283 → 7 5/16. They were 11 1/4, 5 1/16, 7 3/16 (common practice, no source).
  const said = renderText(differenceOf('shared-ease')).replaceAll(/ +/g, ' ');
  expect(said).toContain('Reaches half-letter, pocket-tides.');
  expect(said).toContain('half-letter: recut, rescore');
  expect(said).toContain('blank 11 1/4 in → 11 7/16 in +3/16 in (+4.8 mm)');
  expect(said).toContain('side mark 5 1/16 in → 5 3/16 in +1/8 in (+3.2 mm)');
  expect(said).toContain('seal mark 7 3/16 in → 7 5/16 in +1/8 in (+3.2 mm)');
});
