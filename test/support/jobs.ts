import type { Job } from '../../src/emit/emitter.js';
import { fold } from '../../src/folding/fold.js';
import { measure } from '../../src/folding/measure.js';
import type { Envelope } from '../../src/recipe/recipe.js';
import { envelope, type Wishes } from './envelopes.js';

/** What a sheet shows besides the folding. */
export interface Words {
  readonly name?: string;
  readonly units?: Envelope['units'];
  readonly title?: string;
  readonly note?: readonly string[];
  readonly contents?: number;
}

/** One envelope, folded and measured, without a recipe's text and without findings. */
export function job(wishes: Wishes, { name, units, title, note, contents }: Words = {}): Job {
  const made = envelope(wishes);
  const worded: Envelope = {
    ...made,
    name: name ?? made.name,
    units: units ?? made.units,
    title: { ...made.title, value: title ?? made.title.value },
    note: { ...made.note, value: note ?? [] },
    contents: { ...made.contents, value: contents ?? null },
  };
  return jobOf(worded);
}

/** An envelope folded and measured, without findings. */
export function jobOf(envelope: Envelope): Job {
  const folding = fold(envelope);
  return { envelope, folding, facts: measure(envelope, folding), diagnostics: [] };
}

const INCH = 25.4;

/** The half-letter card by the trade's figures: blank 11 1/4 in, side marks 5 1/16, seal and bottom marks 7 3/16. */
export const halfLetter = (words: Words = {}, wishes: Wishes = {}): Job =>
  job(
    {
      card: { width: 8.5 * INCH, height: 5.5 * INCH },
      face: { width: 8.75 * INCH, height: 5.75 * INCH },
      seam: 0.5 * INCH,
      step: INCH / 16,
      tolerance: INCH / 32,
      ...wishes,
    },
    { name: 'half-letter', units: 'in', title: 'Half-letter card', ...words },
  );
