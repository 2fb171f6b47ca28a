/* Where creases cross inside the paper, the theory of flat folding is kept: the theorems of Kawasaki and Maekawa. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { creasePattern } from '../support/crease-pattern.js';
import { envelope } from '../support/envelopes.js';
import { expectFlatFoldable, innerVertices } from '../support/inner-vertices.js';

const folded = { bottom: 'folded', seal: 'folded' } as const;

test('four creases meet where an ear is kept: three valleys and one mountain', () => {
  const vertices = innerVertices(creasePattern(fold(envelope({ corners: folded }))));
  expect(vertices).toHaveLength(4);
  for (const around of vertices)
    expect(
      around
        .map(({ sense }) => sense)
        .sort()
        .join(''),
    ).toBe('MVVV');
});

test('a notched corner leaves no vertex inside the paper', () => {
  const notched = { bottom: 'notched', seal: 'notched' } as const;
  expect(innerVertices(creasePattern(fold(envelope({ corners: notched }))))).toEqual([]);
});

test('the usual envelope keeps its two lower ears and no others', () => {
  expect(innerVertices(creasePattern(fold(envelope({}))))).toHaveLength(2);
});

test('without seam the face’s corners lie on the blank’s edges: no vertex, four valleys, no odd crease', () => {
  const bareMinimum = fold(envelope({ seam: 0, step: 1e-6, corners: folded }));
  expect(innerVertices(creasePattern(bareMinimum))).toEqual([]);
});

test('Kawasaki and Maekawa hold at every crossing, whatever the proportions', () => {
  fc.assert(
    fc.property(anyEnvelope, (any) => expectFlatFoldable(creasePattern(fold(any)))),
    { seed: 2, numRuns: 100 },
  );
});
