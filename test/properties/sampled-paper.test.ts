import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../src/folding/fold.js';
import { regionArea } from '../../src/plane/region.js';
import { anyEnvelope } from '../support/arbitraries.js';
import { sampleBack } from '../support/sampled-paper.js';

test('a plain fold of sampled paper agrees on what is bare and how many layers lie on the back', () => {
  fc.assert(
    fc.property(anyEnvelope, (envelope) => {
      const folding = fold(envelope);
      const { made } = folding;
      const sampled = sampleBack(made, envelope.caliper.value, 4000);
      const face = made.face.width * made.face.height;
      const bare = regionArea(folding.bare) / face;
      // A grid of n cells errs by at most the cells that the patch's outline passes: a few rows' worth.
      expect(Math.abs(bare - sampled.bare)).toBeLessThan(8 / Math.sqrt(sampled.points));
      if (bare === 0) expect(sampled.bare).toBe(0);
      expect(folding.layers).toBeGreaterThanOrEqual(sampled.most);
    }),
    { seed: 1, numRuns: 300 },
  );
});
