/** A stretch of a file that stands on one line in every layout, comments apart. */
export interface Piece {
  readonly kind: 'start' | 'statement' | 'header' | 'open' | 'entry' | 'close' | 'comment';
  /** How it is written in the layout. */
  readonly text: string;
  /** Where it stands in the source. */
  readonly start: number;
  readonly end: number;
  /** What parts it from the piece before, on the same line; null: it begins a line. After a comment every piece does. */
  readonly space: string | null;
  /** How far the line that it begins is indented, in steps. */
  readonly depth: number;
}
