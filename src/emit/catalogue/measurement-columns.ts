import { sameLength } from '../../measure/slack.js';
import type { Size } from '../../recipe/recipe.js';
import type { Reading } from '../cut-sheet/content.js';
import { type Lengths, lengths } from '../cut-sheet/lengths.js';
import type { Row } from './leaf.js';

/** A column of the table of measurements, but for the envelope itself: one reading below the other, some without another system. */
export interface MeasurementColumn {
  readonly heading: string;
  readonly readings: (row: Row) => readonly Reading[];
}

/** What is laid off for each envelope, and what it is cut from. */
export const MEASUREMENTS: readonly MeasurementColumn[] = [
  { heading: 'Card', readings: (row) => [lengths(row).readSize(row.card)] },
  { heading: 'Blank', readings: (row) => [readBlank(lengths(row), row.blank)] },
  { heading: 'Sides', readings: (row) => marks(row, sideMarks(row)) },
  { heading: 'Seal', readings: (row) => marks(row, row.marks.seal) },
  { heading: 'Bottom', readings: (row) => marks(row, row.marks.bottom) },
  { heading: 'Depth', readings: (row) => [row.depth > 0 ? lengths(row).exact(row.depth) : plain('flat')] },
  { heading: 'Paper', readings: ({ paper }) => (paper ? [plain(paper.title)] : []) },
  {
    heading: 'From a sheet',
    readings: ({ paper }) => (paper?.sheet ? [plain(`${paper.sheet.copies}`)] : []),
  },
  { heading: 'Post', readings: ({ post }) => post.map(plain) },
];

const plain = (read: string): Reading => ({ read, other: '' });

/** A blank is square, and said by its side, unless a recipe states it otherwise. */
export const readBlank = (say: Lengths, blank: Size): Reading =>
  sameLength(blank.width, blank.height) ? say.read(blank.width) : say.readSize(blank);

const marks = (row: Row, at: readonly number[]): readonly Reading[] =>
  at.map((mark) => lengths(row).read(mark));

/** Marks of both sides where they are alike; else the left ones, then the right ones. */
function sideMarks({ marks: { left, right } }: Row): readonly number[] {
  const alike = left.every((mark, index) => sameLength(mark, right[index] ?? Number.NaN));
  return alike ? left : [...left, ...right];
}
