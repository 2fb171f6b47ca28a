import { relative, sep } from 'node:path';
import { visible } from '../text/visible.js';
import { whatGitSaid } from './git.js';
import type { Host, Trouble } from './host.js';
import { placeBelow } from './place-below.js';
import { findRepository, resolveCommit } from './repository.js';
import { fieldsOf, pathText } from './tracked.js';

export interface History {
  readonly kind: 'history';
  readonly steps: readonly Step[];
}

/** A commit that changed recipes. */
export interface Step {
  readonly hash: string;
  /** The steps before it: none for the first, several for a merge. Between a parent and this no other commit changed recipes. */
  readonly parents: readonly string[];
  /** When its author made it, as in `2024-03-01T12:00:00+00:00`. */
  readonly date: string;
  /** Its first line as it was written: not safe to print. */
  readonly subject: string;
  /** Where the file is in it: from the top, with `/`. */
  readonly path: string;
}

/**
 * The commits up to a revision that changed any recipe (what one uses may be in another file), a commit before its parents,
 * the newest first, back to the one that brought the file. The file is followed through renames.
 */
export function history(host: Host, path: string, revision = 'HEAD'): History | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  const place = placeBelow(host, repository.top, path);
  if (place === null) return { kind: 'trouble', reason: `${visible(path)}: it is not in this repository` };
  const commit = resolveCommit(host, revision);
  if (commit.kind === 'trouble') return commit;
  const ran = host.git([...LOG, commit.hash, ...RECIPES]);
  if (ran.kind === 'trouble') return ran;
  if (ran.code !== 0) return { kind: 'trouble', reason: whatGitSaid(ran.err) };
  const name = relative(repository.top, place).replaceAll(sep, '/');
  return { kind: 'history', steps: stepsOf(host, loggedIn(ran.out), name) };
}

/** The same whatever the settings say; parents are those of the commits that remain. */
const LOG = [
  '-c',
  'diff.relative=false',
  '-c',
  'log.showRoot=true',
  '-c',
  'log.follow=false',
  'log',
  '-z',
  '--date-order',
  '--parents',
  '--format=tformat:%H%x00%P%x00%aI%x00%s',
  '--encoding=UTF-8',
  '--no-color',
  '--no-ext-diff',
  '--name-status',
  '-M',
] as const;

const BETWEEN = ['diff-tree', '-r', '-z', '--name-status', '-M'] as const;

const RECIPES = ['--', ':(top)*.plica'] as const;

interface Logged extends Omit<Step, 'path'> {
  readonly changes: readonly Change[];
}

/** A file that is new, changed or gone; or renamed, where it came `from` another name. */
interface Change {
  readonly from: string;
  readonly to: string;
}

/** The commits in what `log` wrote: four fields for each, and then its changes. */
function loggedIn(out: Buffer): readonly Logged[] {
  const ahead = [...fieldsOf(out)].reverse();
  const commits: Logged[] = [];
  for (let hash = ahead.pop(); hash !== undefined && hash !== ''; hash = ahead.pop()) {
    const [parents = '', date = '', subject = ''] = [ahead.pop(), ahead.pop(), ahead.pop()];
    commits.push({
      hash,
      parents: parents.split(' ').filter((parent) => parent !== ''),
      date,
      subject: Buffer.from(subject, 'latin1').toString('utf8'),
      changes: takeChanges(ahead),
    });
  }
  return commits;
}

/** The changes at the end of the fields that are ahead: a letter, which no hash is, and one name or two. */
function takeChanges(ahead: string[]): readonly Change[] {
  const changes: Change[] = [];
  for (let kind = ahead.at(-1); kind !== undefined && /^\n?[A-Z]\d*$/.test(kind); kind = ahead.at(-1)) {
    ahead.pop();
    const from = pathText(ahead.pop() ?? '');
    const to = /[RC]/.test(kind) ? pathText(ahead.pop() ?? '') : from;
    changes.push({ from, to });
  }
  return changes;
}

/** Gives each commit the name that the file has in it, going back from the newest. */
function stepsOf(host: Host, commits: readonly Logged[], path: string): readonly Step[] {
  const names = new Map<string, string>([[commits[0]?.hash ?? '', path]]);
  const steps: Step[] = [];
  let known = 0;
  for (const { changes, ...commit } of commits) {
    const name = names.get(commit.hash);
    if (name === undefined) continue;
    steps.push({ ...commit, path: name });
    if (changes.some(({ to }) => to === name)) known = steps.length;
    for (const parent of commit.parents) {
      const met = commit.parents.length > 1 ? changesBetween(host, parent, commit.hash) : changes;
      names.set(parent, met.find(({ to }) => to === name)?.from ?? name);
    }
  }
  return steps.slice(0, known);
}

/** What a merge changed in one of its parents: `log` does not say. */
function changesBetween(host: Host, before: string, after: string): readonly Change[] {
  const ran = host.git([...BETWEEN, before, after, ...RECIPES]);
  return ran.kind === 'ended' ? takeChanges([...fieldsOf(ran.out)].reverse()) : [];
}
