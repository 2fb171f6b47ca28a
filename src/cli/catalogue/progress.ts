import type { Host } from '../../host/host.js';

/** A bar with counts, on a terminal only, where there is much to do. */
export interface Progress {
  readonly show: (what: string, done: number, of: number) => void;
  /** Takes the bar away. */
  readonly clear: () => void;
}

/** Fewer things are done before anybody has looked. */
const MUCH = 10;

export async function progressOn({ err, onStop }: Host): Promise<Progress> {
  if (!err.isTerminal()) return { show: () => {}, clear: () => {} };
  const { default: cli } = await import('cli-progress');
  const bar = new cli.SingleBar({
    format: '{what} [{bar}] {value} of {total}',
    barCompleteChar: '=',
    barIncompleteChar: ' ',
    barsize: 30,
    clearOnComplete: true,
    hideCursor: false,
    stream: terminal(err),
  });
  let shown: string | null = null;
  const clear = (): void => {
    if (shown !== null) bar.stop();
    shown = null;
  };
  onStop(clear);
  return {
    clear,
    show: (what, done, of) => {
      if (of < MUCH) return;
      if (shown === what) bar.update(done);
      else {
        clear();
        bar.start(of, done, { what });
        shown = what;
      }
    },
  };
}

/** As much of a stream as the bar writes to. */
const terminal = (err: Host['err']): NodeJS.WritableStream =>
  ({
    isTTY: true,
    columns: err.columns() ?? 80,
    write: (text: string) => {
      err.write(text);
      return true;
    },
    on: () => {},
    once: () => {},
    removeListener: () => {},
  }) as unknown as NodeJS.WritableStream;
