import type { TextMeasure } from '../../../drawing/text-measure.js';
import { capitalised, stopped } from '../../cut-sheet/words.js';
import type { Book } from '../book.js';
import type { Found } from '../../json/found.js';
import { BODY, SMALL } from '../sizes.js';
import { type Strip, textStrips } from '../strip.js';
import type { Part } from './part.js';

/** What keeps recipes of the folder out of the book; null where nothing does. */
export const problemsPart = ({ problems }: Book, measure: TextMeasure): Part | null =>
  problems.length === 0
    ? null
    : {
        title: 'Not in this book yet',
        destination: 'problems',
        *strips() {
          yield* textStrips('P', INTRODUCTION, BODY, measure);
          for (const found of problems) yield* problem(found, measure);
        },
      };

const INTRODUCTION =
  'These were found in recipes of the folder. What has an error is left out until it is mended.';

function problem(
  { file, line, message, why, help, rule, severity }: Found,
  measure: TextMeasure,
): readonly Strip[] {
  const sentences = [message, why, help && `to mend it: ${help}`].flatMap((text) => text || []);
  const place = textStrips('P', `${file}, line ${line}: ${severity} (${rule})`, SMALL, measure, {
    ink: 'quiet',
  });
  const said = textStrips('P', sentences.map((text) => stopped(capitalised(text))).join(' '), BODY, measure);
  return [
    ...place.map((strip) => ({ ...strip, keep: true })),
    ...said.map((strip, index) => (index === 0 ? { ...strip, above: 1 } : strip)),
  ];
}
