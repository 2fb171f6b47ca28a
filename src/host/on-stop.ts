import { constants } from 'node:os';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

const cleaners = new Set<() => void>();

/** Has something done before a signal ends the process. What comes back undoes that. */
export function onStop(clean: () => void): () => void {
  if (cleaners.size === 0) for (const signal of SIGNALS) process.on(signal, stop);
  cleaners.add(clean);
  return () => {
    cleaners.delete(clean);
    if (cleaners.size === 0) for (const signal of SIGNALS) process.off(signal, stop);
  };
}

/** Ends as the signal would have ended it. */
function stop(signal: (typeof SIGNALS)[number]): void {
  for (const clean of cleaners) clean();
  process.exit(128 + constants.signals[signal]);
}
