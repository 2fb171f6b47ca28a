import { spawnSync } from 'node:child_process';
import { symlinkSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { run } from '../../src/cli/run.js';
import type { Host, Outlet } from '../../src/host/host.js';
import { emitOptions } from './pdf-pages.js';
import type { ScratchRepository } from './repository.js';
import { scratch } from './scratch.js';

/** What a run came to: its exit code, and what it said on each stream. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs plica in a folder of a repository. */
export async function plicaIn(
  repository: ScratchRepository,
  args: readonly string[],
  folder = '.',
): Promise<Ran> {
  const said = { out: '', err: '' };
  const outlet = (stream: keyof typeof said): Outlet => ({
    write: (text) => {
      said[stream] += text;
    },
    isRead: () => true,
    isTerminal: () => false,
    columns: () => null,
  });
  const host = {
    ...repository.host(folder),
    out: outlet('out'),
    err: outlet('err'),
    env: withPlica(repository),
    fonts: () => emitOptions().fonts,
  };
  return { code: await run(args, host), ...said };
}

/** Runs git in a folder of a repository. */
export function gitWithPlica(
  repository: ScratchRepository,
  args: readonly string[],
  {
    folder = '.',
    env = {},
  }: { readonly folder?: string; readonly env?: Readonly<Record<string, string>> } = {},
): Ran {
  const { status, stdout, stderr } = spawnSync('git', [...args], {
    cwd: join(repository.top, folder),
    env: { ...withPlica(repository), ...env },
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

/** The environment, with the built program on the PATH, as `plica`. */
function withPlica({ host }: ScratchRepository): Host['env'] {
  const programs = scratch();
  symlinkSync(resolve('dist/plica.cjs'), join(programs, 'plica'));
  const { env } = host();
  return { ...env, PATH: `${programs}${delimiter}${env['PATH']}` };
}
