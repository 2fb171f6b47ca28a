import type { Source } from '../text/source.js';

/** What reading a used file came to. `id` is the same for one file however it is reached (its real path). */
export type ReadResult =
  | { readonly kind: 'source'; readonly id: string; readonly source: Source }
  | { readonly kind: 'outside-root' }
  | { readonly kind: 'too-large'; readonly bytes: number | null }
  | { readonly kind: 'unreadable'; readonly reason: string };

/** Reads the file that `use "path"` means in the file with id `from`. Handed in by the host; never throws. */
export type Reader = (path: string, from: string) => ReadResult;

/** A file given to a command: its source and the id that a reader would give it. */
export interface Input {
  readonly id: string;
  readonly source: Source;
}
