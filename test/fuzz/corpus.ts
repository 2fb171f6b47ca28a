import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { shortRecipes } from '../support/texts.js';

/** Texts that reach what no other recipe of the tests does. */
export const CORPUS = 'test/fuzz/corpus';

/** The corpus by its files' names. */
export const corpus = (): readonly (readonly [name: string, text: string])[] =>
  readdirSync(CORPUS)
    .sort()
    .map((name) => [name, readFileSync(join(CORPUS, name), 'utf8')]);

export const corpusTexts = (): readonly string[] => corpus().map(([, text]) => text);

/** Recipes of the tests and of the specs, and the examples of the reference. */
export const seedTexts = (): readonly string[] => [
  ...shortRecipes,
  ...['specs', 'test/accepted', 'test/rejected', 'test/rules', 'test/support'].flatMap(recipesBelow),
];

const recipesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.plica'))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'));

/** Makes the corpus of those texts that are needed: shortest first, each that reaches something new. */
export function saveCorpus(texts: readonly string[], isNew: (text: string) => boolean): number {
  for (const text of seedTexts()) isNew(text);
  const needed = [...new Set([...corpusTexts(), ...texts])]
    .filter(isWhole)
    .sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
    .filter(isNew);
  rmSync(CORPUS, { recursive: true });
  for (const text of needed) layDown(CORPUS, text);
  return needed.length;
}

/** Half a character cannot be kept in a file. */
const isWhole = (text: string): boolean => Buffer.from(text).toString() === text;

/** Writes a text into a folder, under a name that is made of the text; says where. */
export function layDown(folder: string, text: string): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${createHash('sha256').update(text).digest('hex').slice(0, 8)}.plica`);
  writeFileSync(path, text);
  return path;
}
