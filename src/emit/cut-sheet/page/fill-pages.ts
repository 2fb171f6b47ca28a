import { heightOf, type Item, moved, type Strip } from './strip.js';

/**
 * Fills pages of a height with strips, from the top. Strips that keep together go to the next page together, unless
 * no page could hold them. The space above a strip is left out at a page's head.
 */
export function fillPages(strips: readonly Strip[], height: number): readonly (readonly Item[])[] {
  const pages: Item[][] = [[]];
  let y = 0;
  for (const group of groups(strips)) {
    const needed = heightOf(group) + (y > 0 ? (group[0]?.above ?? 0) : 0);
    if (y > 0 && y + needed > height && heightOf(group) <= height) {
      pages.push([]);
      y = 0;
    }
    for (const strip of group) {
      if (y > 0 && y + strip.above + strip.height > height) {
        pages.push([]);
        y = 0;
      }
      const top = y > 0 ? y + strip.above : 0;
      pages.at(-1)?.push(...strip.items.map((item) => moved(item, 0, top)));
      y = top + strip.height;
    }
  }
  return pages;
}

/** Runs of strips of which each but the last keeps with its next. */
function groups(strips: readonly Strip[]): readonly (readonly Strip[])[] {
  const runs: Strip[][] = [];
  let open = false;
  for (const strip of strips) {
    if (open) runs.at(-1)?.push(strip);
    else runs.push([strip]);
    open = strip.keepsWithNext;
  }
  return runs;
}
