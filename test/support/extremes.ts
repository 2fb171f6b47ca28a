import { halfLetter, job } from './jobs.js';

const notched = { bottom: 'notched', seal: 'notched' } as const;

/** Extremes of size and proportion, flat and box, shifted and cut. */
export const EXTREMES = {
  'half-letter card': halfLetter(),
  'card 50 x 35 mm': job({ face: { width: 55, height: 40 }, seam: 5 }),
  'card A3': job({ face: { width: 428, height: 305 } }),
  'card 1 : 3, flap on the long edge': job({ face: { width: 300, height: 100 } }),
  'card 1 : 3, flap on the short edge': job({ face: { width: 100, height: 300 } }),
  square: job({ face: { width: 140, height: 140 } }),
  'shallow box': job({ depth: 3, corners: notched }),
  'deep box': job({ face: { width: 100, height: 80 }, depth: 30, corners: notched }),
  'small deep box with every tip cut': job({
    face: { width: 60, height: 45 },
    seam: 5,
    depth: 12,
    corners: notched,
    flap: { kind: 'blunt', cut: 6, radius: 2 },
    bottom: { kind: 'blunt', cut: 4, radius: 0 },
    sides: { kind: 'blunt', cut: 3, radius: 0 },
  }),
  shifted: job({ shift: 8, flap: { kind: 'rounded', radius: 12 } }),
};
