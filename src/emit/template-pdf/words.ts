export const CHECK_WORDS = {
  print: 'Print at 100 %, nothing fitted to the page.',
  measure: 'Measure both bars and the square before you cut: if they are off, so is everything.',
};

export const CARE_WORDS =
  'A sharp blade, a cutting mat and a metal safety ruler; several light strokes, the other hand behind the blade, never in its line. The rules of your own workshop, school or country come first.';

const TILED_STEPS = [
  'Begin with the first page. Cut every other page along the chain lines on its left and at its top, lay it on the chain line of its neighbour so that crosses and numbers meet, and tape it down.',
];

const STEPS = [
  'Lay the template on the inside of the paper, an edge along the grain. Prick the corners and the ends of the scores through, or lay a ruler from mark to mark.',
  'Cut the blank and compare its two diagonals. Score every line on the face that the key says, before anything is folded.',
  'Cut notches and tips last, from the edge inwards, and stop at the crossing.',
];

export const GAUGE_WORDS =
  'The edge gauge spares the template: cut the blank by its measure alone, lay the arrow end of a strip flush with a corner, either long edge flush with the blank’s edge, and tick the marks, on both edges of each corner named on it. Two ticks joined are a score.';

export const JOINED_GAUGE_WORDS =
  'A strip in parts: cut one along its chain line and tape it on the line of the part before.';

/** The steps from the printed page to the cut blank. */
export const steps = (tiled: boolean): readonly string[] => (tiled ? [...TILED_STEPS, ...STEPS] : STEPS);
