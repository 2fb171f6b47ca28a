import { copiesOf } from '../folding/copies.js';
import type { Batch } from '../recipe/batch.js';
import type { Paper, Size } from '../recipe/recipe.js';
import type { CompiledBatch, CompiledOrder } from './compiled-batch.js';
import { type Step, cuttingOrder } from './layout/cutting-order.js';
import { layOut } from './layout/lay-out.js';
import { cutsOf, type Layout, NOISE, piecesOf, type Wanted } from './layout/layout.js';
import { type LowerBound, lowerBound } from './layout/lower-bound.js';
import { rowsOf } from './layout/most-of-one.js';
import { placed } from './layout/placed.js';
import { type Part, partsOf } from './parts.js';

/** A size that is cut from a paper, and for which envelopes. */
export interface Piece extends Wanted {
  /** `half-letter`, or `half-letter, lining`; several where their sizes are the same. */
  readonly names: readonly string[];
}

/** What is left of a sheet and is worth keeping, in mm. */
export interface Offcut extends Size {
  /** On one sheet. */
  readonly count: number;
  /** Envelopes whose blank it would still serve. */
  readonly serves: readonly string[];
}

/** One way to cut up a sheet, and how often it is taken. */
export interface PlannedLayout {
  /** How many sheets are cut like this. */
  readonly sheets: number;
  readonly layout: Layout;
  /** Of one sheet, by the index of its piece. */
  readonly pieces: readonly number[];
  /** Cuts for one sheet. */
  readonly cuts: number;
  readonly steps: readonly Step[];
  /** Those worth keeping, the largest first. */
  readonly offcuts: readonly Offcut[];
}

/** What is taken of one paper. */
export interface PlannedPaper {
  readonly paper: Paper;
  readonly sheet: Size;
  readonly pieces: readonly Piece[];
  readonly layouts: readonly PlannedLayout[];
  readonly sheets: number;
  readonly bound: LowerBound;
  /** Sheets that plain rows of each size by itself would take. */
  readonly rows: number;
  /** Part of the paper that becomes pieces: 0 to 1. */
  readonly used: number;
  readonly cost: number | null;
  /** How many sheets are wanting; 0 where there are enough, null where nobody says how many there are. */
  readonly short: number | null;
}

/** An envelope that a batch asks for, and how many of it are cut. */
export interface PlannedOrder {
  readonly order: CompiledOrder;
  /** With those for spoilage. */
  readonly cut: number;
}

/** All that a batch comes to. Lengths mm, masses g. */
export interface Plan {
  readonly batch: Batch;
  readonly orders: readonly PlannedOrder[];
  readonly papers: readonly PlannedPaper[];
  /** Tape or glue line by its width, for the envelopes asked for. */
  readonly tape: readonly { readonly width: number; readonly length: number }[];
  /** Null where a paper has no price. */
  readonly cost: number | null;
  /** Of the envelopes asked for, as made, without what goes in; null where a weight is not known. */
  readonly mass: number | null;
}

/** Another envelope of the folder that an offcut may serve. */
export interface Servable {
  readonly name: string;
  readonly blank: Size;
}

/** Shorter sides than this are no offcut to keep, in mm. */
const LEAST_KEPT = 50;

/** Works out a batch without errors. `others`: the envelopes that offcuts are held against. */
export function planBatch({ batch, orders }: CompiledBatch, others: readonly Servable[]): Plan {
  const planned = orders.map((order) => ({ order, cut: withSpoilage(order.count, batch.spoilage) }));
  const papers = [...byPaper(planned).values()].map(({ paper, pieces }) => planPaper(paper, pieces, others));
  return {
    batch,
    orders: planned,
    papers,
    tape: tapeOf(planned),
    cost: sumOf(papers.map(({ cost }) => cost)),
    mass: sumOf(planned.map(({ order: { facts, count } }) => facts.mass && facts.mass * count)),
  };
}

/** How many are cut so that so many come out; whole, and no more by noise. */
const withSpoilage = (count: number, spoilage: number): number => count + Math.ceil(count * spoilage - 1e-9);

