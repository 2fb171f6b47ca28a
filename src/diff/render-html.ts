import { element, escaped } from '../text/markup.js';
import { visible } from '../text/visible.js';
import { reachesPaper } from './consequence-words.js';
import type { Difference } from './difference.js';
import { headWords } from './head-words.js';
import { HTML_STYLE } from './html-style.js';
import { type Chapter, report, type SharedRow, type Spelling, type WrittenRow } from './report.js';
import { atWords, whereWords } from './where-words.js';

/**
 * A difference as one page that stands alone: no script, nothing from a network, light or dark as its reader's screen is.
 * `pictures`: SVG by the name of an envelope (the newer one).
 */
export function renderHtml(
  difference: Difference,
  pictures: ReadonlyMap<string, string> = new Map(),
): string {
  const { summary, shared, envelopes } = report(difference);
  const head = element('head', {}, [
    '<meta charset="utf-8"/>',
    element('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    '<meta name="viewport" content="width=device-width, initial-scale=1"/>',
    '<title>What changed in the recipes</title>',
    element('style', {}, HTML_STYLE),
  ]);
  const body = element('body', {}, [
    '<h1>What changed in the recipes</h1>',
    element('p', { class: 'summary' }, `${words(summary)}.`),
    ...(shared.length === 0 ? [] : [sharedSection(shared)]),
    ...envelopes.map((chapter) => section(chapter, pictures.get(chapter.name))),
  ]);
  return `<!doctype html>\n${element('html', { lang: 'en' }, [head, body])}\n`;
}

const POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

const words = (text: string): string => escaped(visible(text));
const code = (text: string): string => element('code', {}, words(text));

const sharedSection = (rows: readonly SharedRow[]): string =>
  element('section', {}, [
    '<h2>Shared</h2>',
    table(
      ['Written', 'Before', 'After', 'Where', 'Reaches'],
      rows.map(({ written, reaches }) => [
        ...writtenCells(written),
        reaches.length === 0 ? 'no envelope' : reaches.map(code).join(', '),
      ]),
    ),
  ]);

function section(chapter: Chapter, picture: string | undefined): string {
  const { name, formerName, consequences, kind, at, written, figures, findings } = chapter;
  const was = formerName === null ? '' : ` (was ${code(formerName)})`;
  const weight =
    consequences.some(reachesPaper) || kind === 'removed' || kind === 'unreadable' ? 'paper' : 'words';
  const badges = headWords(chapter).map((word) => element('span', { class: weight }, words(word)));
  return element('section', {}, [
    element('h2', {}, `${code(name)}${was} ${badges.join(' ')}`),
    ...(at ? [element('p', { class: 'place' }, words(atWords(at)))] : []),
    element('p', {}, words(chapter.words)),
    ...(picture === undefined ? [] : [image(picture, `${name}, before and after`)]),
    ...(written.length === 0
      ? []
      : [table(['Written', 'Before', 'After', 'Where'], written.map(writtenCells))]),
    ...(figures.length === 0
      ? []
      : [
          table(
            ['On paper', 'Before', 'After', 'Difference'],
            figures.map((row) => [row.words, row.before, row.after, row.difference].map(words)),
          ),
        ]),
    ...(findings.length === 0 ? [] : [findingsList(chapter)]),
  ]);
}

const findingsList = ({ findings }: Chapter): string =>
  element(
    'ul',
    {},
    findings.map(({ came, severity, rule, message }) =>
      element(
        'li',
        { class: came ? severity : 'gone' },
        `${came ? 'new' : 'gone'}: ${severity} ${code(rule)}: ${words(message)}`,
      ),
    ),
  );

const writtenCells = ({ property, before, after, where }: WrittenRow): readonly string[] => [
  code(property),
  spelled(before),
  spelled(after),
  where.map((each) => whereWords(each, code)).join('; '),
];

const spelled = (value: Spelling | null): string =>
  value === null
    ? 'left out'
    : `${code(value.text)}${value.reading === null ? '' : ` (${words(value.reading)})`}`;

/** Cells are markup. The first of a row names it. */
const table = (headings: readonly string[], rows: readonly (readonly string[])[]): string =>
  element('div', { class: 'table' }, [
    element('table', {}, [
      element('thead', {}, [row(headings.map((heading) => element('th', { scope: 'col' }, words(heading))))]),
      element(
        'tbody',
        {},
        rows.map(([first = '', ...others]) =>
          row([
            element('th', { scope: 'row' }, first),
            ...others.map((cell) => element('td', {}, cell || '–')),
          ]),
        ),
      ),
    ]),
  ]);

const row = (cells: readonly string[]): string => element('tr', {}, cells.join(''));

/** A picture of its own document, so that nothing in it reaches the page. */
const image = (svg: string, alt: string): string =>
  element('img', {
    src: `data:image/svg+xml,${encodeURIComponent(svg.replace(/\p{Cs}/gu, '\uFFFD'))}`,
    alt: visible(alt),
  });
