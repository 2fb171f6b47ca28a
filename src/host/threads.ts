import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { Threads } from './host.js';

/** What pool.cjs opens. */
interface Pool {
  readonly run: (task: object) => Promise<unknown>;
  readonly destroy: () => Promise<void>;
}

/** Threads that run the program beside this one; null where it is not built, or there is one core only. */
export async function threads(cwd: string): Promise<Threads | null> {
  const place = join(import.meta.dirname, 'pool.cjs');
  const count = availableParallelism();
  if (count < 2 || !existsSync(place)) return null;
  const { open } = createRequire(place)(place) as { readonly open: (threads: number) => Promise<Pool> };
  const pool = await open(count);
  return { count, run: (task) => pool.run({ ...task, cwd }), close: () => pool.destroy() };
}
