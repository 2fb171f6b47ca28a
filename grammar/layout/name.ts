import { is, meantAs, spanOf, type Token } from '../token.js';
import { Word } from '../tokens.js';
import { statementWords } from '../words.js';
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

/**
 * Every place of the file where the name stands, but not where it is one of several words side by side, as in a title left
 * without quotes; none where there are too many to tell.
 */
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
  for (const [index, token] of scanned.entries()) {
    if (!is(token, Word) || token.image === token.image.toLowerCase()) continue;
    if (isOneOfSeveral(scanned[index - 1], scanned[index + 1])) continue;
    const same = words.get(token.image);
    if (same === undefined) words.set(token.image, [token]);
    else same.push(token);
  }
  return words;
}

/** Whether a word stands beside another that is neither `like` nor what begins a statement. */
const isOneOfSeveral = (before: Token | undefined, after: Token | undefined): boolean =>
  isPlainWord(before) || isPlainWord(after);

const isPlainWord = (token: Token | undefined): boolean =>
  is(token, Word) &&
  token !== undefined &&
  token.image !== 'like' &&
  !statementWords.has(token.image.toLowerCase());
