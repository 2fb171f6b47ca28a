import { OUTWARD } from '../../folding/corner-directions.js';
import type { Crease, Folding, GlueLine, Piece } from '../../folding/folding.js';
import type { Pose } from '../../folding/pose.js';
import { apartFrom } from '../../plane/apart-from.js';
import { contains } from '../../plane/contains.js';
import { between, type Segment } from '../../plane/point.js';
import { edgesOf } from '../../plane/polygon.js';
import { scoreLayer } from '../score-layer.js';
import { lined } from './lining.js';
import type { Scene, Stroke } from './scene.js';
import { sheetPart } from './sheet-part.js';
import { tape } from './tape.js';

/** What is drawn besides the paper. */
export interface Extras {
  /** The strips of tape or glue that are drawn, by name, through the flap that carries them. */
  readonly glue?: readonly GlueLine['name'][];
  /** Leaves between the paper that lies on the bench and what is folded over it, with their lines: the card. */
  readonly within?: Scene;
  /** Leaves on top of all paper, with their lines. */
  readonly over?: Scene;
  /** The order of the pieces where they lie on each other; as folded unless said otherwise. */
  readonly pieces?: readonly Piece[];
}

/** The paper at a moment of the folding: its pieces, cut edges and folds as edges, what is still flat as scores. */
export function paperScene(folding: Folding, pose: Pose, extras: Extras = {}): Scene {
  const { made, creases, glue } = folding;
  const sheet = (extras.pieces ?? folding.pieces).map((piece) => sheetPart(made, piece, pose));
  const folds = creases.flatMap((crease): readonly Stroke[] => {
    const meeting = sheet.filter(({ piece }) => meets(piece, crease));
    const [one] = meeting;
    if (!one) return [];
    const layer = pose[crease.flap][crease.order] === 0 ? scoreLayer(crease) : 'edge';
    return [{ layer, from: one.at(crease.from), to: one.at(crease.to), on: meeting.map(({ leaf }) => leaf) }];
  });
  const cuts = sheet.flatMap(({ piece, leaf, at }) =>
    cutEdges(piece, creases).map(
      ({ from, to }): Stroke => ({ layer: 'edge', from: at(from), to: at(to), on: [leaf] }),
    ),
  );
  const strips = tape(
    sheet,
    glue.filter(({ name }) => extras.glue?.includes(name)),
  );
  return together([
    { leaves: [], strokes: [...folds, ...cuts] },
    ...sheet.filter(({ moved }) => !moved).map((part) => lined(part, folding.liner)),
    strips,
    extras.within ?? NOTHING,
    ...sheet.filter(({ moved }) => moved).map((part) => lined(part, folding.liner)),
    extras.over ?? NOTHING,
  ]);
}

const NOTHING: Scene = { leaves: [], strokes: [] };

/** Scenes on top of each other. */
const together = (scenes: readonly Scene[]): Scene => ({
  leaves: scenes.flatMap(({ leaves }) => leaves),
  strokes: scenes.flatMap(({ strokes }) => strokes),
});

/** How far to either side of a crease the pieces that meet there are looked for, in mm: less than a notch stands back. */
const BESIDE = 0.05;

/** Whether a piece reaches up to a crease, from either side. */
function meets(piece: Piece, { flap, from, to }: Crease): boolean {
  const middle = between(from, to, 0.5);
  const { x, y } = OUTWARD[flap];
  return [BESIDE, -BESIDE].some((by) => contains(piece.flat, { x: middle.x + x * by, y: middle.y + y * by }));
}

/** The edges of a piece along which no crease runs: where the paper ends. */
const cutEdges = ({ flat }: Piece, creases: readonly Crease[]): readonly Segment[] =>
  edgesOf(flat).flatMap((edge) => apartFrom(edge, creases));
