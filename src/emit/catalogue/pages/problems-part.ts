import { paragraph, stack } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { capitalised, stopped } from '../../cut-sheet/words.js';
import type { Book } from '../book.js';
import type { Found } from '../../json/found.js';
import { BODY, SMALL, WIDTH } from '../sizes.js';
import { runsOf, type Strip, wordStrip } from '../strip.js';
import type { Part } from './part.js';

/** What keeps recipes of the folder out of the book; null where nothing does. */
export const problemsPart = ({ problems }: Book, measure: TextMeasure): Part | null =>
  problems.length === 0
    ? null
    : {
        title: 'Not in this book yet',
        destination: 'problems',
        *strips() {
          yield wordStrip('P', paragraph(INTRODUCTION, WIDTH, BODY, measure), measure);
          for (const found of problems) yield problem(found, measure);
        },
      };

const INTRODUCTION =
  'These were found in recipes of the folder. What has an error is left out until it is mended.';

function problem({ file, line, message, why, help, rule, severity }: Found, measure: TextMeasure): Strip {
  const place = paragraph(`${file}, line ${line}: ${severity} (${rule})`, WIDTH, SMALL, measure);
  const sentences = [message, why, help && `to mend it: ${help}`].filter(
    (text) => text !== null && text !== '',
  );
  const said = paragraph(
    sentences.map((text) => stopped(capitalised(text ?? ''))).join(' '),
    WIDTH,
    BODY,
    measure,
  );
  return {
    height: stack(1, place, said).height,
    items: ({ x, y }) => [
      { role: 'P', runs: runsOf(place, { x, y }, measure, 'quiet') },
      { role: 'P', runs: runsOf(said, { x, y: y - place.height - 1 }, measure) },
    ],
  };
}
