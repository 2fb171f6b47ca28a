import FOLD from 'fold';
import type { Crease, Folding } from '../../src/folding/folding.js';
import { flatten } from '../../src/plane/path.js';
import { distance, type Point } from '../../src/plane/point.js';

/** A crease pattern in the terms of the FOLD format 1.2: a planar graph, each edge boundary, mountain or valley. */
export interface CreasePattern {
  vertices_coords: [number, number][];
  edges_vertices: [number, number][];
  edges_assignment: ('B' | 'M' | 'V')[];
  faces_vertices?: number[][];
}

/** Points nearer than this are one vertex, in mm. */
const SAME = 1e-5;

/** The flat blank with its creases, split into a planar graph by a general-purpose library. Arcs come as chords, as `flatten` has them. */
export function creasePattern({ cutOutline, creases }: Folding, flatness?: number): CreasePattern {
  const outline = flatten(cutOutline, flatness);
  const graph: CreasePattern = { vertices_coords: [], edges_vertices: [], edges_assignment: [] };
  const vertex = ({ x, y }: Point): number => {
    const found = graph.vertices_coords.findIndex(([a, b]) => Math.hypot(a - x, b - y) < SAME);
    return found >= 0 ? found : graph.vertices_coords.push([x, y]) - 1;
  };
  const edge = (from: Point, to: Point, assignment: 'B' | 'M' | 'V'): void => {
    graph.edges_vertices.push([vertex(from), vertex(to)]);
    graph.edges_assignment.push(assignment);
  };
  const ends = creases.flatMap(({ from, to }) => [from, to]);
  outline.forEach((corner, index) => {
    const next = outline[(index + 1) % outline.length] as Point;
    const on = ends.filter(
      (at) => Math.abs(distance(corner, at) + distance(at, next) - distance(corner, next)) < 1e-9,
    );
    const stops = [corner, ...on, next].sort((a, b) => distance(corner, a) - distance(corner, b));
    stops.slice(1).forEach((stop, before) => edge(stops[before] as Point, stop, 'B'));
  });
  for (const { from, to, sense } of creases as readonly Crease[])
    edge(from, to, sense === 'valley' ? 'V' : 'M');
  FOLD.filter.subdivideCrossingEdges_vertices(graph, SAME);
  FOLD.convert.edges_vertices_to_faces_vertices(graph);
  return graph;
}
