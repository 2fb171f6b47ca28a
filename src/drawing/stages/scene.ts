import { apartFrom } from '../../plane/apart-from.js';
import { farToNear } from '../../plane/far-to-near.js';
import { hiddenParts } from '../../plane/hidden-parts.js';
import { distance, type Point, type Segment } from '../../plane/point.js';
import type { Point3 } from '../../plane/point3.js';
import { area } from '../../plane/polygon.js';
import { type Drawing, type Layer, line, outline, polyline } from '../drawing.js';
import { seenFrom, type View } from './view.js';

/** A flat surface in space: a piece of paper, the card. */
export interface Leaf {
  readonly corners: readonly Point3[];
  /** What is seen where its corners turn counter-clockwise, and what from its other side. */
  readonly side: Layer;
  readonly otherSide: Layer;
}

/** A line on one leaf, or where two meet. */
export interface Stroke {
  readonly layer: Layer;
  readonly from: Point3;
  readonly to: Point3;
  readonly on: readonly Leaf[];
}

/** Things in space. Leaves that lie on each other in one plane come in their order from the bench up. */
export interface Scene {
  readonly leaves: readonly Leaf[];
  readonly strokes: readonly Stroke[];
}

/** Whether edges that lie under other paper are drawn, dashed, or left out. */
export type Beneath = 'dashed' | 'left out';

/** Less is a line, not a surface, in mm². */
const EDGE_ON = 1e-3;

/** The scene as it is seen: surfaces from the furthest to the nearest, and over them what is seen of the lines. */
export function drawScene({ leaves, strokes }: Scene, view: View, beneath: Beneath): Drawing {
  const seen = seenFrom(view);
  const order = farToNear(
    leaves.map(({ corners }) => corners),
    view.towards,
  );
  const painted = order.map((index) => {
    const leaf = leaves[index] as Leaf;
    return { leaf, outline: leaf.corners.map(seen) };
  });
  const level = (leaf: Leaf): number => painted.findIndex((one) => one.leaf === leaf);
  const parts = strokes.map((stroke) => {
    const over = painted.slice(Math.max(...stroke.on.map(level)) + 1);
    const segment = { from: seen(stroke.from), to: seen(stroke.to) };
    return {
      layer: stroke.layer,
      ...hiddenParts(
        segment,
        over.map((one) => one.outline),
      ),
    };
  });
  const visible = once(
    parts.flatMap((part) => part.seen.map((segment) => ({ ...segment, layer: part.layer }))),
    [],
  );
  const hidden = once(
    parts.flatMap((part) =>
      part.layer === 'edge' ? part.hidden.map((segment) => ({ ...segment, layer: 'hidden' as const })) : [],
    ),
    visible.filter(({ layer }) => layer === 'edge'),
  );
  return [
    ...painted.flatMap(({ leaf, outline: corners }) => {
      const turning = area(corners);
      if (Math.abs(turning) < EDGE_ON) return [];
      return [outline(turning > 0 ? leaf.side : leaf.otherSide, corners)];
    }),
    ...LAYERS.flatMap((layer) =>
      runs(
        layer,
        [...visible, ...(beneath === 'dashed' ? hidden : [])].filter((one) => one.layer === layer),
      ),
    ),
  ];
}

/** The layers of strokes, in the order in which they are drawn. */
const LAYERS: readonly Layer[] = [
  'hidden',
  'glue',
  'lining-fold',
  'score',
  'second-score',
  'odd-score',
  'lining',
  'edge',
];

/** Lines of each layer once where several run along each other, and nothing of them where others run. */
function once(lines: readonly Line[], others: readonly Line[]): readonly Line[] {
  const found: Line[] = [];
  for (const { layer, ...segment } of lines) {
    const taken = [...others, ...found.filter((one) => one.layer === layer)];
    found.push(...apartFrom(segment, taken).map((part) => ({ ...part, layer })));
  }
  return found;
}

interface Line extends Segment {
  readonly layer: Layer;
}

/** Points this near are one, in mm. */
const SAME = 1e-6;

/** Segments as lines, those that follow each other as one run: dashes then run on round a curve. */
function runs(layer: Layer, segments: readonly Segment[]): Drawing {
  const found: Point[][] = [];
  for (const { from, to } of segments) {
    const open = found.at(-1);
    const end = open?.at(-1);
    if (open && end && distance(end, from) < SAME) open.push(to);
    else found.push([from, to]);
  }
  return found.map((points) => {
    const [from, to] = [points[0] as Point, points[1] as Point];
    return points.length === 2 ? line(layer, from, to) : polyline(layer, points);
  });
}
