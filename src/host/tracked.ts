import { isUtf8 } from 'node:buffer';
import { whatGitSaid } from './git.js';
import type { Host, Trouble } from './host.js';

/** A file as git keeps it. `path`: from the top, with `/`; `id`: its content's name. */
export interface Tracked {
  readonly path: string;
  readonly id: string;
  readonly kind: 'file' | 'link' | 'submodule' | 'unmerged';
}

/** The files of a commit. */
export const filesOfCommit = (host: Host, hash: string): readonly Tracked[] | Trouble =>
  listed(host, ['ls-tree', '-r', '-z', '--full-tree', hash]);

/** The files that the next commit would have. */
export const filesOfIndex = (host: Host): readonly Tracked[] | Trouble =>
  listed(host, ['ls-files', '-s', '-z', '--full-name', '--', ':/']);

function listed(host: Host, args: readonly string[]): readonly Tracked[] | Trouble {
  const ran = host.git(args);
  if (ran.kind === 'trouble') return ran;
  if (ran.code !== 0) return { kind: 'trouble', reason: whatGitSaid(ran.err) };
  return fieldsOf(ran.out).flatMap(tracked);
}

/** `mode type id` of a tree, or `mode id stage` of the index, then a tab and the path; what git would never check out is left out. */
function tracked(record: string): readonly Tracked[] {
  const [, mode, id, stage, path] = /^(\d+) (?:[a-z]+ )?([0-9a-f]+)(?: (\d))?\t(.+)$/s.exec(record) ?? [];
  if (mode === undefined || id === undefined || path === undefined) return [];
  if (path.split('/').some((name) => NEVER_CHECKED_OUT.test(name))) return [];
  const kind = stage !== undefined && stage !== '0' ? 'unmerged' : (KINDS[mode] ?? 'file');
  return [{ path: pathText(path), id, kind }];
}

const NEVER_CHECKED_OUT = /^(?:|\.|\.\.|\.git)$/i;

/** What is no plain file, by its mode. */
const KINDS: Readonly<Record<string, Tracked['kind']>> = { 120000: 'link', 160000: 'submodule' };

/** What stands between NUL characters, a character for each byte. */
export const fieldsOf = (out: Buffer): readonly string[] => out.toString('latin1').split('\0');

/**
 * A path out of its bytes. A name that is not UTF-8 keeps its odd bytes as lone surrogates, so that no two names become one, and
 * none can be taken for another.
 */
export const pathText = (bytes: string): string =>
  ASCII.test(bytes) ? bytes : bytes.split('/').map(nameText).join('/');

const ASCII = /^[\0-\x7f]*$/;

function nameText(bytes: string): string {
  const buffer = Buffer.from(bytes, 'latin1');
  if (isUtf8(buffer)) return buffer.toString('utf8');
  return bytes.replace(/[\x80-\xff]/g, (byte) => String.fromCharCode(0xdc00 + byte.charCodeAt(0)));
}
