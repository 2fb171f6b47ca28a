import type { Drawing, Weight } from './drawing.js';
import { lettering, line } from './drawing.js';
import { place } from './place.js';
import { CAP_HEIGHT, DESCENT, type TextMeasure, wrap } from './text-measure.js';

/** A piece of a page, hanging from (0, 0) at its upper left corner down to `-height`, in mm. */
export interface Block {
  readonly drawing: Drawing;
  readonly height: number;
}

/** From one baseline to the next, in ems. */
export const LEADING = 1.36;

/** Text set in lines that fit a width; capitals of its first line touch the block's top. */
export function paragraph(
  text: string,
  width: number,
  size: number,
  measure: TextMeasure,
  weight: Weight = 'regular',
): Block {
  const lines = wrap(text, width, size, measure, weight);
  const baseline = (index: number): number => -size * (CAP_HEIGHT + index * LEADING);
  return {
    drawing: lines.map((words, index) => lettering(words, { x: 0, y: baseline(index) }, size, { weight })),
    height: -baseline(lines.length - 1) + size * DESCENT,
  };
}

/** A hairline across. */
export const hairline = (width: number): Block => ({
  drawing: [line('rule', { x: 0, y: 0 }, { x: width, y: 0 })],
  height: 0,
});

/** A drawing that stands on its lower left corner, as a block. */
export const standing = (drawing: Drawing, height: number): Block => ({
  drawing: place(drawing, { y: -height }),
  height,
});

export const indented = ({ drawing, height }: Block, x: number): Block => ({
  drawing: place(drawing, { x }),
  height,
});

/** Blocks one below the other, `gap` mm apart. */
export function stack(gap: number, ...blocks: readonly Block[]): Block {
  let down = 0;
  const drawing = blocks.flatMap((block, index) => {
    if (index > 0) down += gap;
    const placed = place(block.drawing, { y: -down });
    down += block.height;
    return placed;
  });
  return { drawing, height: down };
}

/** Blocks beside each other, their tops level. */
export const beside = (...columns: readonly { readonly x: number; readonly block: Block }[]): Block => ({
  drawing: columns.flatMap(({ x, block }) => place(block.drawing, { x })),
  height: Math.max(...columns.map(({ block }) => block.height)),
});
