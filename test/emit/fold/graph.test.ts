/* The flat blank as a planar graph: counted, measured, and made a second time by the format's own library. */
import fc from 'fast-check';
import FOLD from 'fold';
import ear from 'rabbit-ear';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/emit/emitter.js';
import { fold } from '../../../src/folding/fold.js';
import { flatten } from '../../../src/plane/path.js';
import { distance } from '../../../src/plane/point.js';
import { area } from '../../../src/plane/polygon.js';
import { anyEnvelope } from '../../support/arbitraries.js';
import { compileText } from '../../support/compile-text.js';
import { creasePattern } from '../../support/crease-pattern.js';
import { envelope } from '../../support/envelopes.js';
import { copyOf, type FoldFrame, facesOf, foldFile, pointOf } from '../../support/fold-file.js';
import { expectFlatFoldable } from '../../support/inner-vertices.js';
import { specJobs } from '../../support/spec-jobs.js';

type Subject = Pick<Job, 'envelope' | 'folding'>;

/** Arcs come as chords no further off than this, in mm. */
const FLATNESS = 0.001;

/** What holds for the graph of every sheet in one piece, without a hole. */
const LAWS: Readonly<Record<string, (flat: FoldFrame, subject: Subject) => void>> = {
  'vertices less edges plus faces is 1 (Euler, for a disc)': ({
    vertices_coords,
    edges_vertices,
    faces_vertices,
  }) => expect(vertices_coords.length - edges_vertices.length + faces_vertices.length).toBe(1),

  'every list of edges or faces is as long as every other': (flat) => {
    for (const [key, value] of Object.entries(flat)) {
      if (key.startsWith('edges_')) expect(value).toHaveLength(flat.edges_vertices.length);
      if (key.startsWith('faces_')) expect(value).toHaveLength(flat.faces_vertices.length);
    }
  },

  'the faces are counter-clockwise and together as large as the blank as cut': (flat, { folding }) => {
    const areas = facesOf(flat).map(area);
    expect(Math.min(...areas)).toBeGreaterThan(0);
    const whole = area(flatten(folding.cutOutline, FLATNESS));
    expect(Math.abs(areas.reduce((sum, each) => sum + each, 0) - whole)).toBeLessThan(1e-2);
  },

  'the boundary is one closed loop': ({ edges_vertices, edges_assignment }) => {
    const boundary = edges_vertices.filter((_, edge) => edges_assignment[edge] === 'B');
    const start = boundary[0]?.[0];
    let [at, left] = [start, boundary];
    for (let step = 0; step < boundary.length; step++) {
      const next = left.filter((ends) => ends.includes(at ?? -1));
      expect(next).toHaveLength(step === 0 ? 2 : 1);
      const [edge] = next;
      at = edge?.find((end) => end !== at);
      left = left.filter((other) => other !== edge);
      if (step < boundary.length - 1) expect(at).not.toBe(start);
    }
    expect(at).toBe(start);
  },

  'a valley’s angle is positive, a mountain’s negative, a boundary’s 0': (flat, { folding }) => {
    const full = folding.made.depth > 0 ? 90 : 180;
    const angles = { V: full, M: -full, B: 0 };
    expect(flat.edges_foldAngle).toEqual(flat.edges_assignment.map((assignment) => angles[assignment]));
  },

  'each score is there from end to end': (flat, { folding }) => {
    for (const flap of ['left', 'right', 'seal', 'bottom']) {
      for (const score of ['first', 'second']) {
        const drawn = flat.edges_vertices.flatMap(([from, to], edge) =>
          flat['edges_plica:flap'][edge] === flap && flat['edges_plica:score'][edge] === score
            ? distance(pointOf(flat.vertices_coords[from] ?? []), pointOf(flat.vertices_coords[to] ?? []))
            : [],
        );
        const scored = folding.creases.flatMap(({ from, to, ...crease }) =>
          crease.flap === flap && crease.order === score ? distance(from, to) : [],
        );
        expect(drawn.length).toBeGreaterThanOrEqual(scored.length);
        expect(sum(drawn)).toBeCloseTo(sum(scored), 4);
      }
    }
  },

  // The outline and the creases, drawn and split where they meet by the library, against the pieces joined by us.
  'the format’s own library finds the same vertices, edges and faces from the lines alone': (
    flat,
    { folding },
  ) => {
    const split = creasePattern(folding, FLATNESS);
    expect(split.vertices_coords).toHaveLength(flat.vertices_coords.length);
    const ours = split.vertices_coords.map(([x, y]) =>
      flat.vertices_coords.findIndex(([a = 0, b = 0]) => Math.hypot(a - x, b - y) < 1e-4),
    );
    expect(ours).not.toContain(-1);
    const edges = ({ edges_vertices, edges_assignment }: typeof split | FoldFrame, ids?: readonly number[]) =>
      edges_vertices
        .map(([a, b], edge) => {
          const ends = [ids?.[a] ?? a, ids?.[b] ?? b].sort((one, other) => one - other);
          return `${ends.join(' ')} ${edges_assignment[edge]}`;
        })
        .sort();
    expect(edges(split, ours)).toEqual(edges(flat));
    const faces = (lists: readonly (readonly number[])[]) => lists.map(fromLeast).sort();
    expect(faces((split.faces_vertices ?? []).map((face) => face.map((id) => ours[id] ?? -1)))).toEqual(
      faces(flat.faces_vertices),
    );
  },

  'the format’s own library walks the same faces from our edges': (flat) => {
    const { faces_vertices: _, ...edges } = copyOf(flat);
    const walked = edges as typeof edges & { faces_vertices: number[][] };
    FOLD.convert.edges_vertices_to_faces_vertices(walked);
    expect(walked.faces_vertices.map(fromLeast).sort()).toEqual(flat.faces_vertices.map(fromLeast).sort());
  },

  'an origami library finds nothing wrong with it': (flat) =>
    expect(ear.graph.validate(ear.graph.populate(copyOf(flat))).summary).toBe('valid'),

  'Kawasaki and Maekawa hold at every vertex inside the paper': (flat) => expectFlatFoldable(flat),
};

