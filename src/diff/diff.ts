import { byText } from '../text/by-text.js';
import { batchChanges } from './batches.js';
import { consequences } from './consequence.js';
import type { Changed, Difference, EnvelopeChange, Recipe, Side } from './difference.js';
import { figures } from './figures.js';
import { appeared } from './findings.js';
import { renamed } from './renamed.js';
import { sharedEdits } from './shared.js';
import { unreadableIn } from './unreadable.js';
import { written } from './written.js';

/**
 * What differs between two sides, envelope by envelope, and what follows on paper. A file that both sides have goes by one
 * name in both, so that it is known where one of them cannot be read.
 */
export function diff(before: Side, after: Side): Difference {
  const [older, newer] = [named(before), named(after)];
  const altered = [...newer].flatMap(([name, recipe]) => changeOf(older.get(name), recipe) ?? []);
  const gone = lacking(newer, older, after);
  const come = lacking(older, newer, before);
  const pairs = renamed(gone.surely, come.surely);
  const paired = new Set(pairs.flat());
  const changes: readonly EnvelopeChange[] = [
    ...altered,
    ...pairs.map(renaming),
    ...gone.surely.filter((recipe) => !paired.has(recipe)).map((recipe) => removed(recipe)),
    ...come.surely.filter((recipe) => !paired.has(recipe)).map((recipe) => added(recipe)),
    ...gone.perhaps.map((recipe) => unreadable(recipe, 'after')),
    ...come.perhaps.map((recipe) => unreadable(recipe, 'before')),
  ];
  const batches = batchChanges(before, after);
  return {
    changes: [...changes].sort((a, b) => byText(a.name, b.name)),
    shared: sharedEdits(altered),
    ...(batches.length > 0 ? { batches } : {}),
  };
}

/** The recipes of a side by name, in order. */
const named = ({ recipes }: Side): ReadonlyMap<string, Recipe> =>
  new Map(
    recipes
      .map((recipe) => [recipe.envelope.name, recipe] as const)
      .sort(([one], [other]) => byText(one, other)),
  );

/** The recipes that a side lacks, surely or perhaps only because it cannot be read. */
function lacking(has: ReadonlyMap<string, Recipe>, others: ReadonlyMap<string, Recipe>, side: Side) {
  const missing = [...others.values()].filter(({ envelope }) => !has.has(envelope.name));
  if (missing.length === 0) return { surely: [], perhaps: [] };
  const hidden = unreadableIn(side);
  return {
    surely: missing.filter(({ envelope }) => !hidden(envelope)),
    perhaps: missing.filter(({ envelope }) => hidden(envelope)),
  };
}

const removed = (before: Recipe): EnvelopeChange => ({ kind: 'removed', name: before.envelope.name, before });

const added = (after: Recipe): EnvelopeChange => ({ kind: 'added', name: after.envelope.name, after });

const unreadable = ({ envelope }: Recipe, side: 'before' | 'after'): EnvelopeChange => ({
  kind: 'unreadable',
  name: envelope.name,
  side,
});

/** What became of an envelope; null where nothing did. */
function changeOf(before: Recipe | undefined, after: Recipe): Changed | null {
  if (before === undefined || before.envelope === after.envelope) return null;
  const parts = differing(before, after);
  if (Object.values(parts).every(({ length }) => length === 0)) return null;
  return changed('changed', before, after, parts);
}

const renaming = ([before, after]: readonly [before: Recipe, after: Recipe]): Changed =>
  changed('renamed', before, after, differing(before, after));

const changed = (
  kind: Changed['kind'],
  before: Recipe,
  after: Recipe,
  parts: ReturnType<typeof differing>,
): Changed => ({
  kind,
  name: after.envelope.name,
  before,
  after,
  ...parts,
  consequences: consequences(before, after),
});

/** All but what follows, which follows from these. */
const differing = (before: Recipe, after: Recipe) => ({
  written: written(before.envelope, after.envelope),
  figures: figures(before.facts, after.facts),
  appeared: appeared(before.diagnostics, after.diagnostics),
  went: appeared(after.diagnostics, before.diagnostics),
});
