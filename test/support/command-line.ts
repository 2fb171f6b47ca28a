import { run } from '../../src/cli/run.js';
import { type Memory, memoryHost } from '../../src/host/memory-host.js';
import { emitOptions } from './pdf-pages.js';

/** What a command came to: its exit code, what it said on each stream, and every file there is after it. */
export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** Runs plica on a machine held in memory: `plica('check a.plica', { files: { 'a.plica': '…' } })`. */
export async function plica(line: string, memory: Memory = {}): Promise<Outcome> {
  const host = memoryHost({ fonts: emitOptions().fonts, ...memory });
  const code = await run(
    line.split(' ').filter((word) => word !== ''),
    host,
  );
  return { code, ...host.said, files: host.files };
}

/** A recipe with nothing wrong, one with an error in its folding, and one with a warning. */
export const SOUND = 'units in\n\nenvelope half-letter { card: 8 1/2 x 5 1/2 }\n';
export const GAPING = 'units in\n\nenvelope gaping {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n';
export const TIGHT = 'units mm\n\nenvelope snug {\n  card: A6\n  ease: 2.5\n}\n';
