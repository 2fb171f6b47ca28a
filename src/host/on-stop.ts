/** Exit codes of a process that a signal ended: 128 and the signal's number (POSIX: SIGHUP 1, SIGINT 2, SIGTERM 15). */
const ENDED_BY = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
type Signal = keyof typeof ENDED_BY;
const SIGNALS = Object.keys(ENDED_BY) as readonly Signal[];

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
function stop(signal: Signal): void {
  for (const clean of cleaners) clean();
  process.exit(ENDED_BY[signal]);
}
