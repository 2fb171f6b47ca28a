import type * as ChildProcess from 'node:child_process';
import { existsSync } from 'node:fs';
import { visible } from '../text/visible.js';
import { builtin } from './builtin.js';
import type { GitResult, Host } from './host.js';

/**
 * Runs git, found on the PATH, without a shell. Whatever the user or the repository has set: it asks nobody, pages and colours
 * nothing, speaks English, goes to no network, writes nothing by the way, and starts no program that a repository names.
 * Variables that say which repository is meant stay, since git sets them for hooks and tools that it calls.
 */
export function git(cwd: string, env: Host['env'], args: readonly string[], input = ''): GitResult {
  // No argument can hold it, and Node throws.
  if (args.some((argument) => argument.includes('\0')))
    return trouble('a name with a NUL character in it cannot be given to git');
  const ran = builtin<typeof ChildProcess>('node:child_process').spawnSync('git', [...QUIETLY, ...args], {
    cwd,
    env: { ...env, ...SETTINGS },
    input,
    maxBuffer: MOST,
    shell: false,
    windowsHide: true,
  });
  if (ran.status !== null && !isTooMuch(ran.error)) {
    return { kind: 'ended', code: ran.status, out: ran.stdout, err: ran.stderr.toString('utf8') };
  }
  if (ran.error === undefined) return trouble(`git was stopped (${ran.signal ?? 'by the system'})`);
  return trouble(notRun(ran.error, cwd));
}

/** The most that git may write. In bytes. */
const MOST = 256 * 1024 * 1024;

/** `core.fsmonitor` and the check of signatures start programs; an empty monitor is none, in every version of git. */
const QUIETLY = ['--no-pager', '-c', 'core.fsmonitor=', '-c', 'log.showSignature=false'] as const;

const SETTINGS = {
  LC_ALL: 'C',
  GIT_OPTIONAL_LOCKS: '0',
  GIT_TERMINAL_PROMPT: '0',
  // The empty list of protocols; the other keeps newer versions from trying. Contents that a partial clone left behind stay there.
  GIT_ALLOW_PROTOCOL: '',
  GIT_NO_LAZY_FETCH: '1',
  // The patterns given here mean what they say.
  GIT_LITERAL_PATHSPECS: '0',
  GIT_GLOB_PATHSPECS: '0',
  GIT_NOGLOB_PATHSPECS: '0',
  GIT_ICASE_PATHSPECS: '0',
} as const;

const trouble = (reason: string): GitResult => ({ kind: 'trouble', reason });

const isTooMuch = (error: NodeJS.ErrnoException | undefined): boolean => error?.code === 'ENOBUFS';

function notRun(error: NodeJS.ErrnoException, cwd: string): string {
  if (isTooMuch(error)) return 'git wrote more than plica takes (256 MiB)';
  if (error.code === 'ENOENT')
    return existsSync(cwd) ? 'git is not installed, or not on the PATH' : 'the working folder is gone';
  return `git could not be run: ${visible(error.message)}`;
}

/** What git gave as the reason why it failed, in its own words. */
export function whatGitSaid(err: string): string {
  const lines = err.split('\n').filter((line) => line !== '');
  const last = lines.find((line) => /^(fatal|error): /.test(line)) ?? lines.at(-1) ?? 'it gave no reason';
  return `git: ${visible(last.replace(/^(fatal|error): /, ''))}`;
}
