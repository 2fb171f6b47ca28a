import { expect, test } from 'vitest';
import { plica } from '../support/command-line.js';
import { specs } from '../support/specs.js';

test('the recipes that come with plica pass a strict check', async () => {
  const { code, out } = await plica('check specs --strict', { files: specs() });
  expect(out).toMatch(/^nothing wrong in \d+ envelopes of \d+ files\n$/);
  expect(code).toBe(0);
});

test('every one of them has its own names across all files', async () => {
  const { out } = await plica('show specs --format json', { files: specs() });
  const { recipes } = JSON.parse(out) as { readonly recipes: readonly { readonly name: string }[] };
  expect(recipes.length).toBeGreaterThanOrEqual(14);
});
