/*
 * folding/: from a recipe to paper: the blank, its scores and marks as made, the pieces, and where they land.
 * In: an Envelope. Out: a Folding (geometry for rules and drawings) and its Facts (numbers by their public names).
 * Refuses to know: how findings are worded, how anything is drawn.
 *
 * One frame (DEVELOPERS.md, "What must stay true"): origin at the blank's centre, u (x) right along the face's width, v (y) up, mm, seen from
 * the inside (the show side lies down). The blank is a diamond: seal corner on top, then right, bottom, left.
 */
import type { Path, RoundedCorner } from '../plane/path.js';
import type { Point, Segment } from '../plane/point.js';
import type { Polygon } from '../plane/polygon.js';
import type { CornerTreatment, Size } from '../recipe/recipe.js';

/** The four flaps, each named like its corner of the blank. */
export type FlapName = 'left' | 'right' | 'seal' | 'bottom';

/** In the order in which tables and findings name them. */
export const FLAP_NAMES: readonly FlapName[] = ['left', 'right', 'seal', 'bottom'];

/** Something for each flap. */
export type FlapRecord<T> = Readonly<Record<FlapName, T>>;

/** A value for each flap. */
export const eachFlap = <T>(value: (flap: FlapName) => T): FlapRecord<T> => ({
  left: value('left'),
  right: value('right'),
  seal: value('seal'),
  bottom: value('bottom'),
});

/** A mark, measured along both edges from that flap's corner, and the score it draws. */
export interface ScoreLine {
  /** Distance of the score from the corner, square to the score. */
  readonly fromCorner: number;
  /** The mark: fromCorner × √2. */
  readonly alongEdge: number;
}

/** What is done to a flap's tip. All lengths as made. */
export interface Tip {
  readonly shape: 'pointed' | 'rounded' | 'blunt';
  /** Taken off the tip along the flap's height by a blunt cut (0 when not blunt). */
  readonly cut: number;
  /** The same as a mark along both edges from the corner: cut × √2. */
  readonly cutMark: number;
  /** Radius of the rounding (0: none). */
  readonly radius: number;
  /** True where nobody asked for the cut: the pointed tip would have passed the face. */
  readonly byDefault: boolean;
}

/** Rounded to the ruler's step, then computed back: what lies on the bench. */
export interface AsMade {
  readonly blank: Size;
  /** (width + height)/√2: the blank's diagonal when it is square. */
  readonly diagonal: number;
  /** First scores, which bound the face. */
  readonly first: FlapRecord<ScoreLine>;
  /** Second scores of a box, nearer the corner by the depth; null for a flat envelope. */
  readonly second: FlapRecord<ScoreLine> | null;
  readonly face: Size;
  /** Centre of the face in the blank's frame. */
  readonly faceCentre: Point;
  readonly depth: number;
  readonly shift: number;
  readonly tips: FlapRecord<Tip>;
  /** Distance of each flap's tip from its outermost score, less what trimming takes. */
  readonly heights: FlapRecord<number>;
  readonly corners: { readonly bottom: CornerTreatment; readonly seal: CornerTreatment };
}

/** A piece of the blank and where it lies on the closed envelope, in the blank's frame before and after. */
export interface Piece {
  readonly kind: 'face' | 'wall' | 'flap' | 'ear';
  readonly flap: FlapName | null;
  /** Counter-clockwise polygon on the flat blank (arcs flattened to within 0.01 mm). */
  readonly flat: readonly Point[];
  /**
   * The same vertices, in the same order, on the back of the closed envelope, seen in the blank's frame from the
   * inside; null for the face and for walls (which stand up).
   */
  readonly folded: readonly Point[] | null;
}

/** A crease segment on the flat blank, from edge, notch or crossing to the next. */
export interface Crease {
  readonly flap: FlapName;
  readonly order: 'first' | 'second';
  readonly from: Point;
  readonly to: Point;
  /** Seen from the inside: valleys fold up towards the reader; the odd creases of folded ears are mountains. */
  readonly sense: 'valley' | 'mountain';
}

/** Where glue or tape holds two pieces together, as a strip on the flat blank's inside. */
export interface GlueLine {
  readonly name: 'lower-left' | 'lower-right' | 'centre' | 'seal-left' | 'seal-right' | 'seal-tip';
  /** The flap that carries the strip, and the one that it is pressed on. */
  readonly on: FlapName;
  readonly onto: FlapName;
  /** The strip's middle line on the flat blank. */
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

/** A lining, where it lies on the inside of the flat blank: over the face and the seal flap (and a box's wall between). */
export interface Liner {
  readonly outline: Path;
  /** Where it folds with the envelope, from left to right: on the seal flap's first score, then on the second of a box. */
  readonly folds: readonly Segment[];
}

/** An envelope as it folds: outlines, pieces and what lies on them, in the blank's frame, in mm. */
export interface Folding {
  readonly made: AsMade;
  /** The blank before trimming: a square (or rectangle) standing on its bottom corner. */
  readonly blankOutline: readonly Point[];
  /**
   * All of each flap and its wall: what lies beyond its first score, less its corner pieces (a folded ear stays with the side flap)
   * and a blunt cut. Convex, counter-clockwise; the corners at the tip carry the radius to which they are rounded.
   */
  readonly flapRegions: FlapRecord<readonly RoundedCorner[]>;
  /** The outline after notches and tips are cut, with true arcs. */
  readonly cutOutline: Path;
  readonly creases: readonly Crease[];
  /** Bottom first to top: face, walls, ears and flaps in the order in which they are folded. */
  readonly pieces: readonly Piece[];
  /**
   * Each flap as it lies on the closed envelope, in the blank's frame: convex, counter-clockwise, arcs flattened as in the pieces,
   * without the round ends of its notches.
   */
  readonly closedFlaps: FlapRecord<Polygon>;
  /** Length on the centre line over which the closed seal flap lies on glued paper. */
  readonly closure: number;
  /** The side flaps are glued to each other, because the bottom flap alone closes too little. */
  readonly centreSeam: boolean;
  readonly glue: readonly GlueLine[];
  /** Null where none is asked for, or where its inset leaves nothing of it on the face. */
  readonly liner: Liner | null;
  /** The greatest number of pieces that lie over one place of the back, ears included. */
  readonly layers: number;
  /** Stretches of the back that stay bare, as polygons in the blank's frame (empty: fully covered). */
  readonly bare: readonly (readonly Point[])[];
}
