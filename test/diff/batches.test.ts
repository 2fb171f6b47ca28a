import { expect, test } from 'vitest';
import { plica } from '../support/command-line.js';

const RECIPES = `units in

paper kraft { sheet: 25 x 38 }

envelope half-letter {
  card: 8 1/2 x 5 1/2
  paper: kraft
}
`;
const SPRING = `${RECIPES}
batch spring {
  spoilage: 5%
  make: half-letter 40
}
`;

const compare = (before: string, after: string, how = '') =>
  plica(`diff old.plica new.plica ${how}`, { files: { 'old.plica': before, 'new.plica': after } });

test('what a batch asks for is a change of its own, and of no envelope', async () => {
  const { code, out } = await compare(SPRING, SPRING.replace('half-letter 40', 'half-letter 50 on kraft'));
  expect(code).toBe(1);
  expect(out).toContain('batch spring: changed');
  expect(out).toContain('make  half-letter 40 → half-letter 50 on kraft');
  expect(out).toMatch(/\n1 batch changed\n$/);
});

test('another spelling of the same is no change', async () => {
  const spelt = SPRING.replace('5%', '1/20').replace('half-letter 40', 'half-letter (2 * 20)');
  expect(await compare(SPRING, spelt)).toMatchObject({ code: 0, out: 'Nothing changed\n' });
});

test('a batch that comes or goes is told as added or removed', async () => {
  expect((await compare(RECIPES, SPRING)).out).toContain('batch spring: added');
  expect((await compare(SPRING, RECIPES)).out).toContain('batch spring: removed');
});

test('one with a mistake in it is not told as gone', async () => {
  const { out } = await compare(SPRING, SPRING.replace('make: half-letter', 'make: half-leter'));
  expect(out).not.toContain('batch spring');
});

test('it counts where every difference does, not where some are asked for', async () => {
  const other = SPRING.replace('40', '41');
  expect((await compare(SPRING, other)).code).toBe(1);
  expect((await compare(SPRING, other, '--fail-on recut,rescore')).code).toBe(0);
});

test('in a review, on a page and for programs', async () => {
  const other = SPRING.replace('40', '41');
  expect((await compare(SPRING, other, '--format markdown')).out).toContain('### Batch `spring`: changed');
  expect((await compare(SPRING, other, '--format html')).out).toContain('Batch <code>spring</code>');
  const { batches } = JSON.parse((await compare(SPRING, other, '--format json')).out);
  expect(batches).toMatchObject([{ kind: 'changed', name: 'spring', written: [{ property: 'make' }] }]);
});
