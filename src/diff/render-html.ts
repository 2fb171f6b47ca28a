import { element, escaped } from '../text/markup.js';
import { visible } from '../text/visible.js';
import {
  FIGURE_HEADINGS,
  figureCells,
  SHARED_HEADINGS,
  sharedRows,
  WRITTEN_HEADINGS,
  writtenCells,
} from './cells.js';
import { reachesPaper } from './consequence-words.js';
import type { Difference } from './difference.js';
import { headWords } from './head-words.js';
import { HTML_STYLE } from './html-style.js';
import { type BatchChapter, type Chapter, type FindingRow, report } from './report.js';
import { atWords } from './where-words.js';

/**
 * A difference as one page that stands alone: no script, nothing from a network, light or dark as its reader's screen is.
 * `pictures`: SVG by the name of an envelope (the newer one).
 */
export function renderHtml(
  difference: Difference,
  pictures: ReadonlyMap<string, string> = new Map(),
): string {
  const { summary, shared, envelopes, batches } = report(difference);
  const edits = table(
    SHARED_HEADINGS,
    shared.flatMap((block) => sharedRows(block, code)),
  );
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
    ...(edits.length === 0 ? [] : [element('section', {}, ['<h2>Shared</h2>', ...edits])]),
    ...envelopes.map((chapter) => section(chapter, pictures.get(chapter.name))),
    ...batches.map(batchSection),
  ]);
  return `<!doctype html>\n${element('html', { lang: 'en' }, [head, body])}\n`;
}

/** Should a text ever be taken for markup all the same, it loads nothing and runs nothing. */
const POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

const words = (text: string): string => escaped(visible(text));
const code = (text: string): string => `<code>${words(text)}</code>`;

function section(chapter: Chapter, picture: string | undefined): string {
  const { name, formerName, at, written, figures, findings } = chapter;
  const was = formerName === null ? '' : ` (was ${code(formerName)})`;
  const badges = headWords(chapter).map((word) => element('span', { class: badgeOf(chapter) }, words(word)));
  return element('section', {}, [
    element('h2', {}, `${code(name)}${was} ${badges.join(' ')}`),
    ...(at ? [element('p', { class: 'place' }, words(atWords(at)))] : []),
    element('p', {}, words(chapter.words)),
    ...(picture === undefined ? [] : [image(picture, `${name}: what it was, and what it is`)]),
    ...table(
      WRITTEN_HEADINGS,
      written.map((row) => writtenCells(row, code)),
    ),
    ...table(
      FIGURE_HEADINGS,
      figures.map((row) => figureCells(row).map(words)),
    ),
    ...(findings.length === 0 ? [] : [element('ul', {}, findings.map(findingItem))]),
  ]);
}

const batchSection = ({ name, kind, at, written }: BatchChapter): string =>
  element('section', {}, [
    element('h2', {}, `Batch ${code(name)} ${element('span', { class: 'words' }, words(kind))}`),
    element('p', { class: 'place' }, words(atWords(at))),
    ...table(
      WRITTEN_HEADINGS,
      written.map((row) => writtenCells(row, code)),
    ),
  ]);

const badgeOf = ({ kind, consequences }: Chapter): 'paper' | 'words' =>
  consequences.some(reachesPaper) || kind === 'removed' || kind === 'unreadable' ? 'paper' : 'words';

const findingItem = ({ came, severity, rule, message }: FindingRow): string =>
  element(
    'li',
    { class: came ? severity : 'gone' },
    `${came ? 'new' : 'gone'}: ${severity} ${code(rule)}: ${words(message)}`,
  );

/** Cells are markup. The first of a row names it. None where it has no rows. */
function table(headings: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  if (rows.length === 0) return [];
  const head = row(headings.map((heading) => element('th', { scope: 'col' }, words(heading))));
  const body = rows.map(([first = '', ...others]) =>
    row([element('th', { scope: 'row' }, first), ...others.map((cell) => `<td>${cell}</td>`)]),
  );
  return [
    element('div', { class: 'table' }, [
      element('table', {}, [element('thead', {}, [head]), element('tbody', {}, body)]),
    ]),
  ];
}

const row = (cells: readonly string[]): string => element('tr', {}, cells.join(''));

/** A picture as a document of its own, so that nothing in it reaches the page. */
const image = (svg: string, alt: string): string =>
  element('img', {
    src: `data:image/svg+xml,${encodeURIComponent(svg.replace(/\p{Cs}/gu, '\uFFFD'))}`,
    alt: visible(alt),
  });
