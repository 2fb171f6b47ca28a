/* A difference as people and programs are handed it: two states of a recipe, and what is said of them in every format. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { renderHtml } from '../../src/diff/render-html.js';
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

/** Only what stands on it: how the page is set is none of what is said. */
const onThePage = (html: string): string => html.slice(html.indexOf('<body>'));

test.each(names)('%s: on a page', async (name) => {
  const page = onThePage(renderHtml(differenceOf(name)));
  await expect(page).toMatchFileSnapshot(`${name}.changes.html`);
});

test('a page says what it is before anything is shown: its language, its letters, its title', () => {
  const html = renderHtml(differenceOf('only-layout'));
  expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
  const head = html.slice(0, html.indexOf('<body>'));
  for (const said of [
    '<meta charset="utf-8"/>',
    'http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;; img-src data:; style-src &#39;unsafe-inline&#39;"',
    '<meta name="viewport" content="width=device-width, initial-scale=1"/>',
    '<title>What changed in the recipes</title>',
  ])
    expect(head.replaceAll("'", '&#39;')).toContain(said);
});

test('a picture stands with the envelope that it shows, and says so to who cannot see it', () => {
  const html = renderHtml(differenceOf('shared-ease'), new Map([['half-letter', '<svg>\ud800</svg>']]));
  const [, ours = '', others = ''] = html.split('<h2><code>');
  expect(ours).toContain('alt="half-letter: what it was, and what it is"');
  // Half a character cannot be written in an address; its place is kept.
  expect(ours).toContain(`src="data:image/svg+xml,${encodeURIComponent('<svg>\ufffd</svg>')}"`);
  expect(others).not.toContain('<img');
});

test('where nothing could be told, whoever looks is told which state has the mistakes', () => {
  const good = 'units mm\nenvelope tides {\n  card: A6\n}\n';
  const [older, newer] = [{ 't.plica': good }, { 't.plica': good.replace('A6', 'A66') }];
  const said = 'Its file has mistakes in the newer state: what became of it cannot be told.';
  expect(renderText(compareFiles(older, newer), undefined, 200)).toContain(said);
  expect(renderText(compareFiles(newer, older), undefined, 200)).toContain(said.replace('newer', 'older'));
  expect(renderHtml(compareFiles(older, newer))).toContain('<span class="paper">cannot be read</span>');
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
