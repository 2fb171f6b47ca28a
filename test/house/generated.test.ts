import { describe, expect, test } from 'vitest';
import { ebnf } from '../../grammar/generate/ebnf.js';
import { grammarRules } from '../../grammar/generate/grammar-rules.js';
import { lookahead } from '../../grammar/generate/lookahead.js';
import { railroadPage } from '../../grammar/generate/railroad.js';
import { SPELLINGS } from '../../grammar/spellings.js';
import { importsOf, programFiles } from './rooms.js';

describe('what is made from the grammar is as the grammar is now (`npm run bless` makes it anew)', () => {
  test('plica.ebnf', async () => {
    await expect(ebnf()).toMatchFileSnapshot('../../grammar/plica.ebnf');
  });

  test('lookahead.json', async () => {
    await expect(lookahead()).toMatchFileSnapshot('../../grammar/lookahead.json');
  });

  test('railroad.html', async () => {
    await expect(railroadPage()).toMatchFileSnapshot('../../grammar/railroad.html');
  });
});

test('every name in the grammar stands for something, and each but the first is asked for', () => {
  const text = ebnf().replace(/\(\*[^]*?\*\)|"[^"]*"|\?[^?]*\?/g, '');
  const told = [...text.matchAll(/^[a-z-]+/gm)].map(String);
  const asked = [...text.replace(/^[a-z-]+/gm, '').matchAll(/[a-z]+(?:-[a-z]+)*/g)].map(String);
  expect(told).toEqual([
    ...grammarRules().map(({ name }) => name),
    ...SPELLINGS.flatMap((spelling) => ('name' in spelling ? [spelling.name] : [])),
  ]);
  expect([...new Set(['file', ...asked])].sort()).toEqual(told.toSorted());
});

test('the page of diagrams needs no other file, and each of its links leads somewhere', () => {
  const page = railroadPage();
  expect(page).not.toMatch(/<script|<link|@import|url\(|\bsrc=|https?:(?!\/\/www\.w3\.org)/);
  const ids = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
  const links = [...page.matchAll(/ href="#([^"]+)"/g)].map(([, to]) => to);
  expect(links.length).toBeGreaterThan(10);
  expect(links.filter((to) => !ids.has(to))).toEqual([]);
});

test('nothing of it is part of the program', () => {
  const strangers = programFiles()
    .filter((file) => !file.startsWith('grammar/generate/'))
    .flatMap(importsOf)
    .filter(({ from }) => from.startsWith('grammar/generate/') || from === 'grammar/spellings.js');
  expect(strangers).toEqual([]);
});
