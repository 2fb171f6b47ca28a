import { visible } from '../text/visible.js';
import { whatGitSaid } from './git.js';
import type { Host, Trouble } from './host.js';

/** The repository about the working folder. */
export interface Repository {
  readonly kind: 'repository';
  /** The real path that paths in it start from; in a bare one the working folder stands for it. */
  readonly top: string;
  readonly isBare: boolean;
}

/** Looks for the repository that the working folder is in. */
export function findRepository(host: Host): Repository | Trouble {
  // Where there is no work tree, git answers the first two questions before it refuses the third.
  const ran = host.git(['rev-parse', '--is-bare-repository', '--is-inside-work-tree', '--show-toplevel']);
  if (ran.kind === 'trouble') return ran;
  const [, bare, inside, top] = /^(\w+)\n(\w+)\n(?:(.*)\n)?$/s.exec(ran.out.toString('utf8')) ?? [];
  if (bare === undefined) return trouble(noRepository(ran.err));
  if (bare === 'true') return repository(host, host.cwd, true);
  if (inside === 'false') return trouble('this is git’s own folder; go to the folder with the recipes');
  if (top === undefined) return trouble(whatGitSaid(ran.err));
  return repository(host, top, false);
}

const repository = (host: Host, top: string, isBare: boolean): Repository => ({
  kind: 'repository',
  top: host.realPath(top) ?? top,
  isBare,
});

const noRepository = (err: string): string =>
  /not a git repository/i.test(err) ? 'this folder is in no git repository' : whatGitSaid(err);

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });

export interface Commit {
  readonly kind: 'commit';
  readonly hash: string;
}

/** The commit that a revision names, in any of git's ways of naming one. One that looks like an option never is one. */
export function resolveCommit(host: Host, revision: string): Commit | Trouble {
  const name = hashOf(host, revision);
  if (name.kind === 'trouble') return name;
  if (name.kind === 'none') return trouble(noRevision(host, revision, name.err));
  const commit = hashOf(host, `${name.hash}^{commit}`);
  if (commit.kind !== 'none') return commit;
  const type = host.git(['cat-file', '-t', name.hash]);
  const isThere = type.kind === 'ended' && type.code === 0;
  const what = isThere ? `it is a ${type.out.toString('utf8').trim()}, no commit` : 'there is no such commit';
  return trouble(`${shown(revision)}: ${what}`);
}

function hashOf(
  host: Host,
  revision: string,
): Commit | Trouble | { readonly kind: 'none'; readonly err: string } {
  const ran = host.git(['rev-parse', '--verify', '--end-of-options', revision]);
  if (ran.kind === 'trouble') return ran;
  const [, hash] = /^([0-9a-f]{40,64})\n$/.exec(ran.out.toString('utf8')) ?? [];
  return ran.code === 0 && hash !== undefined ? { kind: 'commit', hash } : { kind: 'none', err: ran.err };
}

function noRevision(host: Host, revision: string, err: string): string {
  if (/ambiguous/.test(err)) return `${shown(revision)}: several things are named so; write more of it`;
  if (revision === 'HEAD' || revision === '@') return 'nothing has been committed here yet';
  const shallow = host.git(['rev-parse', '--is-shallow-repository']);
  const isShallow = shallow.kind === 'ended' && shallow.out.toString('utf8').trim() === 'true';
  const hint = isShallow
    ? '; this clone is shallow, so older commits are missing (`git fetch --unshallow`)'
    : '';
  return `${shown(revision)}: there is no such revision${hint}`;
}

const shown = (revision: string): string => `\`${visible(revision)}\``;
