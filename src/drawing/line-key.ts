import type { Drawing, Layer } from './drawing.js';

/** What each kind of line on a blank tells the hand, in the order in which it is needed. */
const MEANINGS: readonly { readonly layer: Layer; readonly words: string }[] = [
  { layer: 'cut', words: 'cut' },
  { layer: 'blank', words: 'edge of the blank before notches and tips are cut' },
  { layer: 'waste', words: 'falls away' },
  { layer: 'score', words: 'score on this face, folds towards you' },
  { layer: 'second-score', words: 'second score, the outer edge of a wall' },
  { layer: 'odd-score', words: 'score from the other face, folds away from you' },
  { layer: 'mark', words: 'mark on the edge, measured from the corner' },
  { layer: 'seam', words: 'seam: lies over another flap and is glued to it' },
  { layer: 'glue', words: 'tape or glue, on this face' },
  { layer: 'zone', words: 'on the show side: room to print on the flap; address and stamp on the front' },
  {
    layer: 'raised-zone',
    words: 'on the flap: room for raised work and wax, not where it is hatched over seams',
  },
  { layer: 'lining', words: 'cut the lining' },
  { layer: 'lining-fold', words: 'fold the lining here, as the envelope folds' },
  { layer: 'join', words: 'where two pages meet' },
];

/** The rows of a key to the lines that a drawing uses. */
export const lineKey = (...drawings: readonly Drawing[]): typeof MEANINGS => {
  const used = new Set(drawings.flatMap((drawing) => drawing.map(({ layer }) => layer)));
  return MEANINGS.filter(({ layer }) => used.has(layer));
};
