import type { Emitter } from '../emitter.js';
import { renderFold } from './render-fold.js';

/** The crease pattern and the closed envelope, for programs that simulate folding. */
export const fold: Emitter = {
  name: 'fold',
  summary: 'crease pattern and closed envelope for folding programs, as FOLD',
  byDefault: false,
  mediaType: 'application/vnd.fold+json',
  emit: async (job) => [{ extension: '.fold', bytes: new TextEncoder().encode(renderFold(job)) }],
};
