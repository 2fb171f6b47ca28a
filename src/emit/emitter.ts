/*
 * emit/: from facts and drawings to the bytes of a file.
 * In: one compiled recipe. Out: text or bytes, the same for the same input.
 * Refuses to know: the disk, the clock, and any decision about the envelope: it only converts.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Facts } from '../folding/facts.js';
import type { Folding } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import type { Kind } from './kinds.js';

/** What an emitter works from: one envelope with its folding, its numbers and its findings. */
export interface Job {
  readonly envelope: Envelope;
  readonly folding: Folding;
  readonly facts: Facts;
  readonly diagnostics: readonly Diagnostic[];
}

export type PageName = 'letter' | 'a4' | 'a3' | 'tabloid' | 'legal' | 'fit';

export interface EmitOptions {
  /** The paper of the printer; null: letter where the recipe's units are inches, else a4. */
  readonly page: PageName | null;
  /** Margin that the printer cannot reach, in mm. */
  readonly margin: number;
  /** Stamped into the file as its creation date: SOURCE_DATE_EPOCH, or a fixed day. */
  readonly date: Date;
  /** TrueType files to embed, read by the host. */
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array };
}

/** A file as written: its name is the envelope's, with this ending. */
export interface Output {
  readonly extension: string;
  readonly bytes: Uint8Array;
}

/** A kind of file that `build` writes. */
export interface Emitter extends Kind {
  readonly mediaType: string;
  /** One file or more; none where the envelope has nothing of the kind. */
  readonly emit: (job: Job, options: EmitOptions) => Promise<readonly Output[]>;
}
