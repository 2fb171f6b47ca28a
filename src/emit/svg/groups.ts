import type { Drawing, Layer, Mark } from '../../drawing/drawing.js';
import { lineKindOf } from '../../drawing/line-kinds.js';

/** Marks of one layer that are painted together. */
export interface Group {
  /** The layer's name, numbered from its second group on: `edge`, `edge-2`. */
  readonly id: string;
  readonly layer: Layer;
  readonly marks: readonly Mark[];
}

/**
 * A drawing by layers: one group for each, in the order in which they begin. Surfaces cover what lies below them, so that
 * no mark moves past one: where there are some, a layer may have several groups.
 */
export function groups(drawing: Drawing): readonly Group[] {
  const all: { readonly layer: Layer; readonly marks: Mark[] }[] = [];
  /** The group of the topmost surface: no later mark joins one below it. */
  let top = 0;
  for (const mark of drawing) {
    const surface = isSurface(mark);
    const open = all.slice(surface ? -1 : top).find(({ layer }) => layer === mark.layer);
    if (open) open.marks.push(mark);
    else all.push({ layer: mark.layer, marks: [mark] });
    if (surface) top = all.length - 1;
  }
  return all.map(({ layer, marks }, index) => {
    const before = all.slice(0, index).filter((group) => group.layer === layer).length;
    return { id: before === 0 ? layer : `${layer}-${before + 1}`, layer, marks };
  });
}

const isSurface = (mark: Mark): boolean => mark.shape.kind !== 'text' && lineKindOf(mark).width === 0;
