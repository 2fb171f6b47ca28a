import type { BookEmitter } from './book.js';
import type { BookFormat } from './formats.js';

/** What writes each format, loaded when it is wanted. */
export const BOOK_EMITTERS: Readonly<Record<BookFormat['name'], () => Promise<BookEmitter>>> = {
  pdf: async () => (await import('./pdf/pdf.js')).pdf,
  html: async () => (await import('./html/html.js')).html,
  csv: async () => (await import('./csv.js')).csv,
  markdown: async () => (await import('./markdown.js')).markdown,
  json: async () => (await import('./json.js')).json,
};
