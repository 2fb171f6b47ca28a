import { relative } from 'node:path';
import { findRecipes } from '../host/find-recipes.js';
import type { Host, Trouble } from '../host/host.js';
import { indexView } from '../host/index-view.js';
import { projectRoot } from '../host/project-root.js';
import { shown } from '../host/reader.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import type { Option } from './command.js';
import { INPUT, type Inputs, readInputs } from './inputs.js';

export const STAGED: Option = {
  name: 'staged',
  value: null,
  meaning: 'read what the next commit would have, not the work tree; no PATH: all of the repository',
};

/** What a command is given to read, and the machine to read it from. */
export interface Reading {
  readonly kind: 'read';
  readonly host: Host;
  readonly inputs: Inputs;
}

/** Reads the files given to a command: from the disk, or with `--staged` as the next commit would have them. */
export async function readGiven(given: Arguments, host: Host): Promise<Reading | Trouble> {
  if (!given.has(STAGED.name)) return { kind: 'read', host, inputs: await readInputs(host, given.operands) };
  if (given.operands.includes(INPUT)) return trouble(NO_INPUT);
  const index = indexView(host);
  if (index.kind === 'trouble') return index;
  const unstaged = given.operands.find((path) => isMissing(index.host, path) && !isMissing(host, path));
  if (unstaged !== undefined) return trouble(`${visible(shown(unstaged))}: nothing of it is staged`);
  return { kind: 'read', host: index.host, inputs: await readStaged(index.host, given.operands) };
}

const NO_INPUT = '`--staged` reads what git keeps, and standard input is not among it; leave one of them out';

const isMissing = (host: Host, path: string): boolean => host.kind(path) === 'missing';

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });

/** A repository without recipes has none to be read: a hook runs in any. */
async function readStaged(index: Host, paths: readonly string[]): Promise<Inputs> {
  if (paths.length > 0) return readInputs(index, paths);
  const cwd = index.realPath('.') ?? index.cwd;
  const top = relative(cwd, projectRoot(index, cwd, cwd)) || '.';
  const { files, unreadable } = findRecipes(index, top);
  return files.length + unreadable.length === 0 ? NOTHING : readInputs(index, [top]);
}

const NOTHING: Inputs = { files: [], limits: [], troubles: [] };