const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0);

/** A face's vertices from the least on, so that two can be compared. */
function fromLeast(face: readonly number[]): string {
  const start = face.indexOf(Math.min(...face));
  return [...face.slice(start), ...face.slice(0, start)].join(' ');
}

describe.each(Object.entries(LAWS))('%s', (_, law) => {
  test.each(Object.entries(specJobs()))('%s', (_name, subject) => law(foldFile(subject).flat, subject));
});

test('all of it holds whatever the envelope', () => {
  fc.assert(
    fc.property(anyEnvelope, (envelope) => {
      const subject = { envelope, folding: fold(envelope) };
      const { flat } = foldFile(subject);
      for (const law of Object.values(LAWS)) law(flat, subject);
    }),
    { seed: 21, numRuns: 200 },
  );
});

test('the whole blank’s area is that of the facts, true arcs and all', () => {
  for (const { envelope, folding, facts } of Object.values(specJobs())) {
    const flat = sum(facesOf(foldFile({ envelope, folding }).flat).map(area));
    // Flattened arcs lie within 0.01 mm of the true ones, on either side.
    expect(Math.abs(flat - facts.area)).toBeLessThan(1);
  }
});

/*
 * A blank of 100 mm whose marks meet on its edges, so that the face's corners touch them: no ease, no seam. By hand: the
 * sheet's corners and the face's make 8 vertices; each side of the sheet is two edges, and the face has four: 12; four
 * triangles and the face: 5.
 */
const wrapped = (side: number, end: number) => `units mm

envelope wrapped {
  card: ${face(side, end)}
  ease: 0
  blank: 100
  side-mark: ${side}
  seal-mark: ${end}
  bottom-mark: ${end}
  corners: folded
  flap: pointed
  bottom: pointed
  sides: pointed
}
`;

/** (W + H)/√2 = 100: marks of 60 and 40 leave W = 100√2 − 2·60/√2 = 56.57 and H = 84.85. */
const face = (side: number, end: number): string =>
  [side, end].map((mark) => (100 * Math.SQRT2 - mark * Math.SQRT2).toFixed(1)).join(' x ');

test.each([
  ['a rectangle', 60, 40],
  ['a square: the blintz fold', 50, 50],
])(
  'plainly wrapped, %s whose corners touch the sheet’s edges has 8 vertices, 12 edges, 5 faces',
  (_, side, end) => {
    const [recipe] = compileText(wrapped(side, end)).recipes;
    if (!recipe) throw new Error('no recipe');
    const { flat } = foldFile(recipe);
    expect(flat.vertices_coords).toHaveLength(8);
    expect(flat.edges_assignment.toSorted().join('')).toBe('BBBBBBBBVVVV');
    expect(flat.faces_vertices.map(({ length }) => length).toSorted()).toEqual([3, 3, 3, 3, 4]);
  },
);

test('where scores meet on the blank’s edge but for a nanometre, one way or the other, an ear is no face', () => {
  const folded = { bottom: 'folded', seal: 'folded' } as const;
  for (let width = 100; width < 120; width++) {
    const made = envelope({ face: { width, height: 80 }, seam: 0, step: 1e-6, corners: folded });
    const { flat } = foldFile({ envelope: made, folding: fold(made) });
    const counts = [flat.vertices_coords, flat.edges_vertices, flat.faces_vertices].map(
      ({ length }) => length,
    );
    expect(counts).toEqual([8, 12, 5]);
  }
});
