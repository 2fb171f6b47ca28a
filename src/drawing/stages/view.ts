/*
 * drawing/stages/: the fold, step by step, as pictures that follow from the folding itself.
 * In: a Folding. Out: stages in order, each with its words and a Drawing in mm of paper.
 * Refuses to know: where on a page a stage stands, and how large.
 */
import type { Point } from '../../plane/point.js';
import type { Point3 } from '../../plane/point3.js';

/** From where things in space are looked at: unit vectors square to each other. The bench is z = 0. */
export interface View {
  readonly right: Point3;
  readonly up: Point3;
  /** To the reader. */
  readonly towards: Point3;
}

/** Straight down on the bench: the inside of the flat blank, the back of the closed envelope. */
export const FROM_ABOVE: View = {
  right: { x: 1, y: 0, z: 0 },
  up: { x: 0, y: 1, z: 0 },
  towards: { x: 0, y: 0, z: 1 },
};

/** The front as it is read, `up` being the reader's up in the blank's frame: from below, so that it is mirrored. */
export const frontView = (up: Point): View => ({
  right: { x: -up.y, y: up.x, z: 0 },
  up: { ...up, z: 0 },
  towards: { x: 0, y: 0, z: -1 },
});

/** An orthographic (trimetric) view of the bench: turned a little to the left, looked down on at an angle. */
const TURNED = (26 * Math.PI) / 180;
const RAISED = (45 * Math.PI) / 180;

export const OBLIQUE: View = {
  right: { x: Math.cos(TURNED), y: Math.sin(TURNED), z: 0 },
  up: {
    x: -Math.sin(TURNED) * Math.sin(RAISED),
    y: Math.cos(TURNED) * Math.sin(RAISED),
    z: Math.cos(RAISED),
  },
  towards: {
    x: Math.sin(TURNED) * Math.cos(RAISED),
    y: -Math.cos(TURNED) * Math.cos(RAISED),
    z: Math.sin(RAISED),
  },
};

/** Where a point is seen. */
export const seenFrom =
  ({ right, up }: View) =>
  ({ x, y, z }: Point3): Point => ({
    x: x * right.x + y * right.y + z * right.z,
    y: x * up.x + y * up.y + z * up.z,
  });
