import { join, relative, sep } from 'node:path';
import type { Entry, Host, Trouble } from './host.js';
import type { Repository } from './repository.js';
import { fieldsOf, pathText } from './tracked.js';
import type { View } from './view.js';

/** The machine without what a commit of this repository never holds: what it ignores, and repositories inside it. */
export function workTree(host: Host, { top }: Repository): View | Trouble {
  const ran = host.git([...IGNORED]);
  if (ran.kind === 'trouble') return ran;
  const ignored = new Set(fieldsOf(ran.out).map((path) => pathText(path.replace(/\/$/, ''))));
  const isApart = (place: string, kind: Entry['kind']): boolean =>
    ignored.has(relative(top, place).replaceAll(sep, '/')) ||
    (kind === 'folder' && host.kind(join(place, '.git')) !== 'missing');
  const list: Host['list'] = (folder) => {
    const listing = host.list(folder);
    if (listing.kind === 'unreadable') return listing;
    const real = host.realPath(folder) ?? folder;
    return {
      kind: 'entries',
      entries: listing.entries.filter(({ name, kind }) => !isApart(join(real, name), kind)),
    };
  };
  return { kind: 'view', host: { ...host, list } };
}

/** A folder with nothing else in it by its own name. */
const IGNORED = [
  'ls-files',
  '-z',
  '--others',
  '--ignored',
  '--exclude-standard',
  '--directory',
  '--full-name',
  '--',
  ':/',
] as const;
