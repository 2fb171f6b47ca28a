import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { RECIPE_PROBLEMS } from '../../src/recipe/problems.js';

const folder = join(import.meta.dirname, '../rejected/language');
const shown = readdirSync(folder)
  .filter((name) => name.endsWith('.plica'))
  .map((name) => readFileSync(join(folder, name), 'utf8'))
  .join('\n');

test.each(RECIPE_PROBLEMS)(
  '$name is explained, and a rejected recipe shows it',
  ({ name, meaning, matters, remedy }) => {
    for (const sentence of [meaning, matters, remedy]) expect(sentence).toMatch(/^[A-Z].*\.$/);
    // A circle of uses has its findings in the files used.
    expect(shown).toMatch(new RegExp(`#(.*, )?\\s*${name}(,.*)?$`, 'm'));
  },
);
