/** What an expected value must be; the inner unit is mm, mm², g, or a plain number. */
export type ExpectDimension = 'length' | 'area' | 'mass' | 'number';

/** The figures that an `expect` may name: what each measures, and what it is. Their values are read in rules/. */
export const FIGURES: readonly (readonly [name: string, dimension: ExpectDimension, meaning: string])[] = [
  ['blank', 'length', 'side of the blank'],
  ['face-width', 'length', 'the face along the flap’s hinge'],
  ['face-height', 'length', 'the face across it'],
  ['depth', 'length', 'wall of a box'],
  ['side-score', 'length', 'from the side corners square to the score'],
  ['seal-score', 'length', 'from the seal corner square to the score'],
  ['bottom-score', 'length', 'from the bottom corner square to the score'],
  ['side-mark', 'length', 'the same along the edge'],
  ['seal-mark', 'length', 'the same along the edge'],
  ['bottom-mark', 'length', 'the same along the edge'],
  ['second-side-score', 'length', 'from the side corners square to the second score, of a box'],
  ['second-seal-score', 'length', 'from the seal corner square to the second score, of a box'],
  ['second-bottom-score', 'length', 'from the bottom corner square to the second score, of a box'],
  ['second-side-mark', 'length', 'the same along the edge'],
  ['second-seal-mark', 'length', 'the same along the edge'],
  ['second-bottom-mark', 'length', 'the same along the edge'],
  ['side-flap', 'length', 'height of a side flap'],
  ['seal-flap', 'length', 'height of the seal flap'],
  ['bottom-flap', 'length', 'height of the bottom flap'],
  ['crossing', 'length', 'by how much the marks on an edge pass each other, at the tightest edge'],
  [
    'seam-overlap',
    'length',
    'width of the seam between a side flap and the bottom flap, at the tighter side',
  ],
  [
    'closure',
    'length',
    'the length, on the centre line, over which the closed seal flap lies on glued paper',
  ],
  ['bare', 'area', 'the part of the back that nothing covers'],
  ['room-width', 'length', 'what is left beside the card'],
  ['room-height', 'length', 'what is left above and below the card'],
  ['room-depth', 'length', 'what is left over the filled card, in a box'],
  ['thickness', 'length', 'the closed envelope'],
  ['mass', 'mass', 'the envelope with its contents; needs a paper with `weight`'],
  ['per-sheet', 'number', 'blanks from one sheet of the paper; needs a paper with `sheet`'],
  ['layers', 'number', 'the most layers of paper on the back'],
  ['seam-length', 'length', 'usable length of each lower seam'],
  ['diagonal', 'length', 'the blank from corner to corner'],
  ['tape-length', 'length', 'tape or glue line in all'],
  ['liner-width', 'length', 'the lining along the flap’s hinge'],
  ['liner-height', 'length', 'the lining across it, from its lower edge to its tip'],
];

/** What each of them measures, by name. */
export const EXPECT_NAMES: ReadonlyMap<string, ExpectDimension> = new Map(
  FIGURES.map(([name, dimension]) => [name, dimension]),
);
