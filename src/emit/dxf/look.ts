import type { Layer } from '../../drawing/drawing.js';
import { INKS } from '../../drawing/inks.js';
import { LINE_KINDS } from '../../drawing/line-kinds.js';
import { indexColour } from './index-colour.js';
import { lineWeight } from './line-weight.js';

/** How lines are drawn, in the format's terms. */
export interface Look {
  /** Name of a line type. */
  readonly lineType: string;
  /** In 1/100 mm. */
  readonly weight: number;
  /** Index of a standard colour. */
  readonly colour: number;
  /** The colour itself, a byte each of red, green and blue, for readers that know it. */
  readonly trueColour?: number;
}

/** The line type without dashes; every file has it. */
const CONTINUOUS = 'Continuous';

/** The index of what stands out from the ground: black on white, white on black. */
const FOREGROUND = 7;

/** The look of a layer's lines. A line type with dashes is named like the layer. */
export function lookOf(layer: Layer): Look {
  const { width, dashes, ink } = LINE_KINDS[layer];
  const lines = { lineType: dashes.length > 0 ? layer : CONTINUOUS, weight: lineWeight(width) };
  if (ink === INKS.black) return { ...lines, colour: FOREGROUND };
  const trueColour = Number.parseInt(ink.screen.slice(1), 16);
  return { ...lines, colour: indexColour(trueColour), trueColour };
}
