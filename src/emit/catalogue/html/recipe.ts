import { jsonText } from '../../../text/json-text.js';
import { element, escaped } from '../../../text/markup.js';
import { fileStem } from '../../../text/file-stem.js';
import { visible, withUnseen } from '../../../text/visible.js';
import type { Block, Cell, Section } from '../../cut-sheet/content.js';
import { both } from '../../cut-sheet/lengths.js';
import { recipeFacts } from '../../json/render-facts.js';
import { recipeDestination } from '../destinations.js';
import type { Leaf, Row } from '../leaf.js';

/** Text from a recipe or about one: no markup, nothing that cannot be seen. */
export const words = (text: string): string => escaped(visible(text));

/** A recipe as it stands, since it is downloaded from here; what cannot be seen is named, and turns nothing but itself. */
const code = (source: string): string =>
  withUnseen(escaped(source), (character) => (/[\t\n\r]/.test(character) ? character : unseen(character)));

function unseen(character: string): string {
  const point = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return element('bdi', { class: 'unseen', title: `U+${point}` }, character);
}

/** An envelope's article, closed until it is wanted. */
export function recipe(row: Row, leaf: Leaf): string {
  const { sheet, source, pictures } = leaf;
  const { name, tags } = row;
  const about = `${sheet.title}: ${sheet.summary}`;
  return element('details', { id: recipeDestination(row), class: 'recipe' }, [
    `<summary><h3>${words(row.title)}</h3> <span class="quiet">${words(name)}</span> <span class="fit"></span></summary>`,
    element('div', { class: 'inside' }, [
      `<p>${words(sheet.summary)}</p>`,
      ...sheet.notes.map((note) => `<p>${words(note)}</p>`),
      ...(tags.length === 0 ? [] : [`<p class="quiet">Tags: ${words(tags.join(', '))}</p>`]),
      ...row.findings.map(({ message }) => `<p class="warning">${words(message)}</p>`),
      figure(
        'blank',
        pictures.blank,
        `The open blank with its marks. ${about}`,
        'The blank from the inside, with its marks',
        name,
      ),
      figure('fold', pictures.fold, `The fold, stage by stage. ${about}`, 'The fold, stage by stage', name),
      ...sheet.sections
        .filter(({ name: section }) => section !== 'findings' && section !== 'cautions')
        .map(sectionOf),
      '<h4>The recipe</h4>',
      element('div', { class: 'tools', hidden: '' }, [
        download(`${fileStem(name)}.plica`, 'code', 'text/plain', 'Download the recipe'),
        download(`${fileStem(name)}.facts.json`, '.facts', 'application/json', 'Download its figures'),
      ]),
      `<pre tabindex="0" role="region" aria-label="${words(`The recipe of ${row.title}`)}"><code>${code(source)}</code></pre>`,
      `<script type="application/json" class="facts">${jsonInPage(recipeFacts(row, leaf.facts))}</script>`,
    ]),
  ]);
}

/** JSON that no markup ends. */
export const jsonInPage = (value: unknown): string => jsonText(value).replaceAll('<', '\\u003c');

const button = (attributes: Readonly<Record<string, string>>, text: string): string =>
  element('button', { type: 'button', ...attributes }, text);

const download = (file: string, from: string, type: string, text: string): string =>
  button({ 'data-file': file, 'data-from': from, 'data-type': type }, text);

function figure(kind: string, svg: string, alt: string, caption: string, name: string): string {
  return element('figure', { class: kind }, [
    `<div class="paper" tabindex="0" role="region" aria-label="${words(caption)}">${element('img', { src: `data:image/svg+xml,${encodeURIComponent(svg)}`, alt: visible(alt), loading: 'lazy' })}</div>`,
    element('div', { class: 'tools', hidden: '' }, [
      button({ 'data-zoom': 'in' }, 'Larger'),
      button({ 'data-zoom': 'out' }, 'Smaller'),
      button({ 'data-zoom': 'fit' }, 'Whole'),
      download(`${fileStem(name)}.${kind}.svg`, `.${kind} img`, 'image/svg+xml', 'Download the drawing'),
    ]),
    `<figcaption>${words(caption)}</figcaption>`,
  ]);
}

const sectionOf = ({ heading, blocks }: Section): string =>
  `<h4>${words(heading)}</h4>\n${blocks.map(blockOf).join('\n')}`;

/** How a block of each kind is marked up. */
const BLOCKS: { readonly [K in Block['kind']]: (block: Extract<Block, { readonly kind: K }>) => string } = {
  paragraph: ({ text }) => `<p>${words(text)}</p>`,
  terms: ({ terms }) =>
    element(
      'dl',
      {},
      terms.map(({ label, text }) => `<dt>${words(label)}</dt><dd>${words(text)}</dd>`),
    ),
  steps: ({ steps }) =>
    element(
      'ol',
      {},
      steps.map(({ title, text }) => `<li><strong>${words(title)}.</strong> ${words(text)}</li>`),
    ),
  table: ({ headings, rows }) =>
    `<div class="table">${element('table', {}, [
      `<thead><tr>${headings.map((heading) => (heading === '' ? '<td></td>' : `<th scope="col">${words(heading)}</th>`)).join('')}</tr></thead>`,
      element(
        'tbody',
        {},
        rows.map(
          ([first, ...others]) =>
            `<tr><th scope="row">${cell(first ?? '')}</th>${others.map((each) => `<td>${cell(each)}</td>`).join('')}</tr>`,
        ),
      ),
    ])}</div>`,
};

const blockOf = <K extends Block['kind']>(block: Extract<Block, { readonly kind: K }>): string =>
  (BLOCKS[block.kind] as (block: Extract<Block, { readonly kind: K }>) => string)(block);

const cell = (value: Cell): string => words(typeof value === 'string' ? value : both(value));
