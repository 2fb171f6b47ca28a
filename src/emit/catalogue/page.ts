import type { Weight } from '../../drawing/drawing.js';

/** One line of text on a page, in points, y up; its start is on the baseline. */
export interface Run {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
  /** `quiet` is a grey that still reads well. */
  readonly ink: 'full' | 'quiet';
  /** Counter-clockwise; left out: level. */
  readonly angleDegrees?: number;
}

/** Text of one meaning, line by line. `to` names the destination that it links to. */
export interface Words {
  readonly runs: readonly Run[];
  readonly to?: string;
}

/** Content of a page with its meaning for who cannot see it (PDF structure types, ISO 32000-1, 14.8.4), in reading order. */
export type Item =
  | ({ readonly role: 'H1' | 'H2' | 'H3' | 'P' } & Words)
  /** Lines as PDF operators, in points and black unless they say otherwise; the lettering apart. `alt` says what is seen. */
  | {
      readonly role: 'Figure';
      readonly alt: string;
      readonly operators: string;
      readonly runs: readonly Run[];
    }
  | { readonly role: 'L'; readonly items: readonly { readonly label: Words | null; readonly body: Words }[] }
  | {
      readonly role: 'Table';
      readonly rows: readonly (readonly ({ readonly heading: 'column' | 'row' | null } & Words)[])[];
    }
  /** Entries of contents or of an index. */
  | { readonly role: 'TOC'; readonly items: readonly Words[] }
  /** Seen, but read by nobody: page numbers, rules. */
  | { readonly role: 'Artifact'; readonly operators: string; readonly runs: readonly Run[] };

/** Items set in a frame of their own: moved, then scaled about their origin. */
export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly items: readonly Item[];
}

/** A page of a book, in points. */
export interface BookPage {
  readonly groups: readonly Placed[];
}

/** A book as it is written, from front to back. A chapter begins with the page that follows; one of a level ends those as deep. */
export type Piece =
  | { readonly kind: 'chapter'; readonly title: string; readonly level: 1 | 2; readonly destination: string }
  | { readonly kind: 'page'; readonly page: BookPage };
