import { TAPE_CLEARANCE } from '../folding/closure.js';
import type { Subject } from './rule.js';
import { exact } from './words.js';

/** Paper that the tape or glue line needs: its width and about 1 mm on either side (common practice). */
export const tapeNeeds = ({ envelope }: Subject): number => envelope.tape.value + TAPE_CLEARANCE;

/** The same in words. */
export const becauseOfTape = (subject: Subject): string =>
  `tape of ${exact(subject.envelope, subject.envelope.tape.value)} needs ${exact(subject.envelope, tapeNeeds(subject))} (its width and about ${TAPE_CLEARANCE / 2} mm on either side)`;
