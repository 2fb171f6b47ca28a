import { foldingWords } from '../../../grammar/words.js';
import { sizeNamed, sizeSpelt } from '../../stock/sizes.js';

/**
 * What words surely meant as a size: `half letter` for `half-letter`, `halfletter` or `letter half`, `us-a2` for
 * `us a2`, `A6` for `A-6`; null where it would be a guess. A sheet may also be a let that is a size.
 */
export function sizeMeant(written: string, isLet: (word: string) => boolean): string | null {
  const [, before, sheet = ''] = FOLDED_BEFORE.exec(written) ?? [];
  const [, sheetFirst = '', after] = FOLDED_AFTER.exec(written) ?? [];
  const fold = before ?? after;
  if (!fold) return sizeSpelt(written) ?? null;
  const folded = before ? sheet : sheetFirst;
  const named = isLet(folded) || sizeNamed(folded) ? folded : sizeSpelt(folded);
  return named ? `${fold.toLowerCase()} ${named}` : null;
}

const FOLDED_BEFORE = /^(half|third|quarter)[- ]?(.+)$/i;
const FOLDED_AFTER = /^(.+)[- ](half|third|quarter)$/i;

/** `half letter` for one of two parts of a sheet; null where no word folds into so many. */
export function foldMeant(sheet: string, parts: number): string | null {
  const fold = foldingWords.get(String(parts));
  return fold === undefined ? null : `${fold} ${sheet}`;
}
