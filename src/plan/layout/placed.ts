import type { Size } from '../../recipe/recipe.js';
import { type Layout, remainderOf, withSide } from './layout.js';

/** A piece or an offcut where it lies on the sheet: (x, y) is its corner nearest the sheet's own, in mm. */
export interface Placed extends Size {
  readonly x: number;
  readonly y: number;
  readonly is: Exclude<Layout, { readonly kind: 'division' }>;
}

/** Where everything lies: strips one beside the other, from one corner of the sheet on. */
export function placed(layout: Layout, size: Size, x = 0, y = 0): readonly Placed[] {
  if (layout.kind !== 'division') return [{ ...size, x, y, is: layout }];
  const { divides, at, times, each, remainder } = layout;
  const beside = (part: Layout, partSize: Size, offset: number): readonly Placed[] =>
    divides === 'width' ? placed(part, partSize, x + offset, y) : placed(part, partSize, x, y + offset);
  return [
    ...Array.from({ length: times }, (_, index) =>
      beside(each, withSide(size, divides, at), index * at),
    ).flat(),
    ...(remainder === null ? [] : beside(remainder, remainderOf(size, layout), times * at)),
  ];
}
