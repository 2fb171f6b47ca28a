import { FIGURES as NAMES, type ExpectDimension } from '../recipe/expect-names.js';
import type { Facts } from './facts.js';
import type { FlapName } from './folding.js';

/** A figure that `expect` names, and how it is read off the facts. */
export interface Figure {
  readonly dimension: ExpectDimension;
  /** The values it stands for, in the inner unit; more than one where the two side flaps differ. Null is unknown. */
  readonly read: (facts: Facts) => readonly (number | null)[];
}

type Read = Figure['read'];

const one =
  (read: (facts: Facts) => number | null): Read =>
  (facts) => [read(facts)];

/** First or second score of a flap, square to it or along the edge. */
const score =
  (order: 0 | 1, ...flaps: readonly FlapName[]): Read =>
  ({ scores }) =>
    flaps.map((flap) => scores[flap][order]?.fromCorner ?? null);
const mark =
  (order: 0 | 1, ...flaps: readonly FlapName[]): Read =>
  ({ scores }) =>
    flaps.map((flap) => scores[flap][order]?.alongEdge ?? null);

const READS: Readonly<Record<string, Read>> = {
  blank: ({ blank }) => [blank.width, blank.height],
  'face-width': one(({ face }) => face.width),
  'face-height': one(({ face }) => face.height),
  depth: one(({ depth }) => depth),
  'side-score': score(0, 'left', 'right'),
  'seal-score': score(0, 'seal'),
  'bottom-score': score(0, 'bottom'),
  'side-mark': mark(0, 'left', 'right'),
  'seal-mark': mark(0, 'seal'),
  'bottom-mark': mark(0, 'bottom'),
  'second-side-score': score(1, 'left', 'right'),
  'second-seal-score': score(1, 'seal'),
  'second-bottom-score': score(1, 'bottom'),
  'second-side-mark': mark(1, 'left', 'right'),
  'second-seal-mark': mark(1, 'seal'),
  'second-bottom-mark': mark(1, 'bottom'),
  'side-flap': ({ flaps }) => [flaps.left.height, flaps.right.height],
  'seal-flap': one(({ flaps }) => flaps.seal.height),
  'bottom-flap': one(({ flaps }) => flaps.bottom.height),
  crossing: one(({ margins }) => margins.crossing),
  'seam-overlap': one(({ margins }) => margins.seamOverlap),
  closure: one(({ margins }) => margins.closure),
  bare: one(({ margins }) => margins.bareArea),
  'room-width': one(({ margins }) => margins.roomWidth),
  'room-height': one(({ margins }) => margins.roomHeight),
  'room-depth': one(({ margins }) => margins.roomDepth),
  thickness: one(({ thickness }) => thickness),
  mass: one(({ mass }) => mass),
  'per-sheet': one(({ sheet }) => sheet?.copies ?? null),
  layers: one(({ layers }) => layers),
  'seam-length': one(({ seamLength }) => seamLength),
  diagonal: one(({ diagonal }) => diagonal),
  'tape-length': one(({ tapeLength }) => tapeLength),
  'liner-width': one(({ liner }) => liner?.width ?? null),
  'liner-height': one(({ liner }) => liner?.height ?? null),
};

/** Every figure by its public name, in the order in which recipe/expect-names.ts lists them. */
export const FIGURES: ReadonlyMap<string, Figure> = new Map(
  NAMES.flatMap(([name, dimension]): readonly [string, Figure][] => {
    const read = READS[name];
    return read ? [[name, { dimension, read }]] : [];
  }),
);
