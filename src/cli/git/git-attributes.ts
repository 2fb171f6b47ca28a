import { join, relative } from 'node:path';
import type { Host, Trouble, Written } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import type { Repository } from '../../host/repository.js';
import { LONGEST_TEXT } from '../../text/longest.js';
import { visible } from '../../text/visible.js';
import { ATTRIBUTES_LINE, withLine, withoutLine } from './attributes-line.js';

/** What was done, in a sentence. */
export interface Done {
  readonly kind: 'done';
  readonly said: string;
}

/** Adds our line to the attributes at the top of a repository, or takes it out. All else in the file stays, byte for byte. */
export function changeAttributes(to: 'add' | 'remove', { top }: Repository, host: Host): Done | Trouble {
  const place = join(top, NAME);
  const name = visible(shown(relative(host.realPath('.') ?? host.cwd, place)));
  const before = textAt(place, host);
  if (typeof before === 'object' && before !== null) return trouble(`${name}: ${before.reason}`);
  const after = to === 'add' ? withLine(before) : before === null ? null : withoutLine(before);
  if (after === before) return { kind: 'done', said: `${name} ${SAID_ALREADY[to]}` };
  const written = put(after, { top, place, isNew: before === null }, host);
  if (written.kind === 'unwritable') return trouble(`${name} cannot be written: ${written.reason}`);
  return { kind: 'done', said: after === null ? `removed ${name}, which held nothing else` : SAID[to](name) };
}

const NAME = '.gitattributes';

const SAID_ALREADY = {
  add: `has \`${ATTRIBUTES_LINE}\` already`,
  remove: `has no line \`${ATTRIBUTES_LINE}\``,
} as const;

const SAID = {
  add: (name: string) => `added \`${ATTRIBUTES_LINE}\` to ${name}`,
  remove: (name: string) => `took \`${ATTRIBUTES_LINE}\` out of ${name}`,
} as const;

/** A character for each byte, as nobody says in which encoding it is; null: there is no file. */
function textAt(place: string, host: Host): string | null | { readonly reason: string } {
  if (host.kind(place) === 'missing') return null;
  if (host.realPath(place) !== place) return { reason: 'it is a link, which git does not follow here' };
  const read = host.read(place, LONGEST_TEXT);
  if (read.kind === 'too-large') return { reason: 'it is too large to be changed' };
  return read.kind === 'unreadable' ? read : Buffer.from(read.bytes).toString('latin1');
}

function put(
  text: string | null,
  { top, place, isNew }: { readonly top: string; readonly place: string; readonly isNew: boolean },
  host: Host,
): Written {
  if (text === null) return host.remove(place);
  const bytes = Buffer.from(text, 'latin1');
  return isNew ? host.create(place, bytes) : host.write(top, [{ name: NAME, bytes }]);
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
