/* The file as text: the format's names, its numbers, its title. */
import { expect, test } from 'vitest';
import { fold } from '../../../src/emit/fold/fold.js';
import { renderFold } from '../../../src/emit/fold/render-fold.js';
import { emitted } from '../../support/emitted.js';
import { foldFile } from '../../support/fold-file.js';
import { halfLetter, job } from '../../support/jobs.js';
import { specJobs } from '../../support/spec-jobs.js';

const folded = { bottom: 'folded', seal: 'folded' } as const;
const box = job({ depth: 8, corners: { bottom: 'notched', seal: 'notched' } });

test('the file says what it is, as FOLD 1.2 asks', () => {
  const { file_frames: _, ...file } = JSON.parse(renderFold(halfLetter())) as Record<string, unknown>;
  expect(file).toMatchObject({
    file_spec: 1.2,
    file_creator: 'Plica',
    file_title: 'Half-letter card',
    file_classes: ['singleModel'],
    frame_classes: ['creasePattern'],
    frame_unit: 'mm',
  });
});

/** Keys and words of the specification (https://github.com/edemaine/fold, doc/spec.md, version 1.2). */
const KEYS =
  'file_spec file_creator file_author file_title file_description file_classes file_frames frame_author frame_title frame_description frame_classes frame_attributes frame_unit frame_parent frame_inherit vertices_coords vertices_vertices vertices_edges vertices_faces edges_vertices edges_faces edges_assignment edges_foldAngle edges_length faces_vertices faces_edges faces_faces faceOrders edgeOrders'.split(
    ' ',
  );
const ATTRIBUTES =
  '2D 3D abstract manifold nonManifold orientable nonOrientable selfTouching nonSelfTouching selfIntersecting nonSelfIntersecting cuts noCuts joins noJoins convexFaces nonConvexFaces'.split(
    ' ',
  );

test.each(Object.entries(specJobs()))('%s: every key is the format’s, or has a colon', (_, subject) => {
  const { flat, closed } = foldFile(subject);
  const { file_frames } = JSON.parse(renderFold(subject)) as { readonly file_frames: readonly object[] };
  expect(file_frames).toMatchObject([
    { frame_parent: 0, frame_inherit: true, frame_classes: ['foldedForm'] },
  ]);
  const keys = [flat, ...file_frames].flatMap((frame) => Object.keys(frame));
  expect(keys.filter((key) => !KEYS.includes(key) && !key.includes(':'))).toEqual([]);
  const attributes = [flat, closed].flatMap(({ frame_attributes }) => frame_attributes);
  expect(attributes.filter((word) => !ATTRIBUTES.includes(word))).toEqual([]);
});

test('a face is convex but for the round ends of notches, and the file says so', () => {
  expect(foldFile(job({ corners: folded })).flat.frame_attributes).toContain('convexFaces');
  expect(foldFile(box).flat.frame_attributes).toContain('nonConvexFaces');
});

test('numbers have at most six decimals, and no zero is negative', () => {
  for (const subject of [...Object.values(specJobs()), box]) {
    const text = renderFold(subject);
    expect(text.match(/\.\d{7,}|-0\b(?!\.)|\de-\d|NaN|undefined/g) ?? []).toEqual([]);
  }
});

test('a title keeps its quotes, its back slashes and its accents', () => {
  const title = 'Ebb "at" 3\\4 – ﬂood é\t';
  expect(JSON.parse(renderFold(halfLetter({ title })))).toMatchObject({ file_title: title });
});

test('a line holds one vertex, edge or face, and the same envelope gives the same bytes', async () => {
  const text = renderFold(box);
  const { flat, closed } = foldFile(box);
  const rows = flat.vertices_coords.length + flat.edges_vertices.length + flat.faces_vertices.length;
  const more = closed.vertices_coords.length + (closed.faceOrders?.length ?? 0);
  expect(text.match(/^ +\[[-\d.,]+\],?$/gm)).toHaveLength(rows + more);
  expect(text.endsWith('}\n')).toBe(true);
  expect(new TextDecoder().decode(await emitted(fold, box))).toBe(text);
});

test.each([
  ['creases that do not cross', { blank: { width: 150, height: 150 } }],
  ['a blank that is not square', { blank: { width: 190, height: 230 } }],
  ['marks past the middle', { sideMarks: [400, 400] as const }],
  ['a box whose ears are kept', { depth: 8, corners: folded }],
])('an envelope that does not fold, by %s, is a file all the same', (_, wishes) => {
  const { flat, closed } = foldFile(job(wishes));
  const numbers = [flat, closed].flatMap(({ vertices_coords }) => vertices_coords).flat();
  expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
  expect(closed.vertices_coords).toHaveLength(flat.vertices_coords.length);
});
