import { expect, test } from 'vitest';
import { fitOf } from '../../../src/emit/catalogue/html/fit-of.js';
import { rowOf } from '../../../src/emit/catalogue/row.js';
import { compileText } from '../../support/compile-text.js';

const held = (recipe: string) => {
  const [made] = compileText(`units mm\n\nenvelope tide {\n${recipe}\n}\n`).recipes;
  if (!made) throw new Error('the recipe is broken');
  const { room, card, depth } = rowOf(made, { file: 'a.plica', leaf: '', pages: 1 });
  return { room, bulk: card.bulk, depth, card };
};

test.each([
  'card: A6',
  'card: 150 x 100\n  bulk: 3',
  'card: A6\n  depth: 8\n  bulk: 6',
  'card: A6\n  opens: end',
])('the card that a recipe is for goes in, either way round: %s', (recipe) => {
  const { card, ...holds } = held(recipe);
  const { width, height, bulk } = card;
  expect(fitOf(holds, { width, height }, bulk)).toMatchObject({ turned: false });
  expect(fitOf(holds, { width: height, height: width }, null)).toMatchObject({ turned: true });
});

test('the room that is left is what the facts call room', () => {
  const [made] = compileText('units mm\nenvelope tide { card: A6 }\n').recipes;
  const { card, ...holds } = held('card: A6');
  expect(fitOf(holds, card, null)?.width).toBeCloseTo(made?.facts.margins.roomWidth ?? Number.NaN, 9);
  expect(fitOf(holds, card, null)?.height).toBeCloseTo(made?.facts.margins.roomHeight ?? Number.NaN, 9);
});

test('a card larger than the room does not go in, nor one thicker than the walls are deep', () => {
  const flat = held('card: A6');
  const { width, height } = flat.room;
  expect(fitOf(flat, { width, height }, null)).not.toBeNull();
  expect(fitOf(flat, { width: width + 0.1, height }, null)).toBeNull();
  const box = held('card: A6\n  depth: 8\n  bulk: 6');
  expect(fitOf(box, box.card, box.room.depth)).not.toBeNull();
  expect(fitOf(box, box.card, (box.room.depth ?? 0) + 0.1)).toBeNull();
});

test('in a flat envelope a thicker card takes room from its width and its height, and soon does not go in', () => {
  const flat = held('card: A6');
  const [thin, thicker] = [1, 1.5].map((thick) => fitOf(flat, flat.card, thick));
  expect((thin?.width ?? 0) - (thicker?.width ?? 0)).toBeCloseTo(0.5, 9);
  expect(fitOf(flat, flat.card, 4)).toBeNull();
});
