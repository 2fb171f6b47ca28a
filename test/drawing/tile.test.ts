/* Pages that overlap: they show everything, meet in numbered crosses, and empty ones are left out. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { segmentsOf } from '../../src/drawing/box.js';
import { type Drawing, line, rectangle } from '../../src/drawing/drawing.js';
import { stretches } from '../../src/drawing/stretches.js';
import { OVERLAP, rowName, tile } from '../../src/drawing/tile.js';

const square = (side: number): Drawing => [rectangle('cut', 0, 0, side, side)];

test('a drawing smaller than a page takes one, and lies in its middle', () => {
  const { tiles } = tile(square(100), { x: 0, y: 0, width: 100, height: 100 }, { width: 190, height: 240 });
  expect(tiles.map(({ name, window }) => ({ name, window }))).toEqual([
    { name: 'A1', window: { x: -45, y: -70, width: 190, height: 240 } },
  ]);
  expect(tiles[0]?.joins).toEqual([]);
});

test('pages are named by row from the top and column from the left', () => {
  const { tiles, rows, columns } = tile(
    square(280),
    { x: 0, y: 0, width: 280, height: 280 },
    { width: 190, height: 240 },
  );
  expect([rows, columns]).toEqual([2, 2]);
  expect(tiles.map(({ name }) => name)).toEqual(['A1', 'A2', 'B1', 'B2']);
  const [a1, a2, b1] = tiles;
  expect((a2?.window.x ?? 0) - (a1?.window.x ?? 0)).toBe(190 - OVERLAP);
  expect((a1?.window.y ?? 0) - (b1?.window.y ?? 0)).toBe(240 - OVERLAP);
});

test('rows beyond the alphabet go on with two letters', () => {
  expect([0, 25, 26, 27, 52].map(rowName)).toEqual(['A', 'Z', 'AA', 'AB', 'BA']);
});

test('a page on which no line falls is left out', () => {
  // A frame of 800 mm: of four by four pages, the inner ones see only paper.
  const { tiles, rows, columns } = tile(
    square(800),
    { x: 0, y: 0, width: 800, height: 800 },
    { width: 220, height: 220 },
  );
  expect([rows, columns, tiles.length]).toEqual([4, 4, 12]);
  expect(tiles.map(({ name }) => name)).not.toContain('B2');
});

test('neighbours share each cross: same number, same place', () => {
  const { tiles } = tile(square(280), { x: 0, y: 0, width: 280, height: 280 }, { width: 190, height: 240 });
  const crosses = tiles.flatMap(({ name, joins }) =>
    joins.flatMap(({ shape }) =>
      shape.kind === 'text' ? [{ number: shape.text, at: JSON.stringify(shape.at), name }] : [],
    ),
  );
  const numbers = [...new Set(crosses.map(({ number }) => number))];
  // Four joins, two crosses each.
  expect(numbers.length).toBe(8);
  for (const number of numbers) {
    const same = crosses.filter((cross) => cross.number === number);
    expect(same.length).toBe(2);
    expect(new Set(same.map(({ at }) => at)).size).toBe(1);
  }
});

test('crosses stand clear of the drawing where they can', () => {
  // A line across where the first cross on the join would stand, a quarter of the way down.
  const content = { x: 0, y: 0, width: 280, height: 200 };
  const drawing = [rectangle('cut', 0, 0, 280, 200), line('score', { x: 0, y: 160 }, { x: 280, y: 160 })];
  const { tiles } = tile(drawing, content, { width: 190, height: 240 });
  const marks =
    tiles[0]?.joins.filter(({ layer }) => layer === 'mark').flatMap(({ shape }) => segmentsOf(shape)) ?? [];
  expect(marks.length).toBe(4);
  for (const { from, to } of marks) {
    expect(Math.min(from.y, to.y) > 160 || Math.max(from.y, to.y) < 160).toBe(true);
  }
});

test('stretches cover a length, overlap, and are as few as can be', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 3000, noNaN: true }),
      fc.double({ min: 40, max: 600, noNaN: true }),
      (length, longest) => {
        const parts = stretches(length, longest, 10);
        expect(parts[0]?.from).toBe(0);
        expect(parts.at(-1)?.to).toBeGreaterThanOrEqual(length - 1e-6);
        for (const [index, part] of parts.entries()) {
          expect(part.to - part.from).toBeLessThanOrEqual(longest + 1e-9);
          if (index > 0) expect((parts[index - 1]?.to ?? 0) - part.from).toBeCloseTo(10, 9);
        }
        // One fewer would not reach.
        expect((parts.length - 1) * (longest - 10) + 10).toBeLessThan(Math.max(length, 11) + 1e-6);
      },
    ),
    { seed: 1 },
  );
});
