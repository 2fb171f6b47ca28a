import { compileFiles } from '../../src/cli/compile-inputs.js';
import { readInputs } from '../../src/cli/inputs.js';
import type { Host } from '../../src/host/host.js';

/** The text of a file on a machine, or why there is none. */
export function textAt(host: Host, path: string): string {
  const read = host.read(path, 1_000_000);
  if (read.kind === 'too-large') return `it has ${read.bytes} bytes`;
  return read.kind === 'bytes' ? Buffer.from(read.bytes).toString('utf8') : read.reason;
}

/** What a command makes of paths on a machine: what it read, every recipe and finding, and what it could not read. */
export async function compiledAt(host: Host, ...paths: readonly string[]) {
  const { files, limits, troubles } = await readInputs(host, paths);
  const { recipes, diagnostics } = compileFiles(files, host);
  return { names: files.map(({ input }) => input.source.name), limits, troubles, recipes, diagnostics };
}
