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
function namedLike(work: Work, image: string): readonly Token[] {
  const named = work.scanned.filter((token) => is(token, Word) && token.image === image);
  return named.length > 100 ? [] : named;
}
