/* A flap turned about its score, by hand. */
import { expect, test } from 'vitest';
import { type Point3, turnAbout } from '../../src/plane/point3.js';

const near = ({ x, y, z }: Point3) => ({
  x: expect.closeTo(x, 9),
  y: expect.closeTo(y, 9),
  z: expect.closeTo(z, 9),
});
/** A score 5 to the right of the origin, upright. */
const RIGHT = { normal: { x: 1, y: 0 }, at: 5 };

test.each([
  [0, { x: 9, y: 3, z: 0 }],
  [90, { x: 5, y: 3, z: 4 }],
  [180, { x: 1, y: 3, z: 0 }],
  [-90, { x: 5, y: 3, z: -4 }],
  [60, { x: 7, y: 3, z: 4 * Math.sin(Math.PI / 3) }],
])('a point 4 beyond the score, turned by %i°', (degrees, expected) => {
  expect(turnAbout(RIGHT, degrees, { x: 9, y: 3, z: 0 })).toEqual(near(expected));
});

test('what lies over the paper turns with it', () => {
  // Standing 2 above the paper, beyond by 4: upright, it is 2 nearer to the face, 4 high.
  expect(turnAbout(RIGHT, 90, { x: 9, y: 3, z: 2 })).toEqual(near({ x: 3, y: 3, z: 4 }));
  expect(turnAbout(RIGHT, 180, { x: 9, y: 3, z: 2 })).toEqual(near({ x: 1, y: 3, z: -2 }));
});

test('a score that leans turns square to itself', () => {
  const [cosine, sine] = [0.6, 0.8];
  const leaning = { normal: { x: cosine, y: sine }, at: 10 };
  const beyond = { x: 15 * cosine, y: 15 * sine, z: 0 };
  expect(turnAbout(leaning, 180, beyond)).toEqual(near({ x: 5 * cosine, y: 5 * sine, z: 0 }));
  expect(turnAbout(leaning, 90, beyond)).toEqual(near({ x: 10 * cosine, y: 10 * sine, z: 5 }));
});

test('points on the score stay', () => {
  expect(turnAbout(RIGHT, 77, { x: 5, y: -8, z: 0 })).toEqual(near({ x: 5, y: -8, z: 0 }));
});
