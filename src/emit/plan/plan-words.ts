/*
 * emit/plan/: a plan for a batch as a sheet for the bench, as pictures, and for programs.
 * In: a Plan. Out: content of a sheet, text of files.
 * Refuses to know: how pieces were laid out.
 */
import { printNumber } from '../../measure/number.js';
import type { Envelope } from '../../recipe/recipe.js';
import type { Plan, PlannedLayout, PlannedPaper } from '../../plan/plan.js';
import { counted } from '../../text/counted.js';
import { type Lengths, lengths } from '../cut-sheet/lengths.js';

/** Lengths in the batch's own units, read off the finest ruler of its envelopes. */
export const lengthsOf = ({ batch, orders }: Plan): Lengths =>
  lengths({ units: batch.units, step: Math.min(...orders.map(({ order }) => order.envelope.step.value)) });

/** A sum of money, in whatever currency the folder uses. */
export const money = (amount: number): string => printNumber(amount, 2);

/** `8 half-letter, 2 a6-tides` */
export const piecesIn = ({ pieces: counts }: PlannedLayout, { pieces }: PlannedPaper): string =>
  counts
    .flatMap((count, index) => (count > 0 ? [`${count} ${named(pieces[index]?.names ?? [])}`] : []))
    .join(', ');

/** All that one size is cut for. */
export const named = (names: readonly string[]): string => names.join(' or ');

/** `5 sheets of kraft` */
export const sheetsOf = ({ sheets, paper }: PlannedPaper): string =>
  `${counted(sheets, 'sheet')} of ${paper.name}`;

export const titleOf = ({ name, title }: Envelope): string =>
  title.value === name ? name : `${name} (${title.value})`;
