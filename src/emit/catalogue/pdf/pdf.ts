import { POINTS_PER_MM } from '../../pdf/document.js';
import type { BookEmitter } from '../book.js';
import { pagesOf } from '../pages/pieces.js';
import { writePdf } from './write-pdf.js';

/** A book as PDF: to read on a screen, or to print page by page. */
export const pdf: BookEmitter = async function* (source, options) {
  const { book } = source;
  const page = { width: book.page.width * POINTS_PER_MM, height: book.page.height * POINTS_PER_MM };
  yield* writePdf(
    (measure) => pagesOf(source, measure, options.advance).pieces(),
    { title: book.title, author: book.by, page },
    options,
  );
};
