import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alternatives, applyHelp } from '../support/apply-help.js';
import { compileText } from '../support/compile-text.js';

/** A line of a recipe that is often left out. */
const maybe = (name: string, value: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc.option(value, { freq: 3, nil: null }).map((text) => (text === null ? '' : `  ${name}: ${text}\n`));

const mm = (min: number, max: number): fc.Arbitrary<string> =>
  fc.integer({ min: min * 2, max: max * 2 }).map((halves) => `${halves / 2}`);

const shape = fc.oneof(
  fc.constant('pointed'),
  mm(3, 120).map((radius) => `rounded ${radius}`),
  mm(3, 80).map((cut) => `blunt ${cut}`),
  fc.tuple(mm(3, 80), mm(1, 30)).map(([cut, radius]) => `blunt ${cut} rounded ${radius}`),
);

/** What one block may say of an envelope, right or wrong; never one thing twice. */
const statements = fc
  .tuple(
    fc.oneof(maybe('blank', mm(150, 260)), maybe('seam', mm(0, 25))),
    fc.oneof(
      maybe('ease', mm(0, 12)),
      maybe(
        'face',
        fc.tuple(mm(100, 180), mm(80, 140)).map((two) => two.join(' x ')),
      ),
    ),
    maybe('depth', mm(0, 20)),
    maybe('bulk', mm(0, 20)),
    fc.oneof(maybe('shift', mm(0, 12)), maybe('seal-mark', mm(80, 160)), maybe('side-mark', mm(80, 130))),
    maybe('flap', shape),
    maybe('bottom', shape),
    maybe('sides', shape),
    maybe('corners', fc.constantFrom('folded', 'notched', 'folded, notched')),
    maybe('opens', fc.constantFrom('side', 'end')),
    maybe('tape', mm(3, 15)),
  )
  .map((lines) => lines.join(''));

const card = fc
  .tuple(fc.integer({ min: 60, max: 170 }), fc.integer({ min: 60, max: 130 }))
  .map(([width, height]) => `  card: ${width} x ${height}\n`);

/** An envelope like a style, each saying something. */
const recipe = fc
  .tuple(statements, card, statements)
  .map(
    ([style, size, own]) =>
      `units mm\nstyle house {\n${style}}\nenvelope tide-card like house {\n${size}${own}}\n`,
  );

test('whatever a recipe says, what a finding’s help says mends it', () => {
  let offered = 0;
  fc.assert(
    fc.property(recipe, (text) => {
      const [compiled] = compileText(text).recipes;
      for (const { problem, message, help } of compiled?.diagnostics ?? []) {
        for (const way of alternatives(help ?? '').filter((words) => /write `|leave `/.test(words))) {
          offered++;
          const mended = compileText(applyHelp(text, 'tide-card', way));
          expect(mended.recipes, way).toHaveLength(1);
          const same = mended.diagnostics.filter(
            (found) => found.problem === problem && found.message === message,
          );
          expect(same.map(({ message }) => `${message}, after: ${way}`)).toEqual([]);
        }
      }
    }),
    { seed: 11, numRuns: 25 },
  );
  expect(offered).toBeGreaterThan(40);
}, 180_000);
