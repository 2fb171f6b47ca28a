import type { Size } from '../../recipe/recipe.js';
import { fillSheet, type Manner, repeats, STRIP_MANNERS, waysToLay } from './fill-sheet.js';
import { type Cutting, cutsOf, type Layout, piecesOf, type Wanted } from './layout.js';
import { mostOfOne } from './most-of-one.js';

/** Layouts tried for one sheet, times the sizes wanted, at most: the more sizes, the fewer manners. */
const MOST_TRIALS = 15_000;

/** How much a large piece counts above its area while sheets are filled: what is hard to place is placed first. */
const BIASES = [1, 1.15, 1.5] as const;

/**
 * Lays pieces out on equal sheets by edge-to-edge cuts: as few sheets as it finds, then as few different layouts, then as few
 * cuts. Every piece must fit on a sheet. Never takes more sheets than each size by itself in plain rows. The same input gives
 * the same layouts; the work grows with the number of sizes and of layouts, not with the counts.
 */
export function layOut(wanted: readonly Wanted[], sheet: Size): readonly Cutting[] {
  const pool = wanted.map((piece, of) => mostOfOne(piece, of, sheet));
  const plans = [
    sizeBySize(
      wanted,
      sheet,
      pool.map(({ layout }) => layout),
    ),
    ...BIASES.map((bias) =>
      sheetBySheet(
        wanted,
        sheet,
        pool.map(({ layout }) => layout),
        bias,
      ),
    ),
  ];
  return plans.reduce((best, plan) => (isBetter(plan, best) ? plan : best));
}

const sheetsOf = (plan: readonly Cutting[]): number => plan.reduce((sum, { sheets }) => sum + sheets, 0);

const allCuts = (plan: readonly Cutting[]): number =>
  plan.reduce((sum, { sheets, layout }) => sum + sheets * cutsOf(layout), 0);

function isBetter(plan: readonly Cutting[], best: readonly Cutting[]): boolean {
  const order = sheetsOf(plan) - sheetsOf(best) || plan.length - best.length || allCuts(plan) - allCuts(best);
  return order < 0;
}

/** Whole sheets of one size each, and what is then wanting of all sizes sheet by sheet. */
function sizeBySize(wanted: readonly Wanted[], sheet: Size, ofOne: readonly Layout[]): readonly Cutting[] {
  const left = wanted.map(({ count }) => count);
  const whole = ofOne.flatMap((layout, of): Cutting[] => {
    const each = piecesOf(layout, wanted.length)[of] ?? 0;
    const sheets = Math.floor((left[of] ?? 0) / each);
    left[of] = (left[of] ?? 0) - sheets * each;
    return sheets > 0 ? [{ sheets, layout }] : [];
  });
  return [...whole, ...fillUp(wanted, left, sheet, ofOne, 1)];
}

const sheetBySheet = (wanted: readonly Wanted[], sheet: Size, ofOne: readonly Layout[], bias: number) =>
  fillUp(
    wanted,
    wanted.map(({ count }) => count),
    sheet,
    ofOne,
    bias,
  );

/** Fills the best sheet, takes as many of it as there are pieces for, and goes on with what is left. */
function fillUp(
  wanted: readonly Wanted[],
  left: number[],
  sheet: Size,
  ofOne: readonly Layout[],
  bias: number,
): readonly Cutting[] {
  const cuttings: Cutting[] = [];
  const worth = wanted.map(({ width, height }) => ((width * height) / (sheet.width * sheet.height)) ** bias);
  while (left.some((count) => count > 0)) {
    const layout = bestSheet(wanted, left, sheet, ofOne, worth);
    const taken = piecesOf(layout, wanted.length);
    const after = left.map((count, index) => count - (taken[index] ?? 0));
    const sheets = 1 + repeats(left, after);
    left = left.map((count, index) => count - sheets * (taken[index] ?? 0));
    cuttings.push({ sheets, layout });
  }
  return cuttings;
}

/** The sheet with the greatest worth of pieces still wanted; of those, the one of fewest cuts. */
function bestSheet(
  wanted: readonly Wanted[],
  left: readonly number[],
  sheet: Size,
  ofOne: readonly Layout[],
  worth: readonly number[],
): Layout {
  const value = (layout: Layout): number =>
    piecesOf(layout, wanted.length).reduce((sum, count, index) => sum + count * (worth[index] ?? 0), 0);
  const isThere = (layout: Layout): boolean =>
    piecesOf(layout, wanted.length).every((count, index) => count <= (left[index] ?? 0));
  const tried = [
    ...ofOne.filter(isThere),
    ...mannersFor(wanted, left, sheet).map((manner) => fillSheet(wanted, [...left], sheet, manner)),
  ].map((layout) => ({ layout, value: value(layout), cuts: cutsOf(layout) }));
  return tried.reduce((best, other) =>
    other.value > best.value + 1e-9 || (other.value > best.value - 1e-9 && other.cuts < best.cuts)
      ? other
      : best,
  ).layout;
}

/** Orders in which pieces are thought of, by what comes first. */
const ORDERS: readonly ((piece: Size) => number)[] = [
  ({ width, height }) => width * height,
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => Math.min(width, height),
];

function mannersFor(wanted: readonly Wanted[], left: readonly number[], sheet: Size): readonly Manner[] {
  const wanting = wanted.flatMap((piece, of) => ((left[of] ?? 0) > 0 ? [{ piece, of }] : []));
  const starts = wanting.flatMap(({ piece, of }) => waysToLay(piece, of, sheet));
  const orders = distinct(
    ORDERS.map((key) =>
      [...wanting].sort((a, b) => key(b.piece) - key(a.piece) || a.of - b.of).map(({ of }) => of),
    ),
  );
  const manners = [null, ...starts].flatMap((start) =>
    orders.flatMap((order) => STRIP_MANNERS.map((strips): Manner => ({ order, strips, start }))),
  );
  return manners.slice(0, Math.ceil(MOST_TRIALS / wanting.length));
}

const distinct = (orders: readonly (readonly number[])[]): readonly (readonly number[])[] => [
  ...new Map(orders.map((order) => [order.join(), order])).values(),
];
