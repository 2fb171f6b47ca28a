import { distanceFrom } from './distance-from.js';
import { distance, type Point } from './point.js';
import type { Polygon } from './polygon.js';

/** Polygons that lie side by side, as a graph: each corner once, each edge once. */
export interface Mesh {
  readonly vertices: readonly Point[];
  readonly edges: readonly MeshEdge[];
  /** The vertices around each polygon, counter-clockwise, those of its neighbours that lie on its edges included. */
  readonly faces: readonly (readonly number[])[];
}

export interface MeshEdge {
  readonly ends: readonly [number, number];
  /** The polygon on its left; then the one on its right, where there is one. */
  readonly faces: readonly number[];
}

/** Points nearer than this are one vertex, in the polygons' unit; nothing may be thinner. */
const SAME = 1e-5;

/** Joins counter-clockwise polygons that do not overlap along the edges that they share. */
export function mesh(polygons: readonly Polygon[]): Mesh {
  const vertices: Point[] = [];
  for (const corner of polygons.flat()) if (indexOf(vertices, corner) < 0) vertices.push(corner);
  const faces = polygons.map((polygon) => around(polygon, vertices));
  const edges = new Map<string, { ends: [number, number]; faces: number[] }>();
  faces.forEach((face, index) => {
    face.forEach((from, corner) => {
      const to = face[(corner + 1) % face.length] as number;
      const name = from < to ? `${from} ${to}` : `${to} ${from}`;
      const known = edges.get(name);
      if (known) known.faces.push(index);
      else edges.set(name, { ends: [from, to], faces: [index] });
    });
  });
  return { vertices, edges: [...edges.values()], faces };
}

const indexOf = (vertices: readonly Point[], at: Point): number =>
  vertices.findIndex((vertex) => distance(vertex, at) < SAME);

/** The vertices on a polygon's edges, in order. */
const around = (polygon: Polygon, vertices: readonly Point[]): readonly number[] =>
  polygon.flatMap((from, corner) => {
    const to = polygon[(corner + 1) % polygon.length] as Point;
    return [...vertices.keys()]
      .map((index) => ({ index, at: vertices[index] as Point }))
      .filter(({ at }) => distanceFrom({ from, to }, at) < SAME && distance(at, to) >= SAME)
      .sort((a, b) => distance(from, a.at) - distance(from, b.at))
      .map(({ index }) => index);
  });
