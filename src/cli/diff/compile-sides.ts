import { ownedFindings } from '../../compile.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import type { Host } from '../../host/host.js';
import type { Arguments } from '../arguments.js';
import { complain } from '../command.js';
import { sayFindings } from '../say-findings.js';
import type { Side } from './side.js';
import type { Sides } from './sides.js';
import { lookAgain, type Watched } from '../watched.js';

/** What the files of a side came to, and their texts. */
export interface CompiledSide extends Watched {
  readonly texts: readonly string[];
}

/** Two sides as they compiled. */
export interface CompiledSides {
  readonly before: CompiledSide;
  readonly after: CompiledSide;
  /** Whether all of both was read: no file failed, and no mistake of writing hides an envelope. */
  readonly whole: boolean;
}

/**
 * Compiles both sides, and says what of them cannot be read. Null where that is not the same on both: what such a file holds
 * would seem to be new, or gone.
 */
export async function compileSides(
  [before, after]: Sides,
  given: Arguments,
  host: Host,
): Promise<CompiledSides | null> {
  const older = await compileSide(before);
  const newer = await compileSide(after, older);
  await sayHidden(before, older, given, host);
  await sayHidden(after, newer, given, host);
  if (older.troubles.join('\n') !== newer.troubles.join('\n')) return null;
  return { before: older, after: newer, whole: isWhole(older) && isWhole(newer) };
}

/**
 * Compiles the files of a side. A recipe that is written as on another side, which was compiled before, and uses nothing that
 * is not, is that side's: the same object. What is found of batches keeps nothing from being compared, and is left out.
 */
export async function compileSide(
  { host, paths }: Side,
  other: CompiledSide | null = null,
): Promise<CompiledSide> {
  const side = paths.length === 0 ? NOTHING : await lookAgain(host, paths, () => false, other);
  const ofBatches = new Set(side.batches.flatMap(({ diagnostics }) => diagnostics));
  const diagnostics = side.diagnostics.filter((finding) => !ofBatches.has(finding));
  return { ...side, diagnostics, texts: [...side.files.values()].flatMap(({ text }) => text ?? []) };
}

const NOTHING: Watched = {
  recipes: [],
  batches: [],
  papers: [],
  diagnostics: [],
  files: new Map(),
  again: new Set(),
  troubles: [],
};

/** Says what keeps envelopes of a side from being known. */
export async function sayHidden({ label }: Side, side: Watched, given: Arguments, host: Host): Promise<void> {
  const where = label === null ? '' : `${label}: `;
  for (const trouble of side.troubles) complain(host, where + trouble);
  const mistakes = mistakesIn(side);
  if (mistakes.length === 0) return;
  complain(host, `${where}these mistakes keep recipes from being compared`);
  await sayFindings(mistakes, given, host);
}

/** Errors that belong to none of the envelopes that compiled. */
function mistakesIn(side: Watched): readonly Diagnostic[] {
  const owned = ownedFindings(side);
  return side.diagnostics.filter((found) => found.severity === 'error' && !owned.has(found));
}

const isWhole = (side: Watched): boolean => side.troubles.length === 0 && mistakesIn(side).length === 0;
