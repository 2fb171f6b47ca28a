import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeLeaf } from '../../../src/emit/catalogue/leaf/make-leaf.js';
import { LEAF, type Leaf } from '../../../src/emit/catalogue/leaf.js';
import type { Item, Run } from '../../../src/emit/catalogue/page.js';
import { fontMeasure } from '../../../src/emit/font-measure.js';
import { BOOK_OPTIONS, MANY_KINDS } from '../../support/book.js';
import { compileText } from '../../support/compile-text.js';

const measure = await fontMeasure(BOOK_OPTIONS);
const leavesOf = (text: string): readonly Leaf[] =>
  compileText(text)
    .recipes.filter(({ diagnostics }) => diagnostics.every(({ severity }) => severity !== 'error'))
    .map((recipe) => makeLeaf(recipe, measure));

/** Every line of text of an item, whatever its role. */
function runsOf(item: Item): readonly Run[] {
  if (item.role === 'Table') return item.rows.flat().flatMap(({ runs }) => runs);
  if (item.role === 'TOC') return item.items.flatMap(({ runs }) => runs);
  if (item.role === 'L')
    return item.items.flatMap(({ label, body }) => [...(label?.runs ?? []), ...body.runs]);
  return item.runs;
}

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The boxes of the level lines that stand in the text, and not in a picture. */
const boxes = (page: readonly Item[]): readonly Box[] =>
  page
    .filter(({ role }) => role !== 'Figure')
    .flatMap(runsOf)
    .map(({ text, x, y, size, weight }) => ({
      text,
      left: x,
      right: x + measure(text, size, weight),
      bottom: y - 0.2 * size,
      top: y + 0.66 * size,
    }));

/** What is wrong with a leaf's pages: what leaves its box, and what lies on other text. */
function faults({ pages }: Leaf): readonly string[] {
  return pages.flatMap((page) => {
    const all = boxes(page);
    const outside = all.filter(
      ({ left, right, bottom, top }) =>
        left < -0.5 || right > LEAF.width + 0.5 || bottom < -2.5 || top > LEAF.height + 0.5,
    );
    const overlapping = all.flatMap((one, index) =>
      all
        .slice(index + 1)
        .filter(
          (other) =>
            one.left < other.right - 0.5 &&
            other.left < one.right - 0.5 &&
            one.bottom < other.top - 0.5 &&
            other.bottom < one.top - 0.5,
        )
        .map((other) => `${one.text} lies on ${other.text}`),
    );
    return [...outside.map(({ text }) => `${text} leaves the leaf`), ...overlapping];
  });
}

test('a recipe’s leaf is one page in the ordinary case, within its box, nothing on anything', () => {
  const leaves = leavesOf(MANY_KINDS);
  expect(leaves.map(({ pages }) => pages.length)).toEqual([1, 1, 1, 1, 1]);
  expect(leaves.flatMap(faults)).toEqual([]);
});

test('so it is for any size, depth, opening and units', () => {
  fc.assert(
    fc.property(
      fc.record({
        width: fc.integer({ min: 50, max: 400 }),
        height: fc.integer({ min: 40, max: 300 }),
        depth: fc.integer({ min: 0, max: 12 }),
        opens: fc.constantFrom('side', 'end'),
        units: fc.constantFrom('mm', 'in', 'cm'),
        title: fc.string({ maxLength: 200 }),
      }),
      ({ width, height, depth, opens, units, title }) => {
        const deep = depth > 2 ? `  depth: ${depth} mm\n  bulk: ${depth - 2} mm\n` : '';
        const quoted = title.replaceAll(/["\\\r\n]/g, ' ').replaceAll(/\p{C}/gu, ' ');
        const text = `units ${units}\nenvelope tide {\n  title: "${quoted}"\n  card: ${width} mm x ${height} mm\n  opens: ${opens}\n${deep}}\n`;
        expect(leavesOf(text).flatMap(faults)).toEqual([]);
      },
    ),
    { numRuns: 60, seed: 1 },
  );
});

test('notes of any length flow onto further pages, and no word of them is lost', () => {
  const words = Array.from({ length: 900 }, (_, index) => `word${index}`);
  const [leaf] = leavesOf(
    `units mm\nenvelope tide {\n  note: "${words.join(' ')}", "The last note."\n  card: A6\n}\n`,
  );
  if (!leaf) throw new Error('no leaf');
  expect(leaf.pages.length).toBeGreaterThan(1);
  expect(faults(leaf)).toEqual([]);
  const said = leaf.pages
    .flat()
    .flatMap(runsOf)
    .map(({ text }) => text)
    .join(' ');
  expect(words.filter((word) => !said.includes(`${word} `))).toEqual([]);
  expect(said).toContain('The last note.');
});

test('every mark stands beside the drawing, in both systems; of a box the second too', () => {
  const [flat, , box] = leavesOf(MANY_KINDS);
  const said = (leaf: Leaf | undefined) =>
    leaf?.pages
      .flat()
      .flatMap(runsOf)
      .map(({ text }) => text) ?? [];
  // 5 1/16 and 7 3/16 in from the corners: worked by hand for the half-letter card (geometry of the diagonal fold).
  expect(said(flat)).toEqual(
    expect.arrayContaining([
      'Sides',
      '5\u202f1\u204416 in',
      '128.6 mm',
      'Seal',
      '7\u202f3\u204416 in',
      '182.6 mm',
    ]),
  );
  expect(said(box)).toEqual(expect.arrayContaining(['Sides, 2nd', 'Seal, 2nd', 'Bottom, 2nd']));
});

test('it is plain data: JSON keeps all of it, and no place in a file', () => {
  for (const leaf of leavesOf(MANY_KINDS)) {
    const text = JSON.stringify(leaf);
    expect(JSON.parse(text)).toEqual(leaf);
    expect(text).not.toMatch(/recipe\.plica|"line":|"span":/);
    expect(text.length).toBeLessThan(150_000);
  }
});

test('its source is the statement as written', () => {
  expect(leavesOf('units mm\n\n# about it\nenvelope tide { card: A6 } # and after\n')[0]?.source).toBe(
    'envelope tide { card: A6 }',
  );
});
