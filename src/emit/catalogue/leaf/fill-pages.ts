import type { Item } from '../page.js';
import { HEIGHT } from './sizes.js';
import type { Strip } from './strip.js';

/** Between two strips, in mm. */
const GAP = 3.2;

/** Strips one below the other, page after page. One is never split, and the tallest is no taller than a page. */
export function fillPages(strips: readonly Strip[]): readonly (readonly Item[])[] {
  const pages: Item[][] = [[]];
  let down = 0;
  for (const { height, items } of strips) {
    if (down > 0 && down + GAP + height > HEIGHT) {
      pages.push([]);
      down = 0;
    }
    const top = down === 0 ? 0 : down + GAP;
    pages.at(-1)?.push(...items({ x: 0, y: HEIGHT - top }));
    down = top + height;
  }
  return pages;
}
