import { G_PER_POUND, MM_PER } from '../measure/unit.js';

/** A US grade of paper: a basis weight is the pounds of 500 sheets of its basic size. */
export interface PaperGrade {
  readonly name: string;
  /** Inches. */
  readonly basicSize: readonly [width: number, height: number];
  readonly sources: string;
}

const SHEETS = 500;

/** Four printed lists agree on the sizes (bristol: a fifth prints 22.5 × 30.5). */
export const PAPER_GRADES: readonly PaperGrade[] = [
  { name: 'text', basicSize: [25, 38], sources: 'sylv;ivex;xerox;gould' },
  { name: 'cover', basicSize: [20, 26], sources: 'sylv;ivex;xerox;gould' },
  { name: 'bond', basicSize: [17, 22], sources: 'sylv;ivex;xerox;gould' },
  { name: 'index', basicSize: [25.5, 30.5], sources: 'sylv;ivex;xerox;gould' },
  { name: 'bristol', basicSize: [22.5, 28.5], sources: 'sylv;ivex;xerox;gould' },
  { name: 'tag', basicSize: [24, 36], sources: 'sylv;ivex;xerox;gould' },
];

/** g/m² for each pound of basis weight: exact, since pound and inch are defined in grams and millimetres. */
export const gsmPerPound = ({ basicSize: [width, height] }: PaperGrade): number =>
  G_PER_POUND / ((SHEETS * width * height * MM_PER.in ** 2) / 1e6);
