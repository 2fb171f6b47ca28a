import { existsSync } from 'node:fs';
import type * as Os from 'node:os';
import { join } from 'node:path';
import type * as WorkerThreads from 'node:worker_threads';
import { builtin } from './builtin.js';

/**
 * Has at most `most` threads check recipes, no more than there are cores besides this thread's; what all of them told. None where
 * the program is not built. A thread that fails tells no more: what it has left undone is there for this one to meet.
 */
export async function beside(cwd: string, task: object, most: number): Promise<readonly unknown[]> {
  const place = join(import.meta.dirname, 'check-thread.cjs');
  const { availableParallelism } = builtin<typeof Os>('node:os');
  const count = existsSync(place) ? Math.min(most, availableParallelism() - 1) : 0;
  const { Worker } = builtin<typeof WorkerThreads>('node:worker_threads');
  const told: unknown[] = [];
  const threads = Array.from({ length: count }, () => {
    const thread = new Worker(place, { workerData: { ...task, cwd } });
    thread.on('message', (message) => told.push(message));
    thread.on('error', () => {});
    return new Promise((resolve) => thread.on('exit', resolve));
  });
  await Promise.all(threads);
  return told;
}
