import { join, relative, resolve } from 'node:path';
import { findRecipes } from '../host/find-recipes.js';
import type { Host, Trouble } from '../host/host.js';
import { placeBelow } from '../host/place-below.js';
import { findRepository, type Repository, resolveCommit } from '../host/repository.js';
import { revisionView } from '../host/revision-view.js';
import { workTree } from '../host/work-tree.js';
import { visible } from '../text/visible.js';
import { complain } from './command.js';
import { INPUT } from './inputs.js';
import { nearPaths } from './near-paths.js';
import { didYouMean } from './words.js';

/** What is compared: on which machine, and where. */
export interface SideFiles {
  readonly kind: 'side';
  /** The machine as it is, or as it was at a revision. */
  readonly host: Host;
  /** None: nothing is there. */
  readonly paths: readonly string[];
  /** What messages call it; null: its paths say enough. */
  readonly label: string | null;
}

export type Sides = readonly [before: SideFiles, after: SideFiles];

/**
 * What the operands of a comparison mean. Two: each by itself. One: a path as it was at `HEAD`, or a revision, against the
 * work tree. None: all recipes at `HEAD` against the work tree. Where both sides are the same place, it may be there on one
 * of them only.
 */
export function sidesOf(operands: readonly string[], host: Host): Sides | Trouble {
  const [first, second] = operands;
  const before =
    first === undefined
      ? allAtHead(host)
      : second === undefined
        ? olderSide(first, host)
        : sideOf(first, host);
  if (before.kind === 'trouble') return before;
  const after = second === undefined ? besideIt(before, host) : sideOf(second, host);
  return after.kind === 'trouble' ? after : withoutMissing([before, after]);
}

function allAtHead(host: Host): SideFiles | Trouble {
  const found = sideAt('HEAD', (repository) => placeIn(null, repository, host), host);
  return found.kind === 'side'
    ? found
    : trouble(`what is not said is compared with the last commit, but ${found.reason}`);
}

/** An operand by itself: a path, `REVISION:PATH`, or a revision. What is both a path and a revision is the path. */
export function sideOf(operand: string, host: Host): SideFiles | Trouble {
  if (isPath(operand, host)) {
    sayOtherReading(operand, host);
    return { kind: 'side', host, paths: [operand], label: null };
  }
  const [revision, path] = splitAtColon(operand);
  const found = sideAt(revision, (repository) => placeIn(path, repository, host), host);
  return found.kind === 'side' ? found : trouble(neither(operand, found.reason, host));
}

const isPath = (operand: string, host: Host): boolean =>
  operand !== INPUT && host.kind(operand) !== 'missing';

/** The operand that stands alone, as it was: a path at `HEAD`, even one that is gone since. */
function olderSide(operand: string, host: Host): SideFiles | Trouble {
  const atHead = () => sideAt('HEAD', () => operand, host);
  if (isPath(operand, host)) {
    sayOtherReading(operand, host);
    return atHead();
  }
  const found = sideOf(operand, host);
  if (found.kind === 'side') return found;
  const then = atHead();
  return then.kind === 'side' && isPath(operand, then.host) ? then : found;
}

/** The same place in the work tree. */
function besideIt({ paths }: SideFiles, host: Host): SideFiles | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  if (repository.isBare) return trouble('a bare repository has no work tree; say two revisions to compare');
  const tree = workTree(host, repository);
  return tree.kind === 'trouble' ? tree : { kind: 'side', host: tree.host, paths, label: 'the work tree' };
}

/** A place as it was at a revision. */
function sideAt(
  revision: string,
  pathIn: (repository: Repository) => string,
  host: Host,
): SideFiles | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  const view = revisionView(host, revision);
  if (view.kind === 'trouble') return view;
  const path = pathIn(repository);
  if (placeBelow(host, repository.top, path) === null)
    return trouble(`${visible(path)}: it is not in this repository`);
  return { kind: 'side', host: view.host, paths: [path], label: visible(revision) };
}

/** A path from the repository's top, or from the working folder with `./` or `../`, as a path from there; null: the top. */
function placeIn(path: string | null, { top }: Repository, host: Host): string {
  const place = /^\.\.?(\/|$)/.test(path ?? '') ? resolve(host.cwd, path ?? '') : join(top, path ?? '');
  const way = relative(host.realPath('.') ?? host.cwd, place);
  return way === INPUT ? `./${way}` : way || '.';
}

/** `REVISION:PATH` in two; the path is null where there is none. A colon in braces is the revision's. */
function splitAtColon(operand: string): readonly [revision: string, path: string | null] {
  const [, revision, path] = /^((?:\{[^}]*\}|[^:{])*):(.*)$/s.exec(operand) ?? [];
  return revision === undefined || path === undefined ? [operand, null] : [revision, path];
}

/** Says of a path that it could be a revision, and how to write that. */
function sayOtherReading(path: string, host: Host): void {
  if (/\.plica$|^\.|^\/|\/$/.test(path) || resolveCommit(host, path).kind === 'trouble') return;
  const name = visible(path);
  complain(
    host,
    `\`${name}\` is a path here and a revision too; the path is compared (the revision is \`${name}:\`)`,
  );
}

function neither(operand: string, reason: string, host: Host): string {
  const near = didYouMean(nearPaths(host, operand).map(visible));
  return `${visible(operand)}: there is no such file or folder here, and as a revision it cannot be read (${reason})${near}`;
}

/** Of a place that only one side has, or where only one has recipes, the other side has nothing. */
function withoutMissing(sides: Sides): Sides {
  const [before, after] = sides;
  if (before.paths.join() !== after.paths.join()) return sides;
  const older = { ...before, paths: before.paths.filter((path) => hasRecipes(before.host, path)) };
  const newer = { ...after, paths: after.paths.filter((path) => hasRecipes(after.host, path)) };
  return older.paths.length + newer.paths.length === 0 ? sides : [older, newer];
}

function hasRecipes(host: Host, path: string): boolean {
  if (host.kind(path) !== 'folder') return host.kind(path) !== 'missing';
  const { files, unreadable } = findRecipes(host, path);
  return files.length + unreadable.length > 0;
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
