import type { Size } from '../../recipe/recipe.js';
import { divide } from './division.js';
import { type Division, type Layout, NOISE, timesIn, turnedIf, withSide } from './layout.js';

/** More places for a cut than these along a side, and the plain rows are taken instead. */
const MOST_PLACES = 160;

interface Yield {
  readonly count: number;
  readonly layout: Layout;
}

/**
 * The most pieces of one size (the wanted one with index `of`) that edge-to-edge cuts take from a sheet: exact, by trying
 * every cut at a sum of piece sides (no other cut yields more), or plain rows where those are too many.
 */
export function mostOfOne(piece: Size, of: number, sheet: Size): Yield {
  const rows = rowsOf(piece, of, sheet);
  const places = { width: placesIn(sheet.width, piece), height: placesIn(sheet.height, piece) };
  const isSquare = Math.abs(piece.width - piece.height) <= NOISE;
  if (isSquare || places.width.length > MOST_PLACES || places.height.length > MOST_PLACES) return rows;
  return byCuts(piece, of, sheet, places);
}

/** Plain rows, whichever way round yields more. */
export const rowsOf = (piece: Size, of: number, sheet: Size): Yield =>
  best([false, true].map((turned) => inRows(piece, of, turned, sheet)));

function inRows(piece: Size, of: number, turned: boolean, sheet: Size): Yield {
  const { width, height } = turnedIf(piece, turned);
  const [along, up] = [timesIn(sheet.width, width), timesIn(sheet.height, height)];
  if (along === 0 || up === 0) return { count: 0, layout: { kind: 'rest' } };
  const strip = divide(
    withSide(sheet, 'height', height),
    { divides: 'width', at: width, times: along },
    { kind: 'piece', of, turned },
  );
  return { count: along * up, layout: divide(sheet, { divides: 'height', at: height, times: up }, strip) };
}

type Places = Readonly<Record<Division['divides'], readonly number[]>>;

/**
 * Every size that a part can have is a place along each side, so what is known of it stands in a table of places: the
 * count, and the cut that comes to it. The layout is then built for the sizes as they are.
 */
function byCuts(piece: Size, of: number, sheet: Size, places: Places): Yield {
  const known = new Map<number, Choice>();
  const choose = (size: Size): Choice => {
    const key =
      indexBelow(places.width, size.width) * (MOST_PLACES + 1) + indexBelow(places.height, size.height);
    const earlier = known.get(key);
    if (earlier) return earlier;
    const cuts = (['width', 'height'] as const).flatMap((divides) =>
      places[divides]
        .filter((at) => at > NOISE && at <= size[divides] / 2 + NOISE)
        .map((at): Choice => {
          const [first, second] = [withSide(size, divides, at), withSide(size, divides, size[divides] - at)];
          return { count: choose(first).count + choose(second).count, cut: { divides, at } };
        }),
    );
    const rows = rowsOf(piece, of, size);
    const found = best<Choice>([{ count: rows.count, cut: null }, ...cuts]);
    known.set(key, found);
    return found;
  };
  const build = (size: Size): Layout => {
    const { cut } = choose(size);
    if (cut === null) return rowsOf(piece, of, size).layout;
    return divide(size, { ...cut, times: 1 }, build(withSide(size, cut.divides, cut.at)), build);
  };
  return { count: choose(sheet).count, layout: build(sheet) };
}

interface Choice {
  readonly count: number;
  /** Null: plain rows. */
  readonly cut: { readonly divides: Division['divides']; readonly at: number } | null;
}

/** The first of those that yield the most. */
const best = <T extends { readonly count: number }>(yields: readonly T[]): T =>
  yields.reduce((most, other) => (other.count > most.count ? other : most));

/** Every sum of piece sides that a length holds, 0 among them, in order. */
function placesIn(length: number, { width, height }: Size): readonly number[] {
  const sums: number[] = [];
  for (let a = 0; a <= timesIn(length, width); a++)
    for (let b = 0; b <= timesIn(length - a * width, height) && sums.length <= 4 * MOST_PLACES; b++)
      sums.push(a * width + b * height);
  sums.sort((a, b) => a - b);
  return sums.filter((sum, index) => index === 0 || sum - (sums[index - 1] ?? 0) > NOISE);
}

/** The index of the last place that a length reaches. */
function indexBelow(places: readonly number[], length: number): number {
  let [low, high] = [0, places.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((places[middle] ?? 0) <= length + NOISE) low = middle;
    else high = middle - 1;
  }
  return low;
}
