import {
  fstatSync,
  lstatSync,
  readdirSync,
  realpathSync,
  rmdirSync,
  type Stats,
  statSync,
  unlinkSync,
} from 'node:fs';
import { join, resolve } from 'node:path';
import { beside } from './beside.js';
import type { Entry, Host, Listing, Read, Written } from './host.js';
import { createFile } from './create-file.js';
import { fonts } from './fonts.js';
import { git } from './git.js';
import { onStop } from './on-stop.js';
import { outlet } from './outlet.js';
import { readFile } from './read-file.js';
import { watchDisk } from './watch-disk.js';
import { whyNot } from './why-not.js';
import { writeTogether } from './write-together.js';

/** The machine that this process runs on. What few commands need is loaded by those: a start is counted in milliseconds. */
export function nodeHost(cwd: string = workingFolder(), env: Host['env'] = process.env): Host {
  return {
    cwd,
    env,
    out: outlet(1),
    err: outlet(2),
    kind: (path) => kindOf(stats(resolve(cwd, path))),
    realPath: (path) => realPath(resolve(cwd, path)),
    read: (path, most) => read(resolve(cwd, path), most),
    readInput,
    list: (folder) => list(resolve(cwd, folder)),
    write: (folder, files) => writeTogether(resolve(cwd, folder), files),
    writeStream: async (path, pieces) =>
      (await import('./write-stream.js')).writeStream(resolve(cwd, path), pieces),
    create: (path, bytes) => createFile(resolve(cwd, path), bytes),
    remove: (path) => remove(resolve(cwd, path)),
    watch: (passOver) => watchDisk(cwd, passOver),
    git: (args, input) => git(cwd, env, args, input),
    fonts,
    edition: async () => (await import('./edition.js')).edition(),
    threads: async () => (await import('./threads.js')).threads(cwd),
    beside: (task, most) => beside(cwd, task, most),
    onStop,
  };
}

/** The working folder; where it has been taken away, what the shell called it. */
function workingFolder(): string {
  try {
    return process.cwd();
  } catch (error) {
    whyNot(error);
    return resolve('/', process.env['PWD'] ?? '');
  }
}

function stats(path: string): Stats | null {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch (error) {
    whyNot(error);
    return null;
  }
}

const kindOf = (found: Stats | null): ReturnType<Host['kind']> =>
  found === null ? 'missing' : found.isFile() ? 'file' : found.isDirectory() ? 'folder' : 'other';

function realPath(path: string): string | null {
  try {
    return realpathSync.native(path);
  } catch (error) {
    whyNot(error);
    return null;
  }
}

function read(path: string, most: number): Read {
  try {
    const found = statSync(path);
    if (!found.isFile()) return { kind: 'unreadable', reason: `it is ${NO_FILE[kindOf(found)]}` };
    if (found.size > most) return { kind: 'too-large', bytes: found.size };
    return readFile(path, found.size, most);
  } catch (error) {
    return { kind: 'unreadable', reason: whyNot(error) };
  }
}

const NO_FILE = {
  file: 'a file',
  folder: 'a folder',
  other: 'a device or a pipe',
  missing: 'nothing',
} as const;

async function readInput(most: number): Promise<Read> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  try {
    if (fstatSync(0).isDirectory()) return { kind: 'unreadable', reason: `it is ${NO_FILE.folder}` };
    for await (const chunk of process.stdin) {
      chunks.push(chunk);
      length += chunk.length;
      if (length > most) return { kind: 'too-large', bytes: null };
    }
    return { kind: 'bytes', bytes: Buffer.concat(chunks) };
  } catch (error) {
    return { kind: 'unreadable', reason: whyNot(error) };
  }
}

function list(folder: string): Listing {
  try {
    const entries = readdirSync(folder, { withFileTypes: true }).map((entry): Entry => {
      const { name } = entry;
      if (entry.isFile()) return { name, kind: 'file' };
      if (entry.isDirectory()) return { name, kind: 'folder' };
      if (!entry.isSymbolicLink()) return { name, kind: 'other' };
      return { name, kind: kindOf(stats(join(folder, name))) === 'file' ? 'file' : 'link' };
    });
    return { kind: 'entries', entries };
  } catch (error) {
    return { kind: 'unreadable', reason: whyNot(error) };
  }
}

function remove(path: string): Written {
  try {
    if (lstatSync(path).isDirectory()) rmdirSync(path);
    else unlinkSync(path);
    return { kind: 'written' };
  } catch (error) {
    return { kind: 'unwritable', path, reason: whyNot(error) };
  }
}
