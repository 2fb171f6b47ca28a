import type { GlueLine } from '../../folding/folding.js';

/** The strips of tape or glue by the moment in which they are laid: on the right side flap, the bottom flap, the seal flap. */
export const CENTRE_STRIP: readonly GlueLine['name'][] = ['centre'];
export const LOWER_STRIPS: readonly GlueLine['name'][] = ['lower-left', 'lower-right'];
export const SEAL_STRIPS: readonly GlueLine['name'][] = ['seal-left', 'seal-right', 'seal-tip'];
