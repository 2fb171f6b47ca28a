import { execFileSync } from 'node:child_process';
import { mkdirSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Host } from '../../src/host/host.js';
import { nodeHost } from '../../src/host/node-host.js';
import { scratch } from './scratch.js';

/** A repository of its own for one test; gone after it. */
export interface ScratchRepository {
  /** Its real path. */
  readonly top: string;
  /** The machine with `cwd` in the repository, at its top unless told otherwise. */
  readonly host: (folder?: string) => Host;
  /** Runs git in it, and answers what it wrote, without the last line end. */
  readonly git: (...args: readonly string[]) => string;
  /** Writes files into the work tree (null: takes one away). */
  readonly put: (files: Files) => void;
  /** The same, staged and committed on a day of its own; answers the commit's hash. */
  readonly commit: (subject: string, files?: Files) => string;
}

export type Files = Readonly<Record<string, string | Uint8Array | null>>;

/** What `git init` is told, where that matters. */
export function scratchRepository(...options: readonly string[]): ScratchRepository {
  const top = realpathSync(scratch());
  runGit(top, ['init', '--quiet', '--initial-branch=main', ...options]);
  return repositoryAt(top);
}

/** A repository that another one made: a clone, a work tree, a submodule. */
export function repositoryAt(top: string): ScratchRepository {
  let day = 0;
  const put = (files: Files): void => {
    for (const [path, content] of Object.entries(files)) {
      const place = join(top, path);
      mkdirSync(dirname(place), { recursive: true });
      if (content === null) rmSync(place);
      else writeFileSync(place, content);
    }
  };
  const git = (...args: readonly string[]): string => runGit(top, args);
  return {
    top,
    host: (folder = '.') => nodeHost(join(top, folder), ENV),
    git,
    put,
    commit: (subject, files = {}) => {
      put(files);
      git('add', '--all');
      const date = `${dayText(++day)}T12:00:00+00:00`;
      runGit(top, ['commit', '--quiet', '--allow-empty', '--cleanup=verbatim', '-m', subject], {
        GIT_AUTHOR_DATE: date,
        GIT_COMMITTER_DATE: date,
      });
      return git('rev-parse', 'HEAD');
    },
  };
}

/** Of the commits of a repository, the first is made on 1 March 2024, and each other a day later. */
export const dayText = (day: number): string => new Date(Date.UTC(2024, 2, day)).toISOString().slice(0, 10);

/** What git is told whoever runs the tests, and wherever: nobody's settings, and one name. */
const ENV: Readonly<Record<string, string | undefined>> = {
  PATH: process.env['PATH'],
  HOME: '/nowhere',
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_AUTHOR_NAME: 'The Studio',
  GIT_AUTHOR_EMAIL: 'studio@example.org',
  GIT_COMMITTER_NAME: 'The Studio',
  GIT_COMMITTER_EMAIL: 'studio@example.org',
};

function runGit(cwd: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): string {
  const settings = ['-c', 'protocol.file.allow=always', '-c', 'core.autocrlf=false'];
  const run = { cwd, env: { ...ENV, ...env }, encoding: 'utf8', stdio: 'pipe' } as const;
  return execFileSync('git', [...settings, ...args], run).replace(/\n$/, '');
}
