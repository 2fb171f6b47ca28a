import type { Size } from '../../recipe/recipe.js';
import { NOISE, turnedIf, type Wanted } from './layout.js';

/** Parts into which a sheet's side is thought to be shared out at most. */
const MOST_SHARES = 12;

/** Below what number of sheets no layout gets. */
export interface LowerBound {
  /** By area alone. */
  readonly area: number;
  /** By area and by which pieces can lie side by side at all; never less than `area`. */
  readonly sheets: number;
}

/**
 * A bound by dual feasible functions: each maps a share of a side in 0 … 1 so that shares which fit side by side still add up to at
 * most 1. With one such function for each side, a sheet holds pieces worth at most 1; a piece counts as it is worth least,
 * upright or turned. Every piece must fit on the sheet.
 * Source: S. P. Fekete, J. Schepers, "A general framework for bounds for higher-dimensional orthogonal packing problems",
 * Math. Methods of Operations Research 60 (2004): the functions u(k) and U(ε), and that their products bound.
 */
export function lowerBound(wanted: readonly Wanted[], sheet: Size): LowerBound {
  const area = sheetsFor(
    wanted.reduce((sum, { width, height, count }) => sum + width * height * count, 0) /
      (sheet.width * sheet.height),
  );
  const [across, up] = [worths(wanted, sheet.width), worths(wanted, sheet.height)];
  let sheets = area;
  for (const worthAcross of across)
    for (const worthUp of up) {
      const total = wanted.reduce(
        (sum, piece) => sum + piece.count * leastWorth(piece, sheet, worthAcross, worthUp),
        0,
      );
      sheets = Math.max(sheets, sheetsFor(total));
    }
  return { area, sheets };
}

/** What a length is worth of a side. */
type Worth = (length: number) => number;

const leastWorth = (piece: Size, sheet: Size, across: Worth, up: Worth): number =>
  [false, true]
    .map((turned) => turnedIf(piece, turned))
    .filter(({ width, height }) => width <= sheet.width + NOISE && height <= sheet.height + NOISE)
    .reduce((least, { width, height }) => Math.min(least, across(width) * up(height)), 1);

const sheetsFor = (worth: number): number => Math.ceil(worth - 1e-9);

function worths(wanted: readonly Size[], side: number): readonly Worth[] {
  const lengths = new Set(wanted.flatMap(({ width, height }) => [width, height]));
  return [
    (length) => Math.min(1, length / side),
    ...Array.from({ length: MOST_SHARES }, (_, index) => byShares(index + 1, side)),
    ...[...lengths].filter((length) => length <= side / 2).map((least) => withoutSmall(least, side)),
  ];
}

/** u(k): a length worth more than 1/(k+1) of the side counts as 1/k of it, and so on. */
const byShares =
  (k: number, side: number): Worth =>
  (length) => {
    const shares = (length * (k + 1)) / side;
    const whole = Math.round(shares);
    return Math.abs(length - (whole * side) / (k + 1)) <= 2 * NOISE
      ? whole / (k + 1)
      : Math.floor(shares) / k;
  };

/** U(ε): lengths below ε count nothing, and those that leave less than ε beside them the whole side. */
const withoutSmall =
  (least: number, side: number): Worth =>
  (length) => {
    if (length < least - NOISE) return 0;
    return length > side - least + NOISE ? 1 : Math.min(1, length / side);
  };
