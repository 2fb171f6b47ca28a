import type { Segment } from '../plane/point.js';
import type { Size } from '../recipe/recipe.js';
import { type Box, segmentsOf, touches } from './box.js';
import { type Drawing, lettering, line, type Mark } from './drawing.js';
import { stretches } from './stretches.js';
import { CAP_HEIGHT } from './text-measure.js';

/** How far neighbouring pages show the same, in mm. */
export const OVERLAP = 10;

/** One page's part of a drawing. */
export interface Tile {
  /** From 0: rows from the top, columns from the left. */
  readonly row: number;
  readonly column: number;
  /** `A1`: a letter for the row, a number for the column. */
  readonly name: string;
  /** What it shows, in the drawing's frame. */
  readonly window: Box;
  /** The lines along which it meets its neighbours, with numbered crosses, in the drawing's frame. */
  readonly joins: Drawing;
}

/** A drawing as so many pages. */
export interface Tiling {
  readonly rows: number;
  readonly columns: number;
  /** Row by row; those on which no line falls are left out. */
  readonly tiles: readonly Tile[];
}

/**
 * Lays a drawing out over pages that each show a window of it. `content` is what must be shown; the windows are set
 * evenly about it.
 */
export function tile(drawing: Drawing, content: Box, { width, height }: Size): Tiling {
  const lines = drawing.flatMap(({ shape }) => segmentsOf(shape));
  const across = spread(content.x, content.width, width);
  const down = spread(content.y, content.height, height).toReversed();
  const places = down.flatMap((y, row) =>
    across.map((x, column) => ({ row, column, window: { x, y, width, height } })),
  );
  const kept = places.filter((place) => touches(lines, place.window));
  const joins = kept.flatMap((one) =>
    kept.flatMap((other) =>
      isAfter(one, other) ? [{ one, other, side: one.row === other.row ? 'right' : 'below' }] : [],
    ),
  ) as readonly Join[];
  const drawn = joins.map((join, index) => ({ join, marks: joinMarks(lines, join, index * 2 + 1) }));
  return {
    rows: down.length,
    columns: across.length,
    tiles: kept.map((place) => ({
      ...place,
      name: tileName(place.row, place.column),
      joins: drawn
        .filter(({ join }) => join.one === place || join.other === place)
        .flatMap(({ marks }) => marks),
    })),
  };
}

/** `A1`, `A2` … `B1` …; after `Z` comes `AA`. */
export const rowName = (row: number): string =>
  (row >= 26 ? rowName(Math.floor(row / 26) - 1) : '') + String.fromCharCode(65 + (row % 26));

const tileName = (row: number, column: number): string => `${rowName(row)}${column + 1}`;

/** Where windows start, so that together they lie evenly about a stretch. */
function spread(from: number, length: number, window: number): readonly number[] {
  const parts = stretches(length, window, OVERLAP);
  const total = (parts.length - 1) * (window - OVERLAP) + window;
  return parts.map((part) => from - (total - length) / 2 + part.from);
}

interface Place {
  readonly row: number;
  readonly column: number;
  readonly window: Box;
}

/** Two pages side by side, or one below the other. */
interface Join {
  readonly one: Place;
  readonly other: Place;
  readonly side: 'right' | 'below';
}

const isAfter = (one: Place, other: Place): boolean =>
  (other.row === one.row && other.column === one.column + 1) ||
  (other.column === one.column && other.row === one.row + 1);

const CROSS = 3;
const NUMBER = 2.6;

/** Along a join, where crosses are wanted, and where else they may stand if the drawing's lines pass there. */
const CROSS_PLACES: readonly (readonly number[])[] = [
  [0.25, 0.2, 0.3, 0.15, 0.35, 0.4],
  [0.75, 0.8, 0.7, 0.85, 0.65, 0.6],
];

/** The line in the middle of an overlap, and two numbered crosses on it, clear of the drawing where that can be. */
function joinMarks(lines: readonly Segment[], { one, other, side }: Join, number: number): readonly Mark[] {
  const { x, y, width, height } = one.window;
  const upright = side === 'right';
  const middle = upright ? x + width - OVERLAP / 2 : other.window.y + other.window.height - OVERLAP / 2;
  const at = (along: number, off: number) =>
    upright ? { x: middle + off, y: y + height - along } : { x: x + along, y: middle + off };
  const length = upright ? height : width;
  const box = (along: number): Box => {
    const { x: left, y: low } = at(along, 0);
    return { x: left - CROSS, y: low - CROSS, width: 3 * CROSS, height: 3 * CROSS };
  };
  const free = (along: number): boolean => !touches(lines, box(along));
  const crosses = CROSS_PLACES.flatMap((fractions, index): readonly Mark[] => {
    const places = fractions.map((fraction) => fraction * length);
    const along = places.find(free) ?? places[0] ?? 0;
    const centre = at(along, 0);
    const label = { x: centre.x + 1, y: centre.y + CROSS - NUMBER * CAP_HEIGHT };
    return [
      line('mark', { ...centre, x: centre.x - CROSS }, { ...centre, x: centre.x + CROSS }),
      line('mark', { ...centre, y: centre.y - CROSS }, { ...centre, y: centre.y + CROSS }),
      lettering(`${number + index}`, label, NUMBER),
    ];
  });
  return [line('join', at(0, 0), at(length, 0)), ...crosses];
}
