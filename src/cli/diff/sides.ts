import type { Host, Trouble } from '../../host/host.js';
import { findRepository, resolveCommit } from '../../host/repository.js';
import { visible } from '../../text/visible.js';
import { complain } from '../command.js';
import { INPUT } from '../inputs.js';
import { nearPaths } from '../near-paths.js';
import { type Side, sideAt, sideInWorkTree, withRecipes } from './side.js';
import { didYouMean } from '../words.js';

export type Sides = readonly [before: Side, after: Side];

/**
 * What the operands of a comparison mean. Two: each by itself. One: a path as it was at `HEAD`, or a revision, against the
 * work tree. None: all recipes at `HEAD` against the work tree. Where both sides are the same place, it may be there on one
 * of them only.
 */
export function sidesOf(operands: readonly string[], host: Host): Sides | Trouble {
  const empty = operands.indexOf('');
  if (empty >= 0) return trouble(`${empty === 0 ? 'OLD' : 'NEW'} is empty; it is to be a path or a revision`);
  const [first, second] = operands;
  const before =
    first === undefined
      ? allAtHead(host)
      : second === undefined
        ? olderSide(first, host)
        : sideOf(first, host);
  if (before.kind === 'trouble') return before;
  const after = second === undefined ? sideInWorkTree(before.paths, host) : sideOf(second, host);
  if (after.kind === 'trouble') return after;
  sayHowToNarrow(first, before, after, host);
  sayHowToNarrow(second, after, before, host);
  return withoutMissing([before, after]);
}

/** Says of a revision alone, beside a path, that it stands for everything. */
function sayHowToNarrow(operand: string | undefined, side: Side, other: Side, host: Host): void {
  if (operand === undefined || side.label !== operand || other.label !== null) return;
  if (side.paths[0] === other.paths[0]) return;
  complain(
    host,
    `\`${operand}\` stands for all its recipes; \`${operand}:PATH\` is one file or folder in it`,
  );
}

function allAtHead(host: Host): Side | Trouble {
  const found = sideAt('HEAD', { inRepository: '' }, host);
  if (found.kind === 'side') return found;
  return trouble(`without OLD, what changed since \`HEAD\` is told, but ${found.reason}`);
}

/** The operand that stands alone: a path as it was at `HEAD`, even one that is gone since; or else by itself. */
function olderSide(operand: string, host: Host): Side | Trouble {
  const found = sideOf(operand, host);
  if (found.kind === 'side' && found.label !== null) return found;
  const then = sideAt('HEAD', [operand], host);
  const isGone = found.kind === 'trouble' && then.kind === 'side' && isPath(operand, then.host);
  return found.kind === 'side' || isGone ? then : found;
}

/** An operand by itself: a path, `REVISION:PATH`, or a revision. What is both a path and a revision is the path. */
function sideOf(operand: string, host: Host): Side | Trouble {
  if (isPath(operand, host) && !isGitsOwn(operand, host)) {
    sayOtherReading(operand, host);
    return { kind: 'side', host, paths: [operand], label: null };
  }
  const [revision, path] = splitAtColon(operand);
  const found = sideAt(revision, { inRepository: path }, host);
  return found.kind === 'side' ? found : trouble(neither(operand, found.reason, host));
}

const isPath = (operand: string, host: Host): boolean =>
  operand !== INPUT && host.kind(operand) !== 'missing';

/** In the folder of a bare repository lie files of git's own, `HEAD` first of all: there the revision is meant. */
function isGitsOwn(path: string, host: Host): boolean {
  if (LOOKS_LIKE_A_PATH.test(path)) return false;
  const repository = findRepository(host);
  return repository.kind === 'repository' && repository.isBare && resolveCommit(host, path).kind === 'commit';
}

/** `REVISION:PATH` in two; without a path it is empty. A colon in braces is the revision's. */
function splitAtColon(operand: string): readonly [revision: string, path: string] {
  const [, revision, path] = /^((?:\{[^}]*\}|[^:{])*):(.*)$/s.exec(operand) ?? [];
  return revision === undefined || path === undefined ? [operand, ''] : [revision, path];
}

/** Says of a path that it could be a revision, and how to write that. */
function sayOtherReading(path: string, host: Host): void {
  if (LOOKS_LIKE_A_PATH.test(path) || resolveCommit(host, path).kind === 'trouble') return;
  const name = visible(path);
  complain(host, `\`${name}\` is read as a path, though it is a revision too (that is \`${name}:\`)`);
}

const LOOKS_LIKE_A_PATH = /\.plica$|^\.|^\/|\/$/;

function neither(operand: string, reason: string, host: Host): string {
  const [, older, newer] = /^(.+?)\.{2,3}([^./].*)$/.exec(operand) ?? [];
  if (older !== undefined && newer !== undefined && resolveCommit(host, older).kind === 'commit')
    return `${visible(operand)}: two revisions are given apart: \`plica diff ${visible(older)} ${visible(newer)}\``;
  const near = didYouMean(nearPaths(host, operand).map(visible));
  return `${visible(operand)}: there is no such file or folder here, and as a revision it cannot be read (${reason})${near}`;
}

/** Of one place, a side where nothing is has nothing; where neither side has anything, that is told of the older one. */
function withoutMissing([before, after]: Sides): Sides {
  if (before.paths.join() !== after.paths.join()) return [before, after];
  const [older, newer] = [withRecipes(before), withRecipes(after)];
  return older.paths.length + newer.paths.length === 0 ? [before, newer] : [older, newer];
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