/** A sum in which one unknown makes all unknown. */
const sumOf = (numbers: readonly (number | null)[]): number | null =>
  numbers.reduce(
    (sum, number) => (sum === null || number === null ? null : sum + number),
    0 as number | null,
  );

interface OfPaper {
  readonly paper: Paper;
  readonly pieces: Piece[];
}

/** What is cut from each paper, in the order in which papers are met; equal sizes are one piece. */
function byPaper(planned: readonly PlannedOrder[]): ReadonlyMap<string, OfPaper> {
  const papers = new Map<string, OfPaper>();
  for (const { order, cut } of planned)
    for (const part of partsOf(order)) {
      if (part.paper === null) continue;
      const { pieces } = papers.get(part.paper.name) ?? enter(papers, part.paper);
      const name = part.what === 'blank' ? order.envelope.name : `${order.envelope.name}, ${part.what}`;
      const index = pieces.findIndex((piece) => isSameSize(piece, part.size));
      const known = pieces[index];
      if (known)
        pieces[index] = { ...known, count: known.count + cut, names: [...new Set([...known.names, name])] };
      else pieces.push({ ...part.size, count: cut, names: [name] });
    }
  return papers;
}

function enter(papers: Map<string, OfPaper>, paper: Paper): OfPaper {
  const entered = { paper, pieces: [] };
  papers.set(paper.name, entered);
  return entered;
}

const isSameSize = (one: Size, { width, height }: Part['size']): boolean =>
  (same(one.width, width) && same(one.height, height)) ||
  (same(one.width, height) && same(one.height, width));

const same = (one: number, other: number): boolean => Math.abs(one - other) <= NOISE;

function planPaper(paper: Paper, pieces: readonly Piece[], others: readonly Servable[]): PlannedPaper {
  const sheet = paper.sheet?.value as Size;
  const layouts = layOut(pieces, sheet).map(
    ({ sheets, layout }): PlannedLayout => ({
      sheets,
      layout,
      pieces: piecesOf(layout, pieces.length),
      cuts: cutsOf(layout),
      steps: cuttingOrder(layout, sheet, pieces),
      offcuts: offcutsOf(layout, sheet, others),
    }),
  );
  const sheets = layouts.reduce((sum, layout) => sum + layout.sheets, 0);
  const area = pieces.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
  return {
    paper,
    sheet,
    pieces,
    layouts,
    sheets,
    bound: lowerBound(pieces, sheet),
    rows: pieces.reduce((sum, piece) => sum + Math.ceil(piece.count / rowsOf(piece, 0, sheet).count), 0),
    used: area / (sheets * sheet.width * sheet.height),
    cost: paper.price === null ? null : paper.price * sheets,
    short: paper.stock === null ? null : Math.max(0, sheets - paper.stock),
  };
}

/** What is left of a sheet and worth keeping. */
function offcutsOf(layout: Layout, sheet: Size, others: readonly Servable[]): readonly Offcut[] {
  const rests = placed(layout, sheet)
    .filter(({ is, width, height }) => is.kind === 'rest' && Math.min(width, height) >= LEAST_KEPT - NOISE)
    .map(({ width, height }) => ({ width: Math.max(width, height), height: Math.min(width, height) }));
  const distinct = new Map<string, Offcut>();
  for (const { width, height } of rests) {
    const key = `${width.toFixed(3)} ${height.toFixed(3)}`;
    const count = 1 + (distinct.get(key)?.count ?? 0);
    const serves = others
      .filter(({ blank }) => copiesOf(blank, { width, height }) > 0)
      .map(({ name }) => name);
    distinct.set(key, { width, height, count, serves });
  }
  return [...distinct.values()].sort((a, b) => b.width * b.height - a.width * a.height);
}

function tapeOf(planned: readonly PlannedOrder[]): Plan['tape'] {
  const lengths = new Map<number, number>();
  for (const { order } of planned)
    for (const { width, length } of order.facts.tape)
      lengths.set(width, (lengths.get(width) ?? 0) + length * order.count);
  return [...lengths].map(([width, length]) => ({ width, length })).sort((a, b) => a.width - b.width);
}
