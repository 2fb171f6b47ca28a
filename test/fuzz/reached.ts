/** The counters that were put into the branches of the program, and the room that each lies in. */
export interface Counters {
  readonly rooms: readonly string[];
  readonly counts: Uint32Array;
}

/** What of the program has run so far. */
export interface Reached {
  /** Takes in what ran since the last time; says whether a branch ran that never had, or never as often. */
  readonly see: () => boolean;
  /** Of each room: how many of its branches have run, and how many there are. */
  readonly rooms: () => ReadonlyMap<string, Share>;
}

export interface Share {
  readonly run: number;
  readonly all: number;
}

/** How often something ran, in classes, a bit each: once, a few times, more, many, very many. */
const CLASSES = [1, 2, 4, 16, 128];

/** Begins with nothing reached. With fewer classes, less is new. */
export function nothingReached({ rooms: roomOf, counts }: Counters, classes = CLASSES): Reached {
  const bitOf = (count: number): number => 1 << classes.findLastIndex((least) => count >= least);
  const seen = new Uint8Array(counts.length);

  const see: Reached['see'] = () => {
    let isNew = false;
    counts.forEach((count, branch) => {
      if (count === 0) return;
      const before = seen[branch] ?? 0;
      seen[branch] = before | bitOf(count);
      isNew ||= seen[branch] !== before;
    });
    counts.fill(0);
    return isNew;
  };

  const rooms: Reached['rooms'] = () => {
    const shares = new Map<string, Share>();
    for (const [branch, room] of roomOf.entries()) {
      const { run, all } = shares.get(room) ?? { run: 0, all: 0 };
      shares.set(room, { run: run + (seen[branch] === 0 ? 0 : 1), all: all + 1 });
    }
    return shares;
  };

  counts.fill(0);
  return { see, rooms };
}
