import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compileText } from '../support/compile-text.js';
import { renderText } from '../../src/diagnostics/render-text.js';

test('the kitchen sink means something too', () => {
  const text = readFileSync('test/support/kitchen-sink.plica', 'utf8');
  const { diagnostics } = compileText(text, { files: { 'papers.plica': '', 'house/style.plica': '' } });
  expect(renderText(diagnostics)).toBe('');
});
