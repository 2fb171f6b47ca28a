import { is, meantAs, spanOf, type Token } from '../token.js';
import { Word } from '../tokens.js';
import { say, type Work } from './work.js';

/** Declared names are lower case; one that is named so wherever else it stands is read so. */
export function meantName(work: Work, name: Token): Token {
  const { image } = name;
  const lower = image.toLowerCase();
  if (!is(name, Word) || image === lower) return name;
  const named = lower === 'x' ? [] : namedLike(work, image);
  say(work, {
    message: `the name \`${image}\` has capitals`,
    at: spanOf(work.source, name),
    why: 'declared names are lower case',
    help:
      lower === 'x'
        ? 'choose a longer name, in lower case'
        : `write \`${lower}\`, here and wherever it is named`,
    ...(named.length === 0
      ? {}
      : { fix: named.map((token) => ({ span: spanOf(work.source, token), text: lower })) }),
  });
  return named.length === 1 ? meantAs(Word, name, lower) : name;
}

/** Every place of the file where the name stands; none where there are too many to tell. */
function namedLike({ scanned }: Work, image: string): readonly Token[] {
  const words = wordsOf.get(scanned) ?? gathered(scanned);
  wordsOf.set(scanned, words);
  const named = words.get(image) ?? [];
  return named.length > 100 ? [] : named;
}

/** The words with capitals of each text, gathered at the first need, once. */
const wordsOf = new WeakMap<readonly Token[], ReadonlyMap<string, readonly Token[]>>();

function gathered(scanned: readonly Token[]): ReadonlyMap<string, readonly Token[]> {
  const words = new Map<string, Token[]>();
  for (const token of scanned) {
    if (!is(token, Word) || token.image === token.image.toLowerCase()) continue;
    const same = words.get(token.image);
    if (same === undefined) words.set(token.image, [token]);
    else same.push(token);
  }
  return words;
}
