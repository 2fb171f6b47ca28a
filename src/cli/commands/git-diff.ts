import { plain } from '../../diagnostics/render-text.js';
import type { Host, Trouble } from '../../host/host.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type Command, complain } from '../command.js';
import type { State } from '../git/driver-sides.js';
import { paletteFor } from '../palette.js';
import { textWidth } from '../text-width.js';

export const gitDiff: Command = {
  name: 'git-diff',
  operands: 'PATH OLD-FILE HEX MODE NEW-FILE HEX MODE [NEW-PATH WORDS]',
  takes: [1, 9],
  summary: 'for git: what changed in a recipe, in the place of its lines',
  details: `Tells what \`plica diff\` would of one file. It takes what git hands to a program that
compares, so that git can call it, once, or with every diff:

  GIT_EXTERNAL_DIFF='plica git-diff --' git diff
  plica git-setup --external --apply

Both states are read in the place of PATH, and what they use as it is in the work tree
now. A file without envelopes is compared by what it does to all recipes of the work tree.
It ends with 0 whatever differs, since git takes anything else for a failure.`,
  example: 'plica git-diff a.plica old/a.plica 0 100644 a.plica 0 100644',
  options: [],
  run: async (given, host) => {
    const [path = '', ...handed] = given.operands;
    if (handed.length > 0 && handed.length < 6) {
      complain(host, 'git hands over 7 arguments, or 9 where a file was renamed');
      return 2;
    }
    // What is in the way is said with the rest: standard error would pass by git's pager.
    const paged = { ...host, err: host.out };
    await (handed.length === 0 ? tellUnmerged(path, paged) : tell(path, handed, given, paged));
    return 0;
  },
};

/** git tells no more of a file in which a merge left conflicts. */
const tellUnmerged = (path: string, { out }: Host): void =>
  out.write(`${visible(path)}: a merge left conflicts in it; settle them first\n`);

async function tell(
  path: string,
  [oldFile = '', , oldMode = '', newFile = '', , newMode = '', newPath = path]: readonly string[],
  given: Arguments,
  host: Host,
): Promise<void> {
  const { strong } = (await paletteFor(host.out, host, given)) ?? plain;
  const moved = newPath === path ? '' : ` → ${visible(newPath)}`;
  host.out.write(`${strong(`plica diff ${visible(path)}${moved}`)}\n\n`);
  const before = stateOf(path, oldFile, oldMode, host);
  const after = stateOf(newPath, newFile, newMode, host);
  if ('reason' in before) complain(host, before.reason);
  else if ('reason' in after) complain(host, after.reason);
  else await compare(before, after, given, host);
  host.out.write('\n');
}

async function compare(before: State, after: State, given: Arguments, host: Host): Promise<void> {
  const { compileSides } = await import('../diff/compile-sides.js');
  const { driverSides } = await import('../git/driver-sides.js');
  const compiled = await compileSides(driverSides(before, after, host), given, host);
  if (compiled === null) return;
  const palette = (await paletteFor(host.out, host, given)) ?? plain;
  const { diff } = await import('../../diff/diff.js');
  const { renderText } = await import('../../diff/render-text.js');
  const difference = { ...diff(compiled.before, compiled.after), isPartial: !compiled.whole };
  host.out.write(renderText(difference, palette, textWidth(host.out)));
}

/** A state of a file; or why it is none of a recipe. */
function stateOf(path: string, file: string, mode: string, host: Host): State | Trouble {
  if (!path.endsWith('.plica')) return trouble(path, 'it is no recipe; `git diff --no-ext-diff` shows it');
  if (mode === '.') return { path, bytes: null };
  if (!mode.startsWith('100')) return trouble(path, 'it is a link or a submodule');
  const read = host.read(file, MOST);
  if (read.kind === 'bytes') return { path, bytes: read.bytes };
  return trouble(path, read.kind === 'too-large' ? 'it is too large to be read' : read.reason);
}

const trouble = (path: string, reason: string): Trouble => ({
  kind: 'trouble',
  reason: `${visible(path)}: ${reason}`,
});

/** No recipe is nearly as large: this only keeps the program from running out of memory. In bytes. */
const MOST = 64 * 1024 * 1024;
