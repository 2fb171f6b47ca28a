import { readFileSync } from 'node:fs';
import { position, source } from '../../src/text/source.js';

/** The page that tells the language. */
export const referencePage = readFileSync('grammar/reference.md', 'utf8');

/** The page's fenced recipes: `plica`, `plica FILE` for one that later ones may use, `plica-wrong`. */
export const referenceExamples = [
  ...referencePage.matchAll(/^```plica(-wrong)?(?: (\S+))?\n([\s\S]*?)^```$/gm),
].map(({ index, 1: wrong, 2: name, 3: text = '' }) => ({
  line: position(source('', referencePage), index).line,
  right: wrong === undefined,
  name: name ?? 'recipe.plica',
  text,
}));
