import { accessSync, constants, lstatSync, mkdirSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type * as WorkerThreads from 'node:worker_threads';
import { builtin } from './builtin.js';

/** Where a file goes, behind any link. `mode`: the permissions of the one that lies there; null: none does. */
export interface Place {
  readonly path: string;
  readonly mode: number | null;
}

/** Permission to write, for anyone. */
const WRITABLE = 0o222;

/** Where a file really goes, or why it cannot go there. */
export function placeOf(path: string): Place | string {
  const there = lstatSync(path, { throwIfNoEntry: false });
  if (there === undefined) return { path, mode: null };
  const real = there.isSymbolicLink() ? realpathSync.native(path) : path;
  const found = lstatSync(real);
  if (!found.isFile()) return 'something that is no file is in its place';
  if ((found.mode & WRITABLE) === 0) return 'it is read-only';
  accessSync(real, constants.W_OK);
  return { path: real, mode: found.mode & 0o7777 };
}

/** What a file is called until it is whole: beside its place, known by the process and the thread that write it. */
export function besideOf(path: string): string {
  const { threadId } = builtin<typeof WorkerThreads>('node:worker_threads');
  return join(dirname(path), `.${basename(path)}.${process.pid}${threadId > 0 ? `-${threadId}` : ''}.part`);
}

/**
 * Makes a folder and those above it that are missing, one at a time: told to do that by itself, Node 20 never returns
 * where a file system says that a new folder's parent is not there although it is (`/proc`).
 */
export function makeFolder(folder: string): void {
  if (isFolder(folder)) return;
  // In what is no folder none can be made: the error is then that of the one that was asked for.
  if (!isThere(dirname(folder))) makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (error) {
    if (!isFolder(folder)) throw error; // another program may have made it meanwhile
  }
}

const isThere = (path: string): boolean => statSync(path, { throwIfNoEntry: false }) !== undefined;

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
