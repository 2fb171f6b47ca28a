import type { Edit } from '../../src/text/edit.js';
import type { Report } from '../../src/diagnostics/problem.js';
import { characterName } from '../characters.js';
import { shown } from '../slip.js';
import { endOf, is, spanOf } from '../token.js';
import { Colon, Stray, Word } from '../tokens.js';
import type { Stop } from './stop.js';

/** What is typed for something else. */
const instead: ReadonlyMap<string, string> = new Map([
  ['_', 'names are joined by `-`'],
  ["'", 'a string stands between double quotes `"`, and an inch mark is `"`'],
  ['[', 'brackets are round, blocks stand between `{` and `}`, and a list needs neither'],
  [']', 'brackets are round, blocks stand between `{` and `}`, and a list needs neither'],
  ['&', 'join words by `-`, and list them by commas'],
  ['|', 'list values by commas'],
  ['~', 'a value is exact as written; how far a hand may be off is the `tolerance`'],
  ['≈', 'a value is exact as written; how far a hand may be off is the `tolerance`'],
  ['•', 'a list is written with commas'],
  ['÷', 'divide by `/`'],
  ['·', 'multiply by `*`'],
  ['^', 'multiply by `*`'],
  ['$', 'a name needs no sign before it, and a price no currency'],
  ['€', 'a price needs no currency'],
  ['£', 'a price needs no currency'],
  ['\\', 'a line needs no sign to go on: a list goes on after its comma'],
  ['°', 'a recipe has no angles'],
  ['“', 'a string stands between double quotes `"`'],
  ['”', 'a string stands between double quotes `"`'],
  ['‘', 'a string stands between double quotes `"`'],
  ['’', 'a string stands between double quotes `"`'],
  ['.', 'a number is written `0.5` or `.5`, and no line ends in a point'],
]);

/** Control characters, and others that an editor does not show. */
const UNSEEN = /[\p{Cc}\p{DI}]/u;

export function strayCharacter(stop: Stop): Report | null {
  const { source, token } = stop;
  if (!is(token, Stray)) return null;
  const character = String.fromCodePoint(token.image.codePointAt(0) ?? 0);
  const unseen = UNSEEN.test(character);
  const letter = !unseen && /^\p{L}/u.test(token.image);
  const fix = fixFor(stop, character);
  return {
    message: letter
      ? `\`${token.image}\` is not a letter that names are made of`
      : `${shown(token)} has no meaning here`,
    at: spanOf(source, token),
    label:
      !unseen && /[ -~\p{L}]/u.test(character)
        ? ''
        : `this is ${characterName(character.codePointAt(0) ?? 0)}`,
    help: letter
      ? 'use the letters a to z; a `title` may have any'
      : (instead.get(character) ?? (unseen ? 'take it out' : 'take it out; inside a string it may stand')),
    ...(fix === null ? {} : { fix }),
  };
}

/** The edit where only one can be meant: a sign of money, a picture, brackets about a list, a `_` within a name. */
function fixFor({ source, token, before, after, line }: Stop, character: string): readonly Edit[] | null {
  if (token.image !== character) return null;
  const span = spanOf(source, token);
  const last = line.at(-2);
  if (character === '[' && is(before, Colon) && last?.image === ']')
    return [span, spanOf(source, last)].map((each) => ({ span: each, text: '' }));
  const touches =
    before !== undefined &&
    after[0] !== undefined &&
    endOf(before) === span.start &&
    after[0].startOffset === span.end;
  if (character === '_')
    return touches && is(before, Word) && is(after[0], Word) ? [{ span, text: '-' }] : null;
  const idle = /[$€£¥~≈]|\p{Extended_Pictographic}/u.test(character);
  return idle && !touches ? [{ span, text: '' }] : null;
}
