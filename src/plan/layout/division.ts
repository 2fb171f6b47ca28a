import type { Size } from '../../recipe/recipe.js';
import { type Division, type Layout, NOISE, remainderOf } from './layout.js';

const REST: Layout = { kind: 'rest' };

/** Divides a rectangle; what remains is laid out by `fillRemainder`. A single part as large as the rectangle is the part itself. */
export function divide(
  size: Size,
  cut: Omit<Division, 'each' | 'remainder' | 'kind'>,
  each: Layout,
  fillRemainder: (remainder: Size) => Layout = () => REST,
): Layout {
  const remainder = remainderOf(size, cut);
  const isWhole = remainder[cut.divides] <= NOISE;
  if (isWhole && cut.times === 1) return each;
  return { kind: 'division', ...cut, each, remainder: isWhole ? null : fillRemainder(remainder) };
}
