import type { Emitter } from '../emitter.js';
import { KINDS } from '../kinds.js';
import { renderFold } from './render-fold.js';

/** The crease pattern and the closed envelope, for programs that simulate folding. */
export const fold: Emitter = {
  ...KINDS.fold,
  mediaType: 'application/vnd.fold+json',
  emit: async (job) => [{ extension: '.fold', bytes: new TextEncoder().encode(renderFold(job)) }],
};
