import { join, relative, resolve } from 'node:path';
import { findRecipes } from '../../host/find-recipes.js';
import type { Host, Trouble } from '../../host/host.js';
import { placeBelow } from '../../host/place-below.js';
import { findRepository, type Repository } from '../../host/repository.js';
import { revisionView } from '../../host/revision-view.js';
import { workTree } from '../../host/work-tree.js';
import { visible } from '../../text/visible.js';
import { INPUT } from '../inputs.js';

/** Recipes in one state: on which machine, and where. */
export interface Side {
  readonly kind: 'side';
  /** The machine as it is, or as it was at a revision. */
  readonly host: Host;
  /** None: nothing is there. */
  readonly paths: readonly string[];
  /** What messages call it; null: its paths say enough. */
  readonly label: string | null;
}

/** Places as they were at a revision. `places`: paths from the working folder; or in the repository, as `REVISION:PATH` has it. */
export function sideAt(
  revision: string,
  places: readonly string[] | { readonly inRepository: string },
  host: Host,
): Side | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  const view = revisionView(host, revision);
  if (view.kind === 'trouble') return view;
  const paths = 'inRepository' in places ? [pathIn(repository, places.inRepository, host)] : places;
  const outside = paths.find((path) => placeBelow(host, repository.top, path) === null);
  if (outside !== undefined)
    return { kind: 'trouble', reason: `${visible(outside)}: it is not in this repository` };
  return { kind: 'side', host: view.host, paths, label: visible(revision) };
}

/** From the repository's top (empty: the top itself), but with `./` or `../` from the working folder. */
function pathIn({ top }: Repository, path: string, host: Host): string {
  const place = /^\.\.?(\/|$)/.test(path) ? resolve(host.cwd, path) : join(top, path);
  const way = relative(host.realPath('.') ?? host.cwd, place);
  return way === INPUT ? `./${way}` : way || '.';
}

/** Places in the work tree. */
export function sideInWorkTree(paths: readonly string[], host: Host): Side | Trouble {
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  if (repository.isBare) return { kind: 'trouble', reason: NO_WORK_TREE };
  const tree = workTree(host, repository);
  return tree.kind === 'trouble' ? tree : { kind: 'side', host: tree.host, paths, label: 'the work tree' };
}

const NO_WORK_TREE = 'a bare repository has no work tree; say two revisions to compare';

/** A side with only those of its paths where it has recipes. */
export const withRecipes = (side: Side): Side => ({
  ...side,
  paths: side.paths.filter((path) => hasRecipes(side.host, path)),
});

function hasRecipes(host: Host, path: string): boolean {
  if (host.kind(path) !== 'folder') return host.kind(path) !== 'missing';
  const { files, unreadable } = findRecipes(host, path);
  return files.length + unreadable.length > 0;
}
