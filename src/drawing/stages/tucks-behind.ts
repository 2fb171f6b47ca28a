import type { Folding } from '../../folding/folding.js';

/** What the tip of a tucked seal flap goes behind: flaps that do not reach each other leave it only the joined side flaps. */
export const tucksBehind = ({ made: { heights, face } }: Folding): 'bottom flap' | 'side flaps' =>
  heights.seal + heights.bottom > face.height ? 'bottom flap' : 'side flaps';
