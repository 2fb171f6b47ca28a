import { LONGEST_TEXT } from '../../text/longest.js';
import type { FileLeaves } from '../../emit/catalogue/leaf.js';
import type { Host, Threads } from '../../host/host.js';
import { visible } from '../../text/visible.js';
import { WHOLE } from './file-leaves.js';
import { type BookFile, type LeafResult, type LeafTask, leafWork } from './leaf-work.js';

/** How leaves are to be made. */
export interface Making extends Pick<LeafTask, 'shelf' | 'edition' | 'date'> {
  readonly host: Host;
  /** Told after each file, of so many. */
  readonly advance: (done: number, of: number) => void;
}

/** What the files come to, in their order, and sentences about those that cannot be read; or why leaves cannot be kept. */
export type Gathering =
  | {
      readonly kind: 'gathered';
      readonly all: readonly FileLeaves[];
      readonly troubles: readonly string[];
    }
  | { readonly kind: 'trouble'; readonly reason: string };

/** With less text in all, in bytes, threads would take longer to start than the work takes. */
const WORTH_THREADS = 6_000;
/** A file with more text is shared out among the threads, in bytes. */
const SHARED = 64_000;

/** Makes the leaves of all files, on as many threads as there are cores. */
export async function gather(files: readonly BookFile[], making: Making): Promise<Gathering> {
  const { host } = making;
  const sizes = files.map(({ id }) => sizeOf(id, host));
  const much = sizes.reduce((sum, size) => sum + size, 0) >= WORTH_THREADS;
  const threads = much ? await host.threads() : null;
  const forget = host.onStop(() => void threads?.close());
  try {
    return await gatherWith(threads, files, sizes, making);
  } finally {
    forget();
    await threads?.close();
  }
}

async function gatherWith(
  threads: Threads | null,
  files: readonly BookFile[],
  sizes: readonly number[],
  { host, shelf, edition, date, advance }: Making,
): Promise<Gathering> {
  const tasks = files.flatMap((file, index): readonly LeafTask[] => {
    const parts = (sizes[index] ?? 0) > SHARED ? (threads?.count ?? 1) : WHOLE.parts;
    return Array.from({ length: parts }, (_, part) => ({ file, shelf, edition, date, part, parts }));
  });
  let done = 0;
  const one = async (task: LeafTask): Promise<LeafResult> => {
    const result = threads ? ((await threads.run(task)) as LeafResult) : await leafWork(task, host);
    advance(++done, tasks.length);
    return result;
  };
  const results: LeafResult[] = [];
  if (threads) results.push(...(await Promise.all(tasks.map(one))));
  else for (const task of tasks) results.push(await one(task));
  const all: FileLeaves[] = [];
  const troubles = new Set<string>();
  for (const [index, result] of results.entries()) {
    if (!('reason' in result)) all.push(result);
    else if (result.kind === 'unreadable')
      troubles.add(`${visible(tasks[index]?.file.label ?? '')}: ${result.reason}`);
    else return { kind: 'trouble', reason: `${visible(result.path)} cannot be written: ${result.reason}` };
  }
  return { kind: 'gathered', all, troubles: [...troubles] };
}

function sizeOf(path: string, host: Host): number {
  const read = host.read(path, LONGEST_TEXT);
  return read.kind === 'bytes' ? read.bytes.length : 0;
}
