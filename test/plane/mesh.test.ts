/* Polygons side by side become one graph. */
import { expect, test } from 'vitest';
import { mesh } from '../../src/plane/mesh.js';

const rectangle = (x: number, y: number, width: number, height: number) => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

test('two squares side by side share an edge: six vertices, seven edges', () => {
  const { vertices, edges, faces } = mesh([rectangle(0, 0, 1, 1), rectangle(1, 0, 1, 1)]);
  expect([vertices.length, edges.length, faces.length]).toEqual([6, 7, 2]);
  const [shared, ...more] = edges.filter((edge) => edge.faces.length === 2);
  expect(more).toEqual([]);
  expect(shared?.ends.map((end) => vertices[end]?.x)).toEqual([1, 1]);
});

test('an edge is named from its left face, which lists its ends in that order', () => {
  const { vertices, edges, faces } = mesh([rectangle(0, 0, 1, 1), rectangle(1, 0, 1, 1)]);
  const shared = edges.find((edge) => edge.faces.length === 2);
  expect(shared?.faces).toEqual([0, 1]);
  // Up, with the left square on the left.
  expect(shared?.ends.map((end) => vertices[end]?.y)).toEqual([0, 1]);
  expect(faces[0]).toEqual([0, 1, 2, 3]);
});

test('a corner on another’s edge divides it there', () => {
  const { edges, faces } = mesh([rectangle(0, 0, 2, 1), rectangle(2, 0, 1, 0.5), rectangle(2, 0.5, 1, 0.5)]);
  expect(faces.map(({ length }) => length)).toEqual([5, 4, 4]);
  // Eight corners, three faces: 8 − 10 + 3 = 1.
  expect(edges).toHaveLength(10);
});

test('corners on another’s edge stand there in its order, whichever was given first', () => {
  const shelf = [rectangle(2, 0, 1, 1), rectangle(2, 2, 1, 1), rectangle(2, 1, 1, 1)];
  const { vertices, faces } = mesh([rectangle(0, 0, 2, 3), ...shelf]);
  expect(faces[0]?.map((index) => [vertices[index]?.x, vertices[index]?.y])).toEqual([
    [0, 0],
    [2, 0],
    [2, 1],
    [2, 2],
    [2, 3],
    [0, 3],
  ]);
});

test('corners apart by rounding alone are one', () => {
  const { vertices } = mesh([rectangle(0, 0, 1, 1), rectangle(1 + 1e-9, -1e-9, 1, 1)]);
  expect(vertices).toHaveLength(6);
});

test('of nothing, nothing', () => {
  expect(mesh([])).toEqual({ vertices: [], edges: [], faces: [] });
});
