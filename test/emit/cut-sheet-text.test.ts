/* What stands on a cut sheet in the terminal, whole, for one envelope of each kind. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { renderCutSheetText } from '../../src/emit/cut-sheet/render-text.js';
import { cutSheet } from '../../src/emit/cut-sheet/sheet.js';
import { compileText } from '../support/compile-text.js';
import { recipesIn } from '../support/rejected.js';

test.each(recipesIn('test/emit/cut-sheet'))('%s', async (path) => {
  const { recipes } = compileText(readFileSync(path, 'utf8'));
  const text = recipes.map((recipe) => renderCutSheetText(cutSheet(recipe))).join('\n');
  for (const line of text.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  await expect(text).toMatchFileSnapshot(
    path.replace('test/emit/', '').replace(/\.plica$/, '.cut-sheet.txt'),
  );
});
