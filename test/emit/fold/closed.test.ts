/* The second frame: the closed envelope, flat or as a box, beside what an origami library makes of the first. */
import fc from 'fast-check';
import ear from 'rabbit-ear';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/emit/emitter.js';
import { fold } from '../../../src/folding/fold.js';
import { anyEnvelope } from '../../support/arbitraries.js';
import { envelope } from '../../support/envelopes.js';
import {
  copyOf,
  type FoldFile,
  type FoldFrame,
  facesOf,
  foldFile,
  pointOf,
} from '../../support/fold-file.js';
import { specJobs } from '../../support/spec-jobs.js';

type Subject = Pick<Job, 'envelope' | 'folding'>;
type Law = (file: FoldFile, subject: Subject) => void;

/** How far apart a vertex may land, in mm. */
const APART = 1e-4;

const isFlat = ({ folding }: Subject): boolean => folding.made.depth === 0;

const apart = (a: readonly number[], b: readonly number[]): number => {
  const [one, other] = [pointOf(a), pointOf(b)];
  return Math.hypot(other.x - one.x, other.y - one.y, other.z - one.z);
};

const expectLanding = (landed: readonly (readonly number[])[], { closed }: FoldFile): void => {
  expect(landed).toHaveLength(closed.vertices_coords.length);
  landed.forEach((at, vertex) => {
    expect(apart(at, closed.vertices_coords[vertex] ?? [])).toBeLessThan(APART);
  });
};

const faceOf = ({ 'faces_plica:kind': kinds }: FoldFrame): number => kinds.indexOf('face');

const FLAT: Readonly<Record<string, Law>> = {
  'an origami library folds the pattern flat and lands every vertex where we say': (file) => {
    const graph = ear.graph.populate(copyOf(file.flat));
    expectLanding(ear.graph.makeVerticesCoordsFlatFolded(graph, faceOf(file.flat)), file);
  },
  'all of it lies in the plane, on other paper': ({ closed }) => {
    expect(closed.frame_attributes).toEqual(expect.arrayContaining(['2D', 'selfTouching']));
    for (const at of closed.vertices_coords) expect(at).toHaveLength(2);
  },
};

const BOX: Readonly<Record<string, Law>> = {
  'an origami library folds the pattern by its fold angles and lands every vertex where we say': (file) => {
    const graph = ear.graph.populate(copyOf(file.flat));
    expectLanding(ear.graph.makeVerticesCoordsFolded(graph, faceOf(file.flat)), file);
  },
  'the face lies on the bench, the flaps at the box’s depth, and the walls stand square between': (
    { closed },
    { folding },
  ) => {
    const { depth } = folding.made;
    expect(closed.frame_attributes).toEqual(expect.arrayContaining(['3D', 'selfTouching']));
    facesOf(closed).forEach((corners, face) => {
      const kind = closed['faces_plica:kind'][face];
      const flap = closed['faces_plica:flap'][face];
      if (kind !== 'wall') {
        for (const { z } of corners) expect(z).toBeCloseTo(kind === 'face' ? 0 : depth, 5);
        return;
      }
      const spread = (axis: 'x' | 'y' | 'z'): number =>
        Math.max(...corners.map((at) => at[axis])) - Math.min(...corners.map((at) => at[axis]));
      expect(spread(flap === 'left' || flap === 'right' ? 'x' : 'y')).toBeLessThan(APART);
      expect(spread('z')).toBeCloseTo(depth, 5);
    });
  },
};

const ALL: Readonly<Record<string, Law>> = {
  'no edge is longer or shorter than on the blank: paper does not stretch': ({ flat, closed }) => {
    for (const [from, to] of flat.edges_vertices) {
      const length = ({ vertices_coords }: FoldFrame): number =>
        apart(vertices_coords[from] ?? [], vertices_coords[to] ?? []);
      expect(Math.abs(length(closed) - length(flat))).toBeLessThan(1e-5);
    }
  },
  'every face stays plane: what four of its corners span has no height': ({ closed }) => {
    for (const corners of facesOf(closed)) expect(thickness(corners)).toBeLessThan(APART);
  },
  'no distance across a face changes either': ({ flat, closed }) => {
    const [before, after] = [facesOf(flat), facesOf(closed)];
    before.forEach((corners, face) => {
      corners.forEach(({ x, y }, corner) => {
        const [first, at, origin] = [corners[0], after[face]?.[corner], after[face]?.[0]];
        if (!first || !at || !origin) throw new Error('a corner is lost');
        const across = Math.hypot(at.x - origin.x, at.y - origin.y, at.z - origin.z);
        expect(Math.abs(across - Math.hypot(x - first.x, y - first.y))).toBeLessThan(1e-5);
      });
    });
  },
};

