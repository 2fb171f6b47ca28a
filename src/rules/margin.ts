import { fits } from '../measure/slack.js';
import type { Property } from './place.js';
import type { Remedy } from './remedy.js';
import type { Subject } from './rule.js';

/** A length that must not fall below a limit, as made and in the worst case of the hand. */
export interface Margin {
  /** What it is, in words: "the overlap of the lower seams". */
  readonly name: string;
  readonly made: (subject: Subject) => number | null;
  readonly worst: (subject: Subject) => number | null;
  readonly limit: (subject: Subject) => number;
  /** Where the limit comes from, in words. */
  readonly because: (subject: Subject) => string;
  /** What may have made it too small, the likeliest first. */
  readonly blame: (subject: Subject) => readonly Property[];
  readonly remedies: (subject: Subject) => readonly Remedy[];
}

/** Whether it is below its limit as made: the rule's own finding. */
export const isShort = ({ made, limit }: Margin, subject: Subject): boolean =>
  below(made(subject), limit(subject));

/** Whether it is above its limit as made, but not in the worst case of the hand. */
export const isTight = (margin: Margin, subject: Subject): boolean =>
  !isShort(margin, subject) && below(margin.worst(subject), margin.limit(subject));

const below = (length: number | null, limit: number): boolean => length !== null && !fits(limit, length);
