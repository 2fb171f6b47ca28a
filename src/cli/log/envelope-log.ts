import { diff } from '../../diff/diff.js';
import type { EnvelopeChange } from '../../diff/difference.js';
import type { RecipeFile } from './recipe-file.js';

/** A state of a file that the history of an envelope leads through. */
export interface Point {
  readonly id: string;
  /** The states before it. */
  readonly parents: readonly string[];
}

/** What became of an envelope at a point. */
export interface Happening<P extends Point> {
  readonly point: P;
  readonly change: EnvelopeChange | Hidden;
  /** Whether nothing that came before is known. */
  readonly isFirst: boolean;
}

/** That it cannot be told what became of it. */
export interface Hidden {
  readonly kind: 'hidden';
  /** The name it goes by there. */
  readonly name: string;
  readonly reason: string;
}

/**
 * What became of an envelope, the newest first: of points in order, a child before its parents, those at which it is not as in
 * any parent. Told is the change from the first of them. What cannot be read is told once, and then passed over: what follows it
 * is compared with what came before it. Each point is read once.
 */
export async function* envelopeLog<P extends Point>(
  points: readonly P[],
  name: string,
  read: (point: P) => Promise<RecipeFile>,
): AsyncGenerator<Happening<P>> {
  const held: Happening<P>[] = [];
  for await (const happening of happenings(points, name, read)) {
    const { kind } = happening.change;
    // Whether it was stated for the first time is known when something older is told.
    if (kind !== 'hidden') yield* held.splice(0);
    if (kind === 'added' || held.length > 0) held.push(happening);
    else yield happening;
  }
  yield* held.map((happening) => ({ ...happening, isFirst: happening.change.kind === 'added' }));
}

async function* happenings<P extends Point>(
  points: readonly P[],
  name: string,
  read: (point: P) => Promise<RecipeFile>,
): AsyncGenerator<Happening<P>> {
  const byId = new Map(points.map((point) => [point.id, point]));
  const files = new Map<string, RecipeFile>();
  const names = new Map<string, string>();

  const fileAt = async (id: string): Promise<RecipeFile | null> => {
    const point = byId.get(id);
    if (point === undefined) return null;
    const file = files.get(id) ?? (await read(point));
    files.set(id, file);
    return file;
  };
  /** A point, or the nearest before it where the envelope can be read, or surely is not. */
  const readable = async (id: string, called: string): Promise<string> => {
    const file = await fileAt(id);
    const [parent = NOWHERE] = byId.get(id)?.parents ?? [];
    return file?.find(called).kind === 'unreadable' ? readable(parent, called) : id;
  };

  for (const point of points) {
    const called = names.get(point.id) ?? name;
    const now = (await fileAt(point.id)) as RecipeFile;
    const isHidden = now.find(called).kind === 'unreadable';
    const changes: (EnvelopeChange | Hidden | null)[] = [];
    for (const parent of point.parents.length > 0 ? point.parents : [NOWHERE]) {
      const base = isHidden ? parent : await readable(parent, called);
      const change = changeOf(await fileAt(base), now, called);
      changes.push(change);
      for (const id of [parent, base]) if (!names.has(id)) names.set(id, formerName(change, called));
    }
    files.delete(point.id);
    const [change = null] = changes;
    if (change !== null && !changes.includes(null)) yield { point, change, isFirst: false };
  }
}

/** Before everything. */
const NOWHERE = '';

/** What became of an envelope between two states of its file (null: there is none before). Null: nothing. */
function changeOf(
  before: RecipeFile | null,
  after: RecipeFile,
  name: string,
): EnvelopeChange | Hidden | null {
  if (before === after) return null;
  const [was, is] = [before?.find(name), after.find(name)];
  if (is.kind === 'unreadable') {
    const isTold = was?.kind === 'unreadable' && was.reason === is.reason;
    return isTold ? null : { kind: 'hidden', name, reason: is.reason };
  }
  if (is.kind === 'not stated' && was?.kind !== 'stated') return null;
  const both = is.kind === 'stated' && was?.kind === 'stated';
  const [older, newer] = both ? [[was.recipe], [is.recipe]] : [before?.all() ?? [], after.all()];
  const { changes } = diff({ recipes: older, diagnostics: [] }, { recipes: newer, diagnostics: [] });
  return changes.find((change) => change.name === name || formerName(change, '') === name) ?? null;
}

/** The name of an envelope before it was renamed; else the one that it is `called`. */
const formerName = (change: EnvelopeChange | Hidden | null, called: string): string =>
  change?.kind === 'renamed' ? change.before.envelope.name : called;
