import { element } from '../../../text/markup.js';
import type { Row } from '../leaf.js';
import { words } from './recipe.js';

/** The search and its filters; shown by the script, since without it they do nothing. */
export function searchForm(rows: readonly Row[]): string {
  const tags = distinct(rows.flatMap((row) => row.tags));
  const papers = distinct(rows.flatMap(({ paper }) => (paper === null ? [] : [paper.title])));
  return element('form', { id: 'search', role: 'search', hidden: '' }, [
    `<label for="q">Which card is to go in, or what are you looking for?</label>`,
    element('input', {
      id: 'q',
      type: 'search',
      name: 'q',
      autocomplete: 'off',
      'aria-describedby': 'how',
    }),
    '<p class="quiet" id="how">A size, as 5 x 7 in, 148 x 105 mm, A6 or half letter; with “up to 4 mm thick” if it is; or words. Press / to come here, Escape to clear.</p>',
    element('div', { class: 'filters' }, [
      filter(
        'tag',
        'Tag',
        tags.map((tag) => [tag, tag]),
      ),
      filter(
        'paper',
        'Paper',
        papers.map((paper) => [paper, paper]),
      ),
      filter('depth', 'Depth', [
        ['flat', 'flat'],
        ['box', 'box envelopes'],
      ]),
    ]),
    '<p id="answer" class="answer" role="status" aria-live="polite"></p>',
  ]);
}

const filter = (name: string, label: string, choices: readonly (readonly [string, string])[]): string =>
  element('label', {}, [
    `${label}`,
    element('select', { name }, [
      '<option value="">any</option>',
      ...choices.map(([value, text]) => `<option value="${words(value)}">${words(text)}</option>`),
    ]),
  ]);

const distinct = (all: readonly string[]): readonly string[] => [...new Set(all)].sort();
