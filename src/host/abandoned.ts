import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { whyNot } from './why-not.js';

/** A file that was not whole yet when a folder was first looked into. */
interface Part {
  readonly path: string;
  /** What it was to be called. */
  readonly name: string;
  /** The process that wrote it. */
  readonly pid: number;
}

/**
 * Takes away what processes that are no more left beside files of these names while they wrote them. What cannot be taken
 * away stays: it is in nobody's way.
 */
export function dropAbandoned(folder: string, names: readonly string[]): void {
  try {
    for (const { path, name, pid } of partsIn(folder))
      if (names.includes(name) && !isRunning(pid)) rmSync(path, { force: true });
  } catch (error) {
    whyNot(error);
  }
}

/** Each folder is looked into once: a long build writes thousands of files into one. */
const known = new Map<string, readonly Part[]>();

function partsIn(folder: string): readonly Part[] {
  const before = known.get(folder);
  if (before !== undefined) return before;
  const parts = readdirSync(folder).flatMap((file): readonly Part[] => {
    const [, name, pid] = BESIDE.exec(file) ?? [];
    return name === undefined ? [] : [{ path: join(folder, file), name, pid: Number(pid) }];
  });
  known.set(folder, parts);
  return parts;
}

/** As `besideOf` calls it. */
const BESIDE = /^\.(.+)\.(\d+)(?:-\d+)?\.part$/;

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code !== 'ESRCH';
  }
}
