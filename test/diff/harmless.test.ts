/* What a recipe says is text and nothing else, wherever a difference is read: terminal, review, page. */
import { DOMParser } from '@xmldom/xmldom';
import { expect, test } from 'vitest';
import { renderHtml } from '../../src/diff/render-html.js';
import { renderMarkdown } from '../../src/diff/render-markdown.js';
import { renderText } from '../../src/diff/render-text.js';
import type { Palette } from '../../src/diagnostics/render-text.js';
import { compareFiles } from '../support/compare.js';

/** Each would do something in one of the three, if it were let. */
const PAYLOADS = [
  '\u001b[2J\u001b]0;owned\u0007',
  '\u202egnp.exe',
  'a\u0000b\u0085c',
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '</code></td></tr></table><h1>gone</h1>',
  '</style><script>alert(1)</script>',
  "' onmouseover='alert(1)",
  '&lt;b&gt; &amp; &#60;',
  '`; rm -rf ~; `',
  'a `` b ``` c',
  '| new | column |',
  '\\| escaped \\\\| twice',
  '@harbourmaster please merge',
  'fixes #1, see !2 and GH-3',
  '[here](https://example.com) ![](https://example.com/x.png)',
  'https://example.com www.example.com a@example.com',
  '$x^2$ :tada: ~~no~~ **yes** __no__ <!-- -->',
  '# heading',
  '- [ ] item',
  '    indented',
  ']]> --> ?>',
];

/** The language writes a quote and a stroke as escapes, and no control characters: those only get in by a file's name. */
const written = (text: string): string =>
  text
    .replaceAll('\\', '\\\\')
    .replaceAll('"', '\\"')
    .replaceAll(/\p{Cc}/gu, '');

const recipe = (title: string, note: string): string =>
  `units mm\n\nenvelope ebb {\n  title: "${title}"\n  note: "${note}"\n  card: A6\n}\n`;

/** The payload in title and note; and in the file's name. */
const differenceWith = (payload: string) => {
  const file = `tides ${payload}\n.plica`;
  return compareFiles(
    { [file]: recipe('Ebb', 'x') },
    { [file]: recipe(written(payload), `${written(payload)} and more`) },
  );
};

test.each(PAYLOADS)(
  '%j: in the terminal no character moves the cursor, hides or turns the line',
  (payload) => {
    const difference = differenceWith(payload);
    expect(difference.changes).toHaveLength(1);
    expect(renderText(difference).replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
  },
);

/** Markdown without its code: spans by the rule of CommonMark 0.31 (6.1), and elements of HTML. */
const withoutCode = (markdown: string): string =>
  markdown
    .replaceAll(/(?<!`)(`+)(?!`)((?:(?!\n\n)[\s\S])*?[^`])\1(?!`)/g, '')
    .replaceAll(/<code>[\p{L}\p{N} &#;]*<\/code>/gu, '');

test.each(PAYLOADS)('%j: in Markdown all of it is code, and tables keep their columns', (payload) => {
  const markdown = renderMarkdown(differenceWith(payload));
  // What is left are our own words: letters and the marks of headings, tables, bold.
  expect(withoutCode(markdown)).toMatch(/^[\p{L}\p{N} \n|*#.,:;()→-]*$/u);
  expect(withoutCode(markdown)).not.toContain('example');
  for (const line of markdown.split('\n').filter((row) => row.startsWith('|')))
    expect(line.replaceAll('\\\\', '').match(/\|/g)).toHaveLength(5);
});

test.each(PAYLOADS)('%j: on the page it is text', (payload) => {
  const html = renderHtml(differenceWith(payload), new Map([['ebb', `<svg><desc>${payload}</desc></svg>`]]));
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  const page = parser.parseFromString(html.replace('<!doctype html>\n', ''), 'application/xhtml+xml');
  const elements = [...page.getElementsByTagName('*')];
  const names = new Set(elements.map(({ tagName }) => tagName));
  const known =
    'html head meta title style body h1 h2 p section span code img div table thead tbody tr th td'.split(' ');
  expect([...names].filter((name) => !known.includes(name))).toEqual([]);
  const attributes = elements.flatMap((each) => [...each.attributes].map(({ name }) => name));
  expect(attributes.filter((name) => name.startsWith('on') || name === 'href')).toEqual([]);
  expect(
    [...page.getElementsByTagName('img')].map((image) => image.getAttribute('src')?.slice(0, 18)),
  ).toEqual(['data:image/svg+xml']);
  const text = page.getElementsByTagName('body')[0]?.textContent ?? '';
  expect(letters(text)).toContain(letters(payload));
});

const letters = (text: string): string => text.replaceAll(/[^\p{L}\p{N}]/gu, '');

test('the page asks for nothing but itself, and holds no script', () => {
  const html = renderHtml(differenceWith('x'), new Map());
  expect(html).not.toMatch(/<script|https?:|@import|url\(/);
  expect(html).toContain("default-src 'none'");
});

const marked: Palette = {
  error: (text) => `<e>${text}</e>`,
  warning: (text) => `<w>${text}</w>`,
  note: (text) => `<n>${text}</n>`,
  strong: (text) => `<s>${text}</s>`,
  faint: (text) => `<f>${text}</f>`,
};

test('colour only where a palette is handed in, and never the only sign', () => {
  const difference = differenceWith('plain');
  const coloured = renderText(difference, marked);
  expect(coloured).toContain('<s>ebb:</s> <n>wording</n>');
  expect(coloured.replaceAll(/<\/?[ewnsf]>/g, '')).toBe(renderText(difference));
});
