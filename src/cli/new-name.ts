import { sizeNamed } from '../stock/sizes.js';
import { LONGEST_WORD } from '../text/longest.js';
import { NEW_PAPER } from './new-recipe.js';

/** Why an envelope of a new recipe cannot be named so; null: it can. */
export const whyNoName = (name: string): string | null => REFUSED.find(({ isSo }) => isSo(name))?.why ?? null;

/** A name near to one that it cannot have. */
export function betterName(name: string): string {
  const words = name.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  const joined = words
    .join('-')
    .slice(0, LONGEST_WORD - PREFIX.length)
    .replace(/-$/, '');
  return [joined, PREFIX + joined].find((each) => whyNoName(each) === null) ?? 'card';
}

const PREFIX = 'card-';
const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/** What no envelope of a new recipe is named; the first that fits is said. */
const REFUSED: readonly { readonly isSo: (name: string) => boolean; readonly why: string }[] = [
  { isSo: (name) => sizeNamed(name) !== undefined, why: 'is the name of a size' },
  { isSo: (name) => /^x\d*$/.test(name), why: 'is the sign between the sides of a size' },
  { isSo: (name) => name === NEW_PAPER, why: 'is the name of its paper' },
  { isSo: (name) => !NAME.test(name), why: 'is no name; names are lower case words with hyphens between' },
  {
    isSo: (name) => name.length > LONGEST_WORD,
    why: `is too long; a name has at most ${LONGEST_WORD} letters`,
  },
];
