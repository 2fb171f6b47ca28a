import type { Happening } from './envelope-log.js';
import type { Moment } from './file-history.js';

/** What is told of an envelope's history at a moment. */
export interface Told extends Happening<Moment> {
  /** Whether the clone is shallow and goes no further back. */
  readonly isCutOff: boolean;
}
