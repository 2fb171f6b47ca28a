import type { Drawing } from '../drawing.js';
import type { TextMeasure } from '../text-measure.js';

/** With what a stage is drawn: lettering, ticks and hatching keep their size on the page. */
export interface Pen {
  /** How large the paper is drawn: 0.1 is a tenth. */
  readonly scale: number;
  readonly measure: TextMeasure;
}

/** A moment of the work. */
export interface Stage {
  readonly caption: string;
  /** Stages of one kind are drawn to one scale. */
  readonly seen: 'from above' | 'obliquely';
  /** In mm of paper, about any origin, y up. */
  readonly draw: (pen: Pen) => Drawing;
}

export const fromAbove = (caption: string, draw: Stage['draw']): Stage => ({
  caption,
  seen: 'from above',
  draw,
});
