/* Whatever the recipe, its pictures can be drawn: a cut sheet says what is wrong beside them. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import type { Figure } from '../../src/drawing/figure.js';
import { stepStrip } from '../../src/drawing/step-strip.js';
import { summaryCard } from '../../src/drawing/summary-card.js';
import { fold } from '../../src/folding/fold.js';
import { nonsense } from '../support/arbitraries.js';
import { envelope } from '../support/envelopes.js';

const measure = (text: string, size: number): number => text.length * size * 0.5;

test('any blank and any marks, sense or nonsense, are drawn at finite places', () => {
  fc.assert(
    fc.property(nonsense, fc.constantFrom('glue', 'tuck', 'seal'), (wishes, fasten) => {
      const wished = envelope({ ...wishes, fasten });
      const folding = fold(wished);
      expectFinite(stepStrip(folding, wished, 180, measure));
      expectFinite(summaryCard({ folding, envelope: wished }, measure));
    }),
    { seed: 6, numRuns: 150 },
  );
});

function expectFinite({ drawing, width, height }: Figure): void {
  const points = drawing.flatMap(({ shape }) =>
    shape.kind === 'text' ? [shape.at] : segmentsOf(shape).flatMap(({ from, to }) => [from, to]),
  );
  const numbers = [width, height, ...points.flatMap(({ x, y }) => [x, y])];
  expect(numbers.filter((each) => !Number.isFinite(each))).toEqual([]);
}
