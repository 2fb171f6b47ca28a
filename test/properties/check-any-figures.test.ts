/*
 * The same of recipes in which only figures, units and names are changed over. Most can be read, and many fold badly: then
 * each remedy is tried on paper, which takes the longest of all.
 */
import { describe, expect, test } from 'vitest';
import { compileText } from '../support/compile-text.js';
import { keepsPromises } from '../support/promises.js';
import { specFiles } from '../support/specs.js';
import { exchanged, shortRecipes } from '../support/texts.js';

test.each(shortRecipes)('good recipe %# has nothing wrong to begin with', (text) => {
  // Under this name any statement may stand.
  expect(compileText(text, { name: 'catalogue.plica', files: specFiles }).diagnostics).toEqual([]);
});

describe('good recipes with figures, units and names changed over', () =>
  keepsPromises(exchanged, { rounds: 6, texts: 1_000 }));
