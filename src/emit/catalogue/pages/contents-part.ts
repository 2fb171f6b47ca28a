import { paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import type { Book } from '../book.js';
import { BODY, WIDTH } from '../sizes.js';
import { wordStrip } from '../strip.js';
import { entriesFor } from './entries.js';
import type { Part } from './part.js';
import { inAList } from '../in-a-list.js';

const ABOVE_SECTION = 4.5;

/** What is in the book, section by section, and on which page. */
export const contentsPart = ({ chapters }: Book, measure: TextMeasure): Part => ({
  title: 'Contents',
  destination: 'contents',
  *strips(pageOf) {
    const entry = entriesFor(measure, pageOf);
    for (const { title, rows } of chapters) {
      if (title !== null) {
        const heading = wordStrip('H2', paragraph(inAList(title), WIDTH, BODY, measure, 'bold'), measure);
        yield { ...heading, above: ABOVE_SECTION, keep: true };
      }
      for (const row of rows) yield entry(row);
    }
  },
});
