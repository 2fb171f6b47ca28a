/* What fuzzing once found worth keeping keeps every law. */
import { expect, test } from 'vitest';
import { brokenTextLaws } from '../support/text-laws.js';
import { corpus, corpusTexts } from './corpus.js';

test('there is a corpus, and it is small', () => {
  const texts = corpusTexts();
  expect(texts.length).toBeGreaterThan(50);
  expect(texts.length).toBeLessThanOrEqual(300);
  expect(texts.join('').length).toBeLessThan(300_000);
});

test.each(corpus())('%s', (_, text) => {
  expect(brokenTextLaws(text)).toEqual([]);
});
