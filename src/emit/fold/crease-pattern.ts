import type { Crease, Folding, Piece } from '../../folding/folding.js';
import { pieces as piecesOf } from '../../folding/pieces.js';
import { distanceFrom } from '../../plane/distance-from.js';
import { type Mesh, mesh } from '../../plane/mesh.js';
import { between, type Point } from '../../plane/point.js';
import { area } from '../../plane/polygon.js';

/** The flat blank as a graph: each piece a face, each crease an edge between two faces or several in a row. */
export interface CreasePattern {
  readonly mesh: Mesh;
  /** The piece that each face is. */
  readonly pieces: readonly Piece[];
  /** The crease that each edge is part of; null: the blank ends there. */
  readonly creases: readonly (Crease | null)[];
}

/** A piece smaller than this is no face, in mm²: where scores just meet on the blank's edge, an ear is a speck. */
const SPECK = 1e-4;

/** The format has no arcs. So flattened, in mm, an outline with a dozen of them is as long as it is cut within 0.01 mm. */
const FLATNESS = 0.001;

export function creasePattern(folding: Folding): CreasePattern {
  const pieces = piecesOf(folding.made, folding.cutOutline, FLATNESS).filter(
    ({ flat }) => area(flat) > SPECK,
  );
  const graph = mesh(pieces.map(({ flat }) => flat));
  const creases = graph.edges.map(({ ends: [from, to], faces }) =>
    faces.length > 1
      ? nearest(folding.creases, between(graph.vertices[from] as Point, graph.vertices[to] as Point, 1 / 2))
      : null,
  );
  return { mesh: graph, pieces, creases };
}

/** The crease on which a point lies. */
const nearest = (creases: readonly Crease[], at: Point): Crease | null =>
  creases.reduce<Crease | null>(
    (best, crease) => (best && distanceFrom(best, at) <= distanceFrom(crease, at) ? best : crease),
    null,
  );