/** The greatest distance of a corner from the plane through three that lie far apart. */
function thickness(corners: readonly ReturnType<typeof pointOf>[]): number {
  const [a] = corners;
  if (!a) return 0;
  const from = (p: typeof a) => [p.x - a.x, p.y - a.y, p.z - a.z] as const;
  const cross = (p: readonly number[], q: readonly number[]) => {
    const [px = 0, py = 0, pz = 0] = p;
    const [qx = 0, qy = 0, qz = 0] = q;
    return [py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx] as const;
  };
  const normals = corners.flatMap((p) => corners.map((q) => cross(from(p), from(q))));
  const normal = normals.reduce((best, next) => (Math.hypot(...next) > Math.hypot(...best) ? next : best));
  const length = Math.hypot(...normal);
  return Math.max(
    ...corners.map((p) =>
      Math.abs(from(p).reduce((dot, each, axis) => dot + each * (normal[axis] ?? 0), 0) / length),
    ),
  );
}

const laws = (subject: Subject): Readonly<Record<string, Law>> => ({
  ...(isFlat(subject) ? FLAT : BOX),
  ...ALL,
});

describe.each(Object.entries(specJobs()))('%s', (_, subject) => {
  test.each(Object.entries(laws(subject)))('%s', (_name, law) => law(foldFile(subject), subject));
});

const flat = anyEnvelope.filter(({ depth }) => depth.value === 0);
const box = anyEnvelope.filter(({ depth }) => depth.value > 0);

test.each([
  ['flat envelope', flat],
  ['box', box],
])('all of it holds whatever the %s', (_, any) => {
  fc.assert(
    fc.property(any, (made) => {
      const subject = { envelope: made, folding: fold(made) };
      const file = foldFile(subject);
      for (const law of Object.values(laws(subject))) law(file, subject);
    }),
    { seed: 22, numRuns: 200 },
  );
});

/** The library's relation: pairs of faces that overlap, -1 where the first, by number, lies below. */
function pairsOf({ closed }: FoldFile): Readonly<Record<string, 1 | -1>> {
  const up = ear.graph.makeFacesWinding(ear.graph.populate(copyOf(closed)));
  return Object.fromEntries(
    (closed.faceOrders ?? []).map(([above, below, side]) => {
      const isAbove = (side === 1) === up[below];
      const [low, high] = above < below ? [above, below] : [below, above];
      return [`${low} ${high}`, isAbove === (above === low) ? 1 : -1];
    }),
  );
}

const ears = { bottom: 'folded', seal: 'folded' } as const;

test.each([
  ['wide envelope', { width: 160, height: 90 }],
  ['usual envelope', { width: 160, height: 110 }],
  ['tall envelope that opens at its end', { width: 110, height: 160 }],
])('the layers of a %s are one of the ways in which an origami library can lay them', (_, face) => {
  const made = envelope({ face, corners: ears });
  const file = foldFile({ envelope: made, folding: fold(made) });
  const { root, branches } = ear.layer.solver(ear.graph.populate(copyOf(file.closed)));
  const ours = pairsOf(file);
  expect(Object.keys(ours)).toHaveLength(
    new Set([root, ...branches.flat()].flatMap((order) => Object.keys(order))).size,
  );
  expect(ours).toMatchObject(root);
  for (const alternatives of branches) {
    expect(alternatives.filter((order) => matches(ours, order))).toHaveLength(1);
  }
});

const matches = (ours: Readonly<Record<string, number>>, order: Readonly<Record<string, number>>): boolean =>
  Object.entries(order).every(([pair, side]) => ours[pair] === side);

test('flaps lie on the face in the order in which they are folded: left, right, bottom, seal', () => {
  const made = envelope({ face: { width: 110, height: 160 }, shift: 12 });
  const { closed } = foldFile({ envelope: made, folding: fold(made) });
  const number = (flap: string): number =>
    closed['faces_plica:flap'].findIndex(
      (name, face) => name === flap && closed['faces_plica:kind'][face] === 'flap',
    );
  const side = (above: string, below: string) =>
    closed.faceOrders?.find(([f, g]) => f === number(above) && g === number(below))?.[2];
  // A folded flap shows its outside: what lies on it is on the side that its inside turns away from.
  expect(side('right', 'left')).toBe(-1);
  expect(side('bottom', 'left')).toBe(-1);
  expect(side('bottom', 'right')).toBe(-1);
  expect(side('seal', 'left')).toBe(-1);
  // The face lies inside up, and everything on its inside.
  const face = closed['faces_plica:kind'].indexOf('face');
  for (const [, below, towards] of closed.faceOrders ?? []) if (below === face) expect(towards).toBe(1);
});

test('the flaps of a box lie on each other, in the order in which they are folded, and not on its face', () => {
  const notched = { bottom: 'notched', seal: 'notched' } as const;
  const made = envelope({ face: { width: 110, height: 160 }, depth: 8, corners: notched });
  const { closed } = foldFile({ envelope: made, folding: fold(made) });
  const orders = closed.faceOrders?.map(([above, below, side]) => {
    expect([above, below].map((face) => closed['faces_plica:kind'][face])).toEqual(['flap', 'flap']);
    return [closed['faces_plica:flap'][above], side < 0 ? 'on' : 'under', closed['faces_plica:flap'][below]];
  });
  expect(orders).toEqual(
    expect.arrayContaining([
      ['right', 'on', 'left'],
      ['bottom', 'on', 'left'],
      ['bottom', 'on', 'right'],
      ['seal', 'on', 'left'],
      ['seal', 'on', 'right'],
    ]),
  );
});
