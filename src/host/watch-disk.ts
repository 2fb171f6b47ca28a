import type { FSWatcher } from 'chokidar';
import { realpathSync, type Stats, statSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { bell } from './bell.js';
import type { Watch } from './host.js';

/** How long nothing may happen before a change counts as over: an editor saves in several steps. In ms. */
const STILL = 60;
/** How often it is seen whether a folder has gone, come back, or been replaced as a whole. In ms. */
const HEARTBEAT = 500;

/** A folder that is looked at. `identity`: which folder it was; null: it was not there. */
interface Followed {
  readonly folder: string;
  /** Whether recipes in the folders below count too. */
  readonly deep: boolean;
  identity: string | null;
  watcher: FSWatcher | null;
}

/**
 * Looks out for changes on the disk. Folders are watched, never files, since many editors save by renaming a new file over
 * the old one. It ends with SIGINT and SIGTERM, and then leaves nothing open.
 */
export function watchDisk(cwd: string, passOver: string | null): Watch {
  const followed = new Map<string, Followed>();
  const ring = bell(STILL);
  // Set where the system refuses to tell of changes (it watches only so many folders): then every beat may bring some.
  let blind = false;
  const goBlind = (): void => {
    blind = true;
    ring.ring();
  };
  const avoid = passOver === null ? null : behindLinks(resolve(cwd, passOver));

  const look = async (each: Followed): Promise<void> => {
    const identity = identityOf(each.folder);
    if (identity === each.identity) return;
    each.identity = identity;
    const before = each.watcher;
    each.watcher = null;
    await before?.close();
    if (identity !== null) each.watcher = await watcherOf(each, avoid, ring.ring, goBlind);
    ring.ring();
  };

  let looking: Promise<unknown> = Promise.resolve();
  const lookAtAll = (): Promise<unknown> =>
    (looking = looking.then(() => Promise.all([...followed.values()].map(look))));
  const heart = setInterval(() => {
    void lookAtAll();
    if (blind) ring.ring();
  }, HEARTBEAT);

  const stop = async (): Promise<void> => {
    clearInterval(heart);
    for (const signal of SIGNALS) process.off(signal, stop);
    await looking;
    await Promise.all([...followed.values()].map(async ({ watcher }) => watcher?.close()));
    ring.stop();
  };
  for (const signal of SIGNALS) process.on(signal, stop);

  return {
    follow: async (paths) => {
      for (const path of paths) {
        const place = behindLinks(resolve(cwd, path));
        const deep = statOf(place)?.isDirectory() === true;
        const folder = deep ? place : dirname(place);
        if (isCovered(folder, deep, followed)) continue;
        followed.set(folder, {
          folder,
          deep,
          identity: null,
          watcher: followed.get(folder)?.watcher ?? null,
        });
      }
      await lookAtAll();
    },
    changed: ring.wait,
    stop,
  };
}

const SIGNALS = ['SIGINT', 'SIGTERM'] as const;

/** Whether a folder is looked at already, by itself or with one above it. */
function isCovered(folder: string, deep: boolean, followed: ReadonlyMap<string, Followed>): boolean {
  for (let at = folder; ; at = dirname(at)) {
    const each = followed.get(at);
    if (each?.deep || (each && at === folder && !deep)) return true;
    if (isPassedOver(basename(at)) || dirname(at) === at) return false;
  }
}

async function watcherOf(
  { folder, deep }: Followed,
  avoid: string | null,
  ring: () => void,
  goBlind: () => void,
): Promise<FSWatcher> {
  const { watch } = await import('chokidar');
  const watcher = watch(folder, {
    ignoreInitial: true,
    followSymlinks: false,
    atomic: false,
    ignored: (path, stats) => path !== folder && isIgnored(path, stats, avoid),
    ...(deep ? {} : { depth: 0 }),
  });
  watcher.on('all', ring);
  watcher.on('error', goBlind);
  await new Promise<void>((ready) => watcher.once('ready', ready));
  return watcher;
}

const isIgnored = (path: string, stats: Stats | undefined, avoid: string | null): boolean =>
  path === avoid || isPassedOver(basename(path)) || (stats?.isFile() === true && !path.endsWith('.plica'));

/** As a search for recipes passes over them. */
const isPassedOver = (name: string): boolean => name === 'node_modules' || name.startsWith('.');

/** Tells one folder from another that takes its place; null: there is none. */
function identityOf(folder: string): string | null {
  const found = statOf(folder);
  return found === null ? null : `${found.dev} ${found.ino} ${found.birthtimeMs}`;
}

function behindLinks(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    return path;
  }
}

function statOf(path: string): Stats | null {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch {
    return null; // A place that cannot be looked at is as good as none: it may come back.
  }
}
