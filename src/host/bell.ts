/** A bell that many may ring and one waits for. */
export interface Bell {
  readonly ring: () => void;
  /** True after the bell has rung and then been still for a while; false: it never will again. One waits at a time. */
  readonly wait: () => Promise<boolean>;
  readonly stop: () => void;
}

/** A bell that is heard once it has been still for `still` ms. What rings while nobody waits is heard at the next wait. */
export function bell(still: number): Bell {
  let state: 'quiet' | 'heard' | 'stopped' = 'quiet';
  let timer: NodeJS.Timeout | undefined;
  let waiting: ((more: boolean) => void) | null = null;

  const answer = (): void => {
    if (waiting === null || state === 'quiet') return;
    const more = state === 'heard';
    if (more) state = 'quiet';
    waiting(more);
    waiting = null;
  };
  const hear = (): void => {
    if (state !== 'stopped') state = 'heard';
    answer();
  };

  return {
    ring: () => {
      clearTimeout(timer);
      if (state !== 'stopped') timer = setTimeout(hear, still);
    },
    wait: () =>
      new Promise((resolve) => {
        waiting = resolve;
        answer();
      }),
    stop: () => {
      clearTimeout(timer);
      state = 'stopped';
      answer();
    },
  };
}
