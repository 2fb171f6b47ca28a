import { copiesOf } from '../folding/copies.js';
import type { Units } from '../measure/unit.js';
import type { Size } from '../recipe/recipe.js';
import { sizeNamed, sizeNames } from '../stock/sizes.js';
import type { Served, Shape, SheetFit } from './fit.js';
import { largestCard } from './largest-card.js';
import type { Made } from './taken-by.js';
import { type Try, passes, recipeText, type Wish } from './wish.js';

/** Cards between these sides are looked up by name, in mm: smaller ones are no cards, larger ones no envelopes. */
const LEAST_SIDE = 50;
const MOST_SIDE = 500;

/** Shapes that cards commonly have (common practice, no source). */
export const SHAPES: readonly Shape[] = [
  { name: 'square', ratio: 1 },
  { name: '5 : 7', ratio: 7 / 5 },
  { name: 'ISO, 1 : √2', ratio: Math.SQRT2 },
  { name: 'half letter', ratio: 8.5 / 5.5 },
  { name: 'long, 99 : 210', ratio: 210 / 99 },
];

/** What can be made from a sheet: the largest card of each shape, the named sizes, and recipes that are there already. */
export function fitSheet(
  sheet: Size,
  {
    units,
    depth,
    shapes,
  }: { readonly units: Units; readonly depth: number; readonly shapes: readonly Shape[] },
  recipes: readonly Made[],
  attempt: Try,
): SheetFit {
  return {
    kind: 'sheet',
    units,
    sheet,
    depth,
    largest: shapes.map((shape) => ({
      shape,
      found: largestCard({ units, sheet, ratio: shape.ratio, depth }, attempt),
    })),
    sizes: namedSizes(sheet, units, depth, attempt),
    recipes: recipes
      .map(({ envelope: { name }, facts: { blank } }) => ({ name, blank, copies: copiesOf(blank, sheet) }))
      .filter(({ copies }) => copies > 0),
  };
}

function namedSizes(sheet: Size, units: Units, depth: number, attempt: Try): readonly Served[] {
  const cards = [...new Set(sizeNames())].flatMap((name) => sizeNamed(name) ?? []);
  return cards
    .filter(({ name, short, long }) => short >= LEAST_SIDE && long <= MOST_SIDE && !name.startsWith('iso-'))
    .flatMap(({ name, short, long }): readonly Served[] => {
      const wish: Wish = {
        units,
        card: { width: long, height: short },
        sheet,
        ...(depth > 0 ? { depth } : {}),
      };
      const tried = attempt(recipeText(wish));
      if (!passes(tried)) return [];
      return [{ name, wish, tried, copies: copiesOf(tried.facts.blank, sheet) }];
    })
    .sort((one, other) => areaOf(other.wish.card) - areaOf(one.wish.card));
}

const areaOf = ({ width, height }: Size): number => width * height;
