import { nodeHost } from '../host/node-host.js';
import type { Host } from '../host/host.js';
import { whyNot } from '../host/why-not.js';
import { checkTurns } from './check-together.js';
import type { LeafResult, LeafTask } from './catalogue/leaf-work.js';
import { complain } from './command.js';
import { run } from './run.js';

/** `checkTurns` is what a thread does beside another. */
export { checkTurns, nodeHost, run };

/** What a thread does; loaded where there are threads. */
export const leafWork = async (task: LeafTask, host: Host): Promise<LeafResult> =>
  (await import('./catalogue/leaf-work.js')).leafWork(task, host);

/** Runs plica as this process: the only place that gives it an exit code. */
export async function main(): Promise<void> {
  const host = nodeHost();
  try {
    process.exitCode = await run(process.argv.slice(2), host);
  } catch (error) {
    if (isUnprinted(error)) complain(host, `what was to be printed cannot be written: ${whyNot(error)}`);
    else confess(host, error instanceof Error ? error : new Error(String(error)));
    process.exitCode = 2;
  }
}

/** Whether standard output took no more: a write to any other file is answered where it is asked for. */
const isUnprinted = (error: unknown): boolean =>
  error instanceof Error && 'syscall' in error && error.syscall === 'write';

function confess(host: Host, bug: Error): void {
  complain(host, `something went wrong that is no fault of your recipe: ${bug.message}\n${HOW_TO_REPORT}`);
  if (host.env['PLICA_DEBUG']) host.err.write(`${bug.stack}\n`);
}

const HOW_TO_REPORT = `Please report it: run the same command again with PLICA_DEBUG=1 in the environment, and send what
it prints, with the recipe, to whoever looks after your copy of plica.`;
