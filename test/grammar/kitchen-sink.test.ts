import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { renderText } from '../../src/diagnostics/render-text.js';
import { compileText } from '../support/compile-text.js';

test('the kitchen sink means something too: it folds, without a finding', () => {
  const text = readFileSync('test/support/kitchen-sink.plica', 'utf8');
  const { diagnostics } = compileText(text, {
    name: 'catalogue.plica',
    files: { 'papers.plica': '', 'house/style.plica': '' },
  });
  expect(renderText(diagnostics)).toBe('');
});
