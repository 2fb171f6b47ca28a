import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { BrokenLine } from '../broken.js';
import { slip } from '../slip.js';
import type { Token } from '../token.js';
import { strayCharacter } from './characters.js';
import { headerName, likeName, reservedWord } from './headers.js';
import { blockAsValue, doubled, expectBackwards, listForOne, nothingAfter, unexpected } from './lines.js';
import { bracketedSize, firstSide, rangeInOneWord, sizeInOneWord, thirdSide } from './sizes.js';
import type { Recognise, Stop } from './stop.js';
import {
  inchMarkApart,
  quotedWord,
  quoteInString,
  stringsSideBySide,
  unclosedString,
  unquotedText,
} from './strings.js';
import {
  closedBracket,
  leadingPlus,
  numberBesideBracket,
  numbersSideBySide,
  openBracket,
  sumAmongWords,
  unitApart,
  wordAfterValue,
} from './sums.js';

/** What is wrong with a line that could not be read on from `token`, in our words; null if it has been said already. */
export function explain({ source, tokens: line }: BrokenLine, token: Token): Diagnostic | null {
  const index = line.indexOf(token);
  if (line.slice(0, index + 1).some(({ payload }) => payload === null)) return null;
  const stop: Stop = { source, line, token, before: line[index - 1], after: line.slice(index + 1) };
  for (const recognise of slips) {
    const what = recognise(stop);
    if (what !== null) return slip(what);
  }
  return slip(unexpected(stop));
}

/** The slips that people make, the telling ones first. */
const slips: readonly Recognise[] = [
  stringsSideBySide,
  quoteInString,
  inchMarkApart,
  unclosedString,
  unquotedText,
  headerName,
  likeName,
  strayCharacter,
  quotedWord,
  doubled,
  nothingAfter,
  sizeInOneWord,
  rangeInOneWord,
  numberBesideBracket,
  unitApart,
  wordAfterValue,
  reservedWord,
  expectBackwards,
  listForOne,
  sumAmongWords,
  bracketedSize,
  firstSide,
  thirdSide,
  leadingPlus,
  numbersSideBySide,
  openBracket,
  closedBracket,
  blockAsValue,
];
