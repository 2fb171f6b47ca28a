import { POINTS_PER_MM } from '../../pdf/document.js';
import type { BookEmitter } from '../book.js';
import { pagesOf } from '../pages/pieces.js';
import { booklet } from './booklet.js';
import { writePdf } from './write-pdf.js';

/** A book as PDF: page by page to read and to print, or two pages to a side as a booklet. */
export const pdf: BookEmitter = async function* (source, options) {
  const { title, by: author, page: size } = source.book;
  const page = { width: size.width * POINTS_PER_MM, height: size.height * POINTS_PER_MM };
  const sheet = options.booklet ? { ...page, width: 2 * page.width } : page;
  yield* writePdf(
    (measure) => {
      const { count, pieces } = pagesOf(source, measure, options.advance);
      options.tell(count());
      return options.booklet ? booklet(pieces(), page) : pieces();
    },
    { title, author, page: sheet },
    options,
  );
};
