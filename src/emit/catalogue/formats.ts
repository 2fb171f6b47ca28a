/** A format of a book, without the code that writes it: the command names them at every start. */
export interface BookFormat {
  readonly name: 'pdf' | 'html' | 'csv' | 'markdown' | 'json';
  /** How its files end; the first is the usual one. */
  readonly endings: readonly string[];
  /** What it is for, in a few words. */
  readonly summary: string;
}

/** Every format, in the order in which they are named. */
export const BOOK_FORMATS: readonly BookFormat[] = [
  { name: 'pdf', endings: ['.pdf'], summary: 'a book to read and to print: table, drawings, folds, indexes' },
  {
    name: 'html',
    endings: ['.html', '.htm'],
    summary: 'one page to search by card size, by itself on any screen',
  },
  { name: 'csv', endings: ['.csv'], summary: 'a row for each envelope, for spreadsheets' },
  { name: 'markdown', endings: ['.md'], summary: 'the table of measurements, for a repository' },
  { name: 'json', endings: ['.json'], summary: 'every figure in mm, for programs' },
];
