import type { Profiler } from 'node:inspector';

/** What of the program has run so far, counted in characters of its text. */
export interface Reached {
  /** Takes in what ran since the last time; says whether anything ran that never had, or never as often. */
  readonly see: (functions: readonly Profiler.FunctionCoverage[]) => boolean;
  /** Of each room: how much of its text has run, and how much there is. */
  readonly rooms: () => ReadonlyMap<string, Share>;
}

export interface Share {
  readonly run: number;
  readonly all: number;
}

/** A file of the program within the bundle. */
interface Part {
  readonly room: string;
  readonly start: number;
  readonly end: number;
}

/** How often something ran, in classes, a bit each: once, a few times, more, many, very many. */
const CLASSES = [1, 2, 4, 16, 128];
const bitOf = (count: number): number => 1 << CLASSES.findLastIndex((least) => count >= least);

/** Begins with nothing reached of a bundle, of which only the program's own rooms count. */
export function nothingReached(bundle: string): Reached {
  const parts = partsOf(bundle);
  const seen = new Uint8Array(bundle.length);
  const now = new Uint8Array(bundle.length);

  const see: Reached['see'] = (functions) => {
    now.fill(0);
    // Outer functions come before those inside them, and outer ranges before inner ones: the last to paint is right.
    for (const { ranges } of functions)
      for (const { startOffset, endOffset, count } of ranges)
        now.fill(count === 0 ? 0 : bitOf(count), startOffset, endOffset);
    let isNew = false;
    for (const { start, end } of parts)
      for (let at = start; at < end; at++) {
        const before = seen[at] ?? 0;
        const after = before | (now[at] ?? 0);
        if (after === before) continue;
        seen[at] = after;
        isNew = true;
      }
    return isNew;
  };

  const rooms: Reached['rooms'] = () => {
    const shares = new Map<string, Share>();
    for (const { room, start, end } of parts) {
      const { run, all } = shares.get(room) ?? { run: 0, all: 0 };
      const ran = seen.subarray(start, end).reduce((sum, bits) => sum + (bits === 0 ? 0 : 1), 0);
      shares.set(room, { run: run + ran, all: all + end - start });
    }
    return shares;
  };

  return { see, rooms };
}

/** The bundler writes each file's path above what it holds. */
function partsOf(bundle: string): readonly Part[] {
  const heads = [...bundle.matchAll(/^\/\/ ([\w@./-]+)$/gm)];
  return heads.flatMap(({ 1: path = '', index }, place) => {
    const room = /^(?:src\/\w+(?=\/)|grammar(?=\/))/.exec(path)?.[0];
    return room === undefined ? [] : [{ room, start: index, end: heads[place + 1]?.index ?? bundle.length }];
  });
}
