/**
 * The candidates that a slip of the hand could have turned into `word`, nearest first, at most three.
 * A slip is a letter more, a letter less, another letter, or two letters swapped; case is ignored. A candidate that
 * begins with the word, or is its beginning, counts as near too (`side` for `sides` and `side-mark`).
 */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  const wanted = word.toLowerCase();
  const near: { candidate: string; distance: number }[] = [];
  for (const candidate of new Set(candidates)) {
    const distance = slips(wanted, candidate.toLowerCase());
    if (distance !== null) near.push({ candidate, distance });
  }
  near.sort((a, b) => a.distance - b.distance || (a.candidate < b.candidate ? -1 : 1));
  return near.slice(0, 3).map(({ candidate }) => candidate);
}

/** How many slips lie between two words, or null if they are too far apart. */
function slips(wanted: string, offered: string): number | null {
  const [short, long] = wanted.length < offered.length ? [wanted, offered] : [offered, wanted];
  const allowed = Math.max(1, Math.floor(long.length / 3));
  const begins = short.length >= 3 && long.startsWith(short);
  if (long.length - short.length > allowed) return begins ? allowed : null;
  const distance = editDistance(wanted, offered);
  if (distance <= allowed) return distance;
  return begins ? allowed : null;
}

/** Least number of insertions, deletions, substitutions and swaps of neighbours (optimal string alignment). */
function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      let least = Math.min(
        at(current, column - 1) + 1,
        at(last, column) + 1,
        at(last, column - 1) + (same ? 0 : 1),
      );
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (swapped) least = Math.min(least, at(beforeLast, column - 2) + 1);
      current.push(least);
    }
    beforeLast = last;
    last = current;
  }
  return at(last, to.length);
}

const at = (row: readonly number[], column: number): number => row[column] ?? Number.POSITIVE_INFINITY;
