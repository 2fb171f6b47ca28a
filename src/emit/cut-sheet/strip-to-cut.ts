import { floorToStep } from '../../measure/ruler.js';
import type { Bench } from './bench.js';

/**
 * The length to which a strip of tape is cut: rounded down to the ruler, since a strip that reached past the paper that it
 * joins would glue the pocket shut. One shorter than a step is cut as it is.
 */
export const stripToCut = ({ envelope }: Bench, length: number): number =>
  floorToStep(length, envelope.step.value) || length;
