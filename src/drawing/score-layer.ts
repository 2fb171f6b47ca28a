import type { Crease } from '../folding/folding.js';
import type { Layer } from './drawing.js';

/** How a crease is drawn on flat paper. */
export const scoreLayer = ({ order, sense }: Pick<Crease, 'order' | 'sense'>): Layer =>
  sense === 'mountain' ? 'odd-score' : order === 'second' ? 'second-score' : 'score';
