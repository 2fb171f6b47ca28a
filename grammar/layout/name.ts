import { is, spanOf, type Token } from '../token.js';
import { Word } from '../tokens.js';
import { say, type Work } from './work.js';

/** Declared names are lower case. */
export function checkName(work: Work, name: Token | undefined): void {
  if (name === undefined || !is(name, Word) || name.image === name.image.toLowerCase()) return;
  const lower = name.image.toLowerCase();
  const named = name.image === 'X' ? [] : namedLike(work, name.image);
  say(work, {
    message: `the name \`${name.image}\` has capitals`,
    at: spanOf(work.source, name),
    why: 'declared names are lower case',
    help:
      name.image === 'X'
        ? 'choose a longer name, in lower case'
        : `write \`${lower}\`, here and wherever it is named`,
    ...(named.length === 0
      ? {}
      : { fix: named.map((token) => ({ span: spanOf(work.source, token), text: lower })) }),
  });
}

/** Every place of the file where the name stands; none where there are too many to tell. */
function namedLike(work: Work, image: string): readonly Token[] {
  const named = work.scanned.filter((token) => is(token, Word) && token.image === image);
  return named.length > 100 ? [] : named;
}
