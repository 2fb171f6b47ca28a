import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { renderText } from '../../src/diagnostics/render-text.js';
import { parse } from '../../grammar/parser.js';
import { format } from '../../src/format/format.js';
import { source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';

const recipes = readdirSync(import.meta.dirname, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.plica'))
  .sort();

test.each(recipes)('nothing is found in %s', (name) => {
  const text = readFileSync(join(import.meta.dirname, name), 'utf8');
  expect(text).toMatch(/^\uFEFF?# /);
  expect(renderText(compileText(text, { name }).diagnostics)).toBe('');
});

test.each(recipes)('%s has the one layout', (name) => {
  const text = readFileSync(join(import.meta.dirname, name), 'utf8');
  expect(format(parse(source(name, text)).file)).toBe(text);
});
