/* What stands on a cut sheet in the terminal, whole, for one envelope of each kind. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { renderSheetText } from '../../src/emit/cut-sheet/render-text.js';
import { cutSheet } from '../../src/emit/cut-sheet/sheet.js';
import { compileText } from '../support/compile-text.js';
import { halfLetter } from '../support/jobs.js';
import { recipesIn } from '../support/rejected.js';

test.each(recipesIn('test/emit/cut-sheet'))('%s', async (path) => {
  const { recipes } = compileText(readFileSync(path, 'utf8'));
  const text = recipes.map((recipe) => renderSheetText(cutSheet(recipe))).join('\n');
  for (const line of text.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  await expect(text).toMatchFileSnapshot(
    path.replace('test/emit/', '').replace(/\.plica$/, '.cut-sheet.txt'),
  );
});

test('control characters of a title and a note are spelled out', () => {
  const text = renderSheetText(cutSheet(halfLetter({ title: 'Tide\u001b[2J', note: ['up\u202edown'] })));
  expect(text).toContain('Tide\\u{1b}[2J');
  expect(text).toContain('up\\u{202e}down');
  expect(text).not.toMatch(/[\u001b\u202e]/);
});

test('a narrow terminal has its lines wrapped, a table excepted that cannot be narrower', () => {
  const lines = renderSheetText(cutSheet(halfLetter()), undefined, 60).split('\n');
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(72);
  expect(lines.filter((line) => line.length > 60 && !/ mm| in| none| made/.test(line))).toEqual([]);
});

test('what is set apart does not move what stands beside it', () => {
  const shown = { strong: (text: string) => `<${text}>`, faint: (text: string) => `<${text}>` };
  const sheet = cutSheet(halfLetter());
  const bare = renderSheetText(sheet, shown).replaceAll(/[<>]/g, '').replaceAll(/ +$/gm, '');
  expect(bare).toBe(renderSheetText(sheet));
});
