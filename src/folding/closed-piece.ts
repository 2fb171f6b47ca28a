import type { Facts } from './facts.js';

/** A closed envelope as a post measures it: its sides, where it is thickest, its mass in g if that is known. */
export const closedPiece = ({ face, thickness, mass, depth }: Facts) => ({
  sides: [face.width, face.height] as const,
  thickness,
  mass,
  uneven: depth > 0,
});
