import {
  type CheckedRecipe,
  type Compilation,
  checkEnvelope,
  compilationOf,
  type Known,
} from '../compile.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Host } from '../host/host.js';
import { type PlacedFile, reader } from '../host/reader.js';
import type { Input } from '../recipe/reader.js';
import { resolve } from '../recipe/resolve.js';
import { MOST_STATEMENTS } from '../recipe/uses.js';

/** What every thread is given: plain data, and a counter that all share. */
interface CheckTask {
  readonly files: readonly PlacedFile[];
  /** Of how many files each turn is. */
  readonly turn: number;
  /** How many turns are taken: one number, in memory that all threads see. */
  readonly taken: Int32Array;
}

/** What the files of one turn come to, by themselves. */
interface Told {
  /** The number of the first of them. */
  readonly from: number;
  readonly recipes: readonly (CheckedRecipe & { readonly key: string })[];
  readonly statements: number;
  /** Whether there is nothing about them that other files might change: no finding of language, no batch. */
  readonly isClear: boolean;
}

/** How many turns there are for each thread, so that none waits long for another. */
const TURNS = 16;

/**
 * Checks the envelopes of many files on this thread and at most `most` others (none, perhaps), some files at a time. Only where these
 * are not clear by themselves, this thread finds out what all of them mean together: it comes to the same as on one thread.
 */
export async function checkTogether(
  files: readonly PlacedFile[],
  most: number,
  host: Host,
): Promise<Compilation<CheckedRecipe>> {
  const turn = Math.ceil(files.length / ((most + 1) * TURNS));
  const task: CheckTask = { files, turn, taken: new Int32Array(new SharedArrayBuffer(4)) };
  const others = host.beside(task, most);
  const told: Told[] = [];
  checkTurns(task, host, (each) => told.push(each));
  told.push(...((await others) as Told[]));
  told.sort((a, b) => a.from - b.from);

  const inputs = inputsOf(files);
  const recipes = told.flatMap((each) => each.recipes);
  if (told.length === Math.ceil(files.length / turn) && areClear(told)) {
    return compilationOf(inputs, { diagnostics: [], batches: [], papers: [] }, recipes);
  }
  const known = new Map<string, readonly Diagnostic[]>(
    recipes.map(({ key, diagnostics }) => [key, diagnostics]),
  );
  const keyOf = keys(files);
  const resolved = resolve(inputs, reader(host, files));
  const checked = resolved.envelopes.map((envelope) => {
    const diagnostics = known.get(keyOf(envelope));
    return diagnostics ? { envelope, diagnostics } : checkEnvelope(envelope);
  });
  return compilationOf(inputs, resolved, checked);
}

/** Takes turns until none is left, and tells of each what it comes to: what every thread does. */
export function checkTurns({ files, turn, taken }: CheckTask, host: Host, tell: (told: Told) => void): void {
  const read = reader(host, files);
  const keyOf = keys(files);
  for (;;) {
    const from = Atomics.add(taken, 0, 1) * turn;
    if (from >= files.length) return;
    const { envelopes, diagnostics, batches, statements } = resolve(
      inputsOf(files.slice(from, from + turn)),
      read,
    );
    const recipes = envelopes.map((envelope) => {
      const { name, tags, span } = envelope;
      return {
        envelope: { name, tags, span },
        key: keyOf(envelope),
        diagnostics: checkEnvelope(envelope).diagnostics,
      };
    });
    tell({ from, recipes, statements, isClear: diagnostics.length + batches.length === 0 });
  }
}

/** Whether all files together come to what they come to by themselves: no two envelopes are named alike, and the files are not too many. */
function areClear(told: readonly Told[]): boolean {
  const names = told.flatMap(({ recipes }) => recipes.map(({ envelope }) => envelope.name));
  const statements = told.reduce((sum, each) => sum + each.statements, 0);
  return (
    told.every(({ isClear }) => isClear) &&
    new Set(names).size === names.length &&
    statements <= MOST_STATEMENTS
  );
}

const inputsOf = (files: readonly PlacedFile[]): readonly Input[] => files.map(({ input }) => input);

/** What an envelope is known by in every thread: the number of its file, and the offset of its name. */
function keys(files: readonly PlacedFile[]): (envelope: Known) => string {
  const numbers = new Map(files.map(({ input }, number) => [input.source, number]));
  return ({ span: { source, start } }) => `${numbers.get(source)} ${start}`;
}
