/*
 * page/: sets the content of a cut sheet in type, and fills pages with it.
 * In: content, the width of a column, a measure of text. Out: words, hairlines and pictures at their places.
 * Refuses to know: pdfkit, and what the words mean. Lengths are in points, y runs down.
 */
import type { Drawing } from '../../../drawing/drawing.js';
import type { Style } from './type.js';

/** A line of words on its baseline, a hairline, or a drawing (in mm, y up from its lower left corner) with its box. */
export type Item =
  | {
      readonly kind: 'words';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly style: Style;
    }
  | { readonly kind: 'hairline'; readonly x: number; readonly y: number; readonly width: number }
  | {
      readonly kind: 'picture';
      readonly x: number;
      readonly y: number;
      readonly height: number;
      readonly drawing: Drawing;
    };

/** A band across a column that is never broken, with the space wanted above it unless it heads a page. */
export interface Strip {
  readonly above: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** Stays on the page of the strip that follows it. */
  readonly keepsWithNext: boolean;
}

export const moved = (item: Item, x: number, y: number): Item => ({ ...item, x: item.x + x, y: item.y + y });

/** How far to the right the hairlines of tables reach. */
export const reach = (strips: readonly Strip[]): number =>
  Math.max(
    0,
    ...strips.flatMap(({ items }) =>
      items.map((item) => (item.kind === 'hairline' ? item.x + item.width : 0)),
    ),
  );

/** The height of strips one under another, the space above the first left out. */
export const heightOf = (strips: readonly Strip[]): number =>
  strips.reduce((sum, { above, height }, index) => sum + height + (index > 0 ? above : 0), 0);

/** Strips one under another as one that is never broken. */
export function stacked(strips: readonly Strip[]): Strip {
  const items: Item[] = [];
  let y = 0;
  strips.forEach((strip, index) => {
    if (index > 0) y += strip.above;
    items.push(...strip.items.map((item) => moved(item, 0, y)));
    y += strip.height;
  });
  return { above: strips[0]?.above ?? 0, height: y, items, keepsWithNext: false };
}

/** Columns side by side as one strip; each begins at its own x. */
export function sideBySide(
  columns: readonly { readonly x: number; readonly strips: readonly Strip[] }[],
): Strip {
  const parts = columns.map(({ x, strips }) => ({ x, strip: stacked(strips) }));
  return {
    above: Math.max(...parts.map(({ strip }) => strip.above)),
    height: Math.max(...parts.map(({ strip }) => strip.height)),
    items: parts.flatMap(({ x, strip }) => strip.items.map((item) => moved(item, x, 0))),
    keepsWithNext: false,
  };
}
