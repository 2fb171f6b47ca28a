import { isAbsolute, relative } from 'node:path';
import { isInside, shown } from '../host/reader.js';
import { visible } from '../text/visible.js';

/** Names that make and ninja read differently, or that neither can be told, whatever is put before the sign. */
const UNREADABLE = /[\r\n\t=;*?[\]~|&<>()"'`]/;

/**
 * A dependency file as make and ninja read it: what was written, and what it was made from; then, for make, an empty rule for each
 * of those, so that one that is gone does not stop it. Paths are relative to the working folder where they lie in it. A sentence
 * where a name cannot be written.
 */
export function depfile(
  targets: readonly string[],
  prerequisites: readonly string[],
  cwd: string,
): { readonly text: string } | string {
  const [made, from] = [targets, prerequisites].map((paths) =>
    [...new Set(paths.map((path) => fromHere(path, cwd)))].sort(),
  ) as [string[], string[]];
  const odd = [...made, ...from].find((path) => UNREADABLE.test(path));
  if (odd !== undefined)
    return `\`${visible(odd)}\` has a sign in its name that make and ninja do not read alike; rename it, or leave \`--depfile\` out`;
  const rules = from.map((path) => `${spelled(path)}:\n`).join('');
  return { text: `${made.map(spelled).join(' ')}: ${from.map(spelled).join(' ')}\n${rules}` };
}

function fromHere(path: string, cwd: string): string {
  if (!isAbsolute(path)) return shown(path);
  return shown(isInside(cwd, path) ? relative(cwd, path) : path);
}

/** What both read as one name: a space, `#` and `:` after a backslash, a dollar twice. */
const spelled = (path: string): string =>
  path
    .replace(/(\\*) /g, '$1$1\\ ')
    .replace(/[#:]/g, '\\$&')
    .replaceAll('$', '$$$$');
