import { join, relative } from 'node:path';
import { history, type Step } from '../../host/history.js';
import type { Host, Trouble } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { findRepository } from '../../host/repository.js';
import { revisionViews } from '../../host/revision-views.js';
import { visible } from '../../text/visible.js';
import type { Point } from './envelope-log.js';
import { type RecipeFile, recipeFile, unreadableFile } from './recipe-file.js';

/** The states of a recipe file, the newest first: the work tree, then commit by commit. */
export interface FileHistory {
  readonly kind: 'file history';
  readonly moments: readonly [Moment, ...Moment[]];
  /** Reads the file at a moment. */
  readonly read: (moment: Moment) => Promise<RecipeFile>;
  /** The file at the newest moment at which it is there. */
  readonly lastSeen: () => Promise<RecipeFile>;
}

export interface Moment extends Point {
  /** Null: it is not committed yet. */
  readonly commit: Step | null;
  /** Where the file is, from the working folder. */
  readonly path: string;
}

/** The history of a file, followed through renames. A bare repository has no work tree. */
export function fileHistory(host: Host, path: string): FileHistory | Trouble {
  if (!path.endsWith('.plica')) return trouble(path, 'this is no recipe file (*.plica)');
  const repository = findRepository(host);
  if (repository.kind === 'trouble') return repository;
  const past = history(host, path);
  if (past.kind === 'trouble') return past;
  const [newest, ...older] = past.steps;
  if (newest === undefined) return trouble(path, 'no commit of this branch has it');

  const here = { ...host, cwd: host.realPath('.') ?? host.cwd };
  const views = revisionViews(
    here,
    repository.top,
    past.steps.map(({ hash }) => hash),
  );
  const committed = (step: Step): Moment => ({
    id: step.hash,
    parents: step.parents,
    commit: step,
    path: shown(relative(here.cwd, join(repository.top, step.path))),
  });
  const uncommitted: Moment = { id: 'work tree', parents: [newest.hash], commit: null, path };

  let last: { readonly path: string; readonly file: RecipeFile } | null = null;
  const read = async ({ id, path, commit }: Moment): Promise<RecipeFile> => {
    const view = commit ? views(id) : { kind: 'view' as const, host };
    if (view.kind === 'trouble') return unreadableFile(view.reason);
    if (last?.path !== path || !last.file.isSameOn(view.host))
      last = { path, file: await recipeFile(view.host, path) };
    return last.file;
  };
  const commits: FileHistory['moments'] = [committed(newest), ...older.map(committed)];
  const moments: FileHistory['moments'] = repository.isBare ? commits : [uncommitted, ...commits];
  const lastSeen = async (): Promise<RecipeFile> => {
    for (const moment of moments) {
      const file = await read(moment);
      if (file.isThere) return file;
    }
    return read(moments[0]);
  };
  return { kind: 'file history', moments, read, lastSeen };
}

const trouble = (path: string, reason: string): Trouble => ({
  kind: 'trouble',
  reason: `${visible(shown(path))}: ${reason}`,
});
