/*
 * host/: the machine that plica runs on: its disk, its standard streams, its environment.
 * In: paths and bytes. Out: bytes, or the reason why there are none. Nothing here throws for what a disk may do.
 * Refuses to know: what is in a recipe.
 */

/** Everything that plica asks of a machine. Paths may be relative to `cwd`. */
export interface Host {
  /** The working folder, absolute. */
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly out: Outlet;
  readonly err: Outlet;
  /** What is at a path, behind any links. `other`: a device, a pipe, a socket. */
  readonly kind: (path: string) => 'file' | 'folder' | 'other' | 'missing';
  /** The absolute path behind all links, or null where there is nothing. */
  readonly realPath: (path: string) => string | null;
  /** The bytes of a file of at most `most` bytes. */
  readonly read: (path: string, most: number) => Read;
  /** All that standard input brings, at most `most` bytes. */
  readonly readInput: (most: number) => Promise<Read>;
  /** What lies in a folder, in no order. */
  readonly list: (folder: string) => Listing;
  /** Writes all of the files or none, each whole or not at all; makes the folder where it is missing. */
  readonly write: (folder: string, files: readonly NewFile[]) => Written;
  /**
   * Writes a file piece by piece, whole or not at all: what lay in its place stays until the last piece is written. Makes its
   * folder where it is missing. A piece is asked for when the one before is on its way.
   */
  readonly writeStream: (path: string, pieces: AsyncIterable<Uint8Array>) => Promise<Written>;
  /** Writes a file that is not there yet; one that is, stays as it is. Its folder must be there. */
  readonly create: (path: string, bytes: Uint8Array) => Written;
  /** Takes a file away, or a folder with nothing in it. */
  readonly remove: (path: string) => Written;
  /** Looks out for changes to recipes; what lies in the folder `passOver` is not looked at. */
  readonly watch: (passOver: string | null) => Watch;
  /** Runs git in the working folder with just these arguments; `input` is what it reads. */
  readonly git: (args: readonly string[], input?: string) => GitResult;
  /** The TrueType files that come with plica. */
  readonly fonts: () => Fonts;
  /** Stands for this very program: what it made, another may make otherwise. */
  readonly edition: () => Promise<string>;
  /** Threads that run this program; null: there are none to be had. */
  readonly threads: () => Promise<Threads | null>;
  /**
   * Has at most `most` threads of this program check recipes beside this one, from now on. The task is plain data, and so is what
   * they tell: all of it, once each has come to its end. There may be none to be had.
   */
  readonly beside: (task: object, most: number) => Promise<readonly unknown[]>;
  /** Has something done when the person stops the command (Ctrl-C) or the machine does; undone by what comes back. */
  readonly onStop: (clean: () => void) => () => void;
}

/** Some threads, and what they do; results come back as their work is done. */
export interface Threads {
  readonly count: number;
  /** Has a thread do the leaves of one recipe file; tasks and results are plain data. */
  readonly run: (task: object) => Promise<unknown>;
  readonly close: () => Promise<void>;
}

/** A look-out for recipes that come, go or change. */
export interface Watch {
  /** Looks at these places too from now on: at a file, or at all recipes in a folder. What is not there may come. */
  readonly follow: (paths: readonly string[]) => Promise<void>;
  /**
   * Waits until something may have changed, and has been still for a moment; false: the person asks to stop (Ctrl-C), and
   * nothing is looked at any more.
   */
  readonly changed: () => Promise<boolean>;
  readonly stop: () => Promise<void>;
}

/** What git did: its exit code and what it wrote; or why it could not be run, or not to its end. */
export type GitResult =
  | { readonly kind: 'ended'; readonly code: number; readonly out: Buffer; readonly err: string }
  | Trouble;

/** What keeps an answer from being given, as a sentence that names what it is about, safe to print. */
export interface Trouble {
  readonly kind: 'trouble';
  readonly reason: string;
}

export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** A standard stream. Writing to one that nobody reads any more is no error. */
export interface Outlet {
  readonly write: (text: string) => void;
  /** False once it is known that nobody reads it any more. */
  readonly isRead: () => boolean;
  readonly isTerminal: () => boolean;
  /** Width of the terminal in characters; null: unknown, or no terminal. */
  readonly columns: () => number | null;
}

export type Read = { readonly kind: 'bytes'; readonly bytes: Uint8Array } | TooLarge | Unreadable;

/** `bytes`: how many there are; null: nobody knows, as reading was given up. */
export interface TooLarge {
  readonly kind: 'too-large';
  readonly bytes: number | null;
}

export interface Unreadable {
  readonly kind: 'unreadable';
  readonly reason: string;
}

/** `link`: a symbolic link to a folder, or to nothing; one to a file counts as that file. */
export interface Entry {
  readonly name: string;
  readonly kind: 'file' | 'folder' | 'link' | 'other';
}

export type Listing = { readonly kind: 'entries'; readonly entries: readonly Entry[] } | Unreadable;

export interface NewFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export type Written =
  | { readonly kind: 'written' }
  | { readonly kind: 'unwritable'; readonly path: string; readonly reason: string };
