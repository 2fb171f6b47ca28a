/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { Fit, fitOf, Holds } from './fit-of.js';
import type { Query, readQuery, Sizes } from './read-query.js';

/** What the page is told of each envelope. */
export interface Listed extends Holds {
  readonly name: string;
  /** All that words are looked for in, lower case. */
  readonly words: string;
  readonly tags: readonly string[];
  readonly paper: string;
}

/** What stands in the page as data. */
export interface PageData {
  readonly units: string;
  readonly sizes: Sizes;
  readonly rows: readonly Listed[];
}

interface Found {
  readonly row: Listed;
  readonly fit: Fit;
}

/** What runs in the page, and names nothing outside itself but what it is handed. */
export function client(tools: { readonly readQuery: typeof readQuery; readonly fitOf: typeof fitOf }): void {
  const one = <T extends Element>(selector: string): T => document.querySelector(selector) as T;
  const data = JSON.parse(one('#data').textContent ?? '') as PageData;
  const form = one<HTMLFormElement>('#search');
  const field = (name: string): HTMLInputElement => form.elements.namedItem(name) as HTMLInputElement;
  const answer = one('#answer');
  const articleOf = (name: string): HTMLDetailsElement | null =>
    document.getElementById(`recipe-${name}`) as HTMLDetailsElement | null;
  const inches = data.units === 'in';
  const said = (mm: number): string =>
    inches ? `${Number((mm / 25.4).toFixed(3))} in` : `${Number(mm.toFixed(1))} mm`;

  /** Whether recipes stand as they fit a card, and not in the order of the book. */
  let isSorted = false;

  const found = ({ card, thick, words }: Query): readonly Found[] => {
    const [tag, paper, depth] = [field('tag').value, field('paper').value, field('depth').value];
    const all = data.rows.flatMap((row) => {
      const fit = tools.fitOf(row, card, thick);
      const wanted =
        fit !== null &&
        words.every((word) => row.words.includes(word)) &&
        (tag === '' || row.tags.includes(tag)) &&
        (paper === '' || row.paper === paper) &&
        (depth === '' || (depth === 'flat') === (row.depth === 0));
      return wanted ? [{ row, fit }] : [];
    });
    return card ? all.sort((a, b) => a.fit.width + a.fit.height - b.fit.width - b.fit.height) : all;
  };

  const inWords = ({ turned, width, height, depth }: Fit): string =>
    `takes it with ${said(width)} and ${said(height)} to spare${turned ? ', the other way round' : ''}${depth === null ? '' : `, ${said(depth)} in depth`}`;

  /** Shows what was found and nothing else, and how each takes the card. */
  const show = (shown: readonly Found[], card: Query['card']): void => {
    const fits = new Map(shown.map(({ row, fit }) => [row.name, fit]));
    for (const { name } of data.rows) {
      const fit = fits.get(name);
      for (const place of [articleOf(name), document.getElementById(`row-${name}`)])
        if (place) place.hidden = fit === undefined;
      const note = articleOf(name)?.querySelector('.fit');
      if (note) note.textContent = fit && card ? inWords(fit) : '';
    }
    for (const section of document.querySelectorAll<HTMLElement>('.recipes'))
      section.hidden = section.querySelector('details:not([hidden])') === null;
  };

  /** Puts recipes into this order, each in its section. */
  const arrange = (rows: readonly Listed[]): void => {
    for (const { name } of [...rows].reverse()) {
      const article = articleOf(name);
      article?.parentElement?.querySelector('h2')?.after(article);
    }
  };

  /** What was asked for, as it was understood, and how many answer to it. */
  const told = ({ card, thick, words }: Query, count: number): string => {
    const asked = [
      ...(card
        ? [`a card ${said(Math.max(card.width, card.height))} × ${said(Math.min(card.width, card.height))}`]
        : []),
      ...(thick === null ? [] : [`${said(thick)} thick`]),
      ...words.map((word) => `“${word}”`),
    ];
    const counted = count === 1 ? '1 envelope' : `${count} envelopes`;
    return asked.length === 0
      ? `${counted}.`
      : `Read as ${asked.join(', ')}: ${counted}${count === 0 ? '. Try a size, as 5 x 7 in or A6, or fewer words' : ''}.`;
  };

  /** The page's address says what is looked for, so that it can be handed on. */
  const remember = (): void => {
    const state = new URLSearchParams();
    for (const name of ['q', 'tag', 'paper', 'depth'])
      if (field(name).value !== '') state.set(name, field(name).value);
    history.replaceState(null, '', `${state.size > 0 ? `?${state}` : location.pathname}${location.hash}`);
  };

  const search = (): void => {
    const query = tools.readQuery(field('q').value, data.sizes, data.units);
    const shown = found(query);
    show(shown, query.card);
    if (query.card) arrange(shown.map(({ row }) => row));
    else if (isSorted) arrange(data.rows);
    isSorted = query.card !== null;
    answer.textContent = told(query, shown.length);
    remember();
  };

  const openAsked = (): void => {
    // Names are plain words: nothing in them is spelled otherwise in an address.
    const article = document.getElementById(location.hash.slice(1));
    if (!(article instanceof HTMLDetailsElement)) return;
    article.hidden = false;
    if (article.parentElement) article.parentElement.hidden = false;
    article.open = true;
    article.scrollIntoView();
    article.querySelector('summary')?.focus();
  };

  const zoom = (tool: HTMLElement): void => {
    const image = tool.closest('figure')?.querySelector('img');
    if (!image) return;
    const now = Number.parseFloat(image.style.width) || 100;
    const by: { [step: string]: number } = { in: now * 1.5, out: now / 1.5, fit: 100 };
    image.style.width = `${Math.min(1000, Math.max(100, by[tool.dataset['zoom'] ?? ''] ?? 100))}%`;
  };

  const download = (tool: HTMLElement): void => {
    const inside = tool.closest('.inside');
    const name = tool.dataset['file'] ?? '';
    const source = inside?.querySelector(tool.dataset['from'] ?? '');
    const picture =
      source instanceof HTMLImageElement
        ? decodeURIComponent(source.src.slice(source.src.indexOf(',') + 1))
        : null;
    const text = picture ?? source?.textContent ?? '';
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: tool.dataset['type'] ?? 'text/plain' }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  };

  for (const [name, value] of new URLSearchParams(location.search))
    if (form.elements.namedItem(name)) field(name).value = value;
  form.hidden = false;
  for (const tools of document.querySelectorAll<HTMLElement>('.tools')) tools.hidden = false;
  form.addEventListener('input', search);
  form.addEventListener('submit', (event) => event.preventDefault());
  document.addEventListener('keydown', (event) => {
    const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement;
    if (event.key === '/' && !typing && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      field('q').focus();
    }
    if (event.key === 'Escape' && event.target === field('q')) {
      field('q').value = '';
      search();
    }
  });
  document.addEventListener('click', (event) => {
    const tool = event.target instanceof Element ? event.target.closest<HTMLElement>('button') : null;
    if (tool?.dataset['zoom']) zoom(tool);
    if (tool?.dataset['file']) download(tool);
  });
  addEventListener('hashchange', openAsked);
  search();
  openAsked();
}
