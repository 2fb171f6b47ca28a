/*
 * emit/fold/: the crease pattern and the closed envelope in the FOLD format 1.2, for programs that fold paper
 * (https://github.com/edemaine/fold, doc/spec.md).
 * In: one compiled recipe. Out: JSON text that ends in a line end. Keys of our own begin with `plica:` after their kind.
 * Refuses to know: what anybody does with it.
 */
import type { Crease, Folding } from '../../folding/folding.js';
import { closedPose, placed } from '../../folding/pose.js';
import { printNumber } from '../../measure/number.js';
import { type Point, turn } from '../../plane/point.js';
import type { Job } from '../emitter.js';
import { type CreasePattern, creasePattern } from './crease-pattern.js';
import { faceOrders } from './face-orders.js';
import { layOut } from './lay-out.js';

/** Lengths in mm to six decimals, angles in degrees. The key frame is the flat blank, the other one the closed envelope. */
export function renderFold({ envelope, folding }: Pick<Job, 'envelope' | 'folding'>): string {
  const pattern = creasePattern(folding);
  return layOut({
    file_spec: 1.2,
    file_creator: 'Plica',
    file_title: envelope.title.value,
    file_classes: ['singleModel'],
    ...flatBlank(pattern, folding),
    file_frames: [closedEnvelope(pattern, folding)],
  });
}

const flatBlank = ({ mesh, pieces, creases }: CreasePattern, { made }: Folding) => ({
  frame_title: 'Crease pattern',
  frame_description:
    'The flat blank seen from the inside, the side to show face down: valleys fold towards the reader. x runs right, y up; the origin is the centre of the blank before it is trimmed.',
  frame_classes: ['creasePattern'],
  frame_attributes: ['2D', 'nonSelfTouching', 'nonSelfIntersecting', ...commonAttributes(mesh)],
  frame_unit: 'mm',
  vertices_coords: mesh.vertices.map(({ x, y }) => [coordinate(x), coordinate(y)]),
  edges_vertices: mesh.edges.map(({ ends }) => ends),
  edges_assignment: creases.map((crease) => (crease ? ASSIGNMENT[crease.sense] : 'B')),
  edges_foldAngle: creases.map((crease) => (crease ? SIGN[crease.sense] * (made.second ? 90 : 180) : 0)),
  'edges_plica:flap': creases.map((crease) => crease?.flap ?? null),
  'edges_plica:score': creases.map((crease) => crease?.order ?? null),
  faces_vertices: mesh.faces,
  'faces_plica:kind': pieces.map(({ kind }) => kind),
  'faces_plica:flap': pieces.map(({ flap }) => flap),
});

const closedEnvelope = ({ mesh, pieces }: CreasePattern, { made }: Folding) => {
  const isFlat = made.second === null;
  return {
    frame_parent: 0,
    frame_inherit: true,
    frame_title: 'Closed envelope',
    frame_description: `The envelope closed, its face where it was on the blank and its back to the reader${isFlat ? '' : '; z rises from the face to the reader'}.`,
    frame_classes: ['foldedForm'],
    frame_attributes: [isFlat ? '2D' : '3D', 'selfTouching', ...commonAttributes(mesh)],
    vertices_coords: mesh.vertices.map((at, vertex) => {
      const piece = pieces[mesh.faces.findIndex((face) => face.includes(vertex))];
      const { x, y, z } = piece ? placed(made, piece, closedPose(made), at) : { ...at, z: 0 };
      return (isFlat ? [x, y] : [x, y, z]).map(coordinate);
    }),
    faceOrders: faceOrders(pieces, isFlat),
  };
};

const ASSIGNMENT: Readonly<Record<Crease['sense'], 'M' | 'V'>> = { mountain: 'M', valley: 'V' };
const SIGN: Readonly<Record<Crease['sense'], 1 | -1>> = { mountain: -1, valley: 1 };

const coordinate = (length: number): number => Number(printNumber(length, 6));

const commonAttributes = (mesh: CreasePattern['mesh']): readonly string[] => [
  'manifold',
  'orientable',
  'noCuts',
  'noJoins',
  mesh.faces.every((face) => isConvex(face.map((vertex) => mesh.vertices[vertex] as Point)))
    ? 'convexFaces'
    : 'nonConvexFaces',
];

/** Whether a counter-clockwise polygon turns right nowhere, corners on straight lines aside. */
const isConvex = (corners: readonly Point[]): boolean =>
  corners.every((at, index) => {
    const before = corners.at(index - 1) as Point;
    const after = corners[(index + 1) % corners.length] as Point;
    return turn(before, at, after) > -STRAIGHT;
  });

/** A turn this small is a straight line's, in mm². */
const STRAIGHT = 1e-5;
