import type { Item, Strip } from './strip.js';
import { BASELINE, type Style } from './type.js';

/** Words that begin at x, on the baseline of the first line of a strip. */
export const words = (text: string, x: number, style: Style): Item => ({
  kind: 'words',
  x,
  y: style.leading * BASELINE,
  text,
  style,
});

/** A strip one line high. */
export const lineStrip = (items: readonly Item[], { leading }: Style): Strip => ({
  above: 0,
  height: leading,
  items,
  keepsWithNext: false,
});
