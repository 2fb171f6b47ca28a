/* Whatever two recipes say, their difference can be told in every format, the same way each time. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { renderHtml } from '../../src/diff/render-html.js';
import { renderJson } from '../../src/diff/render-json.js';
import { renderMarkdown } from '../../src/diff/render-markdown.js';
import { renderText } from '../../src/diff/render-text.js';
import { compareTexts } from '../support/compare.js';
import { exchanged, shortRecipes, slipped } from '../support/texts.js';

const recipe = fc.oneof(fc.constantFrom(...shortRecipes), exchanged, slipped);

test('any two recipes are compared in every format, without a nonsense figure, twice alike', () => {
  fc.assert(
    fc.property(recipe, recipe, (before, after) => {
      const difference = compareTexts(before, after);
      const told = [renderText, renderMarkdown, renderJson, renderHtml].map((render) => render(difference));
      const [text = '', , json = ''] = told;
      expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
      expect(text).not.toMatch(/undefined|NaN|\[object/);
      expect(JSON.parse(json)).toMatchObject({ format: 'plica-difference' });
      const again = compareTexts(before, after);
      expect([renderText, renderMarkdown, renderJson, renderHtml].map((render) => render(again))).toEqual(
        told,
      );
    }),
    { seed: 8, numRuns: 100 },
  );
});
