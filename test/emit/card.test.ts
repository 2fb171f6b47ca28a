/* The small picture of an envelope as a file, read back by a parser that had no part in writing it. */
import { expect, test } from 'vitest';
import { card } from '../../src/emit/card.js';
import { emitted } from '../support/emitted.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { readSvg } from '../support/svg-file.js';

const fileOf = async (of = halfLetter()) => readSvg(new TextDecoder().decode(await emitted(card, of)));

test('it is asked for by name, and is named after its envelope', async () => {
  expect([card.name, card.byDefault]).toEqual(['card', false]);
  const files = await card.emit(halfLetter(), emitOptions());
  expect(files.map(({ extension }) => extension)).toEqual(['.card.svg']);
});

test('one small picture of 120 × 80 mm, on white, that says what it shows', async () => {
  const { root, elements, words } = await fileOf();
  expect(root.getAttribute('width')).toBe('120mm');
  expect(root.getAttribute('height')).toBe('80mm');
  expect(root.getAttribute('viewBox')).toBe('0 0 120 80');
  expect(elements.some(({ tagName }) => tagName === 'rect')).toBe(true);
  expect(words('title')).toBe('Half-letter card');
  // 11.25 × 25.4 = 285.75.
  expect(words('desc')).toContain('Blank 11 1/4 in square (285.8 mm).');
});

test('lengths are in the recipe’s own units first', async () => {
  const texts = async (units: 'in' | 'mm') =>
    (await fileOf(job({ card: { width: 152.4, height: 101.6 } }, { units }))).elements
      .filter(({ tagName }) => tagName === 'text')
      .map(({ textContent }) => textContent)
      .join(' ');
  expect(await texts('in')).toContain('Card 6 × 4 in (152.4 × 101.6 mm).');
  expect(await texts('mm')).toContain('Card 152.4 × 101.6 mm (6 × 4 in).');
});

test('same input, same bytes', async () => {
  expect(await emitted(card, halfLetter())).toEqual(await emitted(card, halfLetter()));
});
