import { resolve } from 'node:path';
import { type Palette, renderText } from '../../diagnostics/render-text.js';
import type { Host } from '../../host/host.js';
import { isInside, shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type Command, complain } from '../command.js';
import { hasErrors } from '../compile-inputs.js';
import { INPUT, wrongPath } from '../inputs.js';
import { paletteFor } from '../palette.js';
import { changesSince, lookAgain, toTell, type Watched } from '../watched.js';
import { counted } from '../../text/counted.js';
import { type Order, OUTPUT_OPTIONS, readOrder, writeEnvelopes } from '../write-envelopes.js';
import { nothingWrong } from './check.js';

export const watch: Command = {
  name: 'watch',
  operands: '[PATH…]',
  takes: [0, Infinity],
  summary: 'check again at each save, until Ctrl-C; with --out, build again too',
  details: `Checks the files given (or those in the working folder), and then, each time a file is
saved, comes or goes, that file and those that use it. With --out, the envelopes of these
files are built as well, where they have no error. Ctrl-C ends it, with 0.`,
  example: 'plica watch specs --out out',
  options: OUTPUT_OPTIONS,
  run: async (given, host) => {
    const order = given.has('out') ? readOrder(given, host) : null;
    const wrong = typeof order === 'string' ? order : whatIsWrong(given, host);
    if (wrong !== null || typeof order === 'string') {
      complain(host, wrong ?? '');
      return 2;
    }
    await keepLooking(pathsOf(given), order, given, host);
    return 0;
  },
};

const pathsOf = ({ operands }: Arguments): readonly string[] => (operands.length === 0 ? ['.'] : operands);

function whatIsWrong(given: Arguments, host: Host): string | null {
  const lone = given.has('out') ? undefined : ['emit', 'page', 'margin'].find((option) => given.has(option));
  if (lone !== undefined) return `\`--${lone}\` is about what is built; say where to, as in \`--out out\``;
  if (given.operands.includes(INPUT)) return 'standard input cannot be watched; give a file or a folder';
  for (const path of pathsOf(given)) {
    const trouble = wrongPath(host, path);
    if (trouble !== null) return trouble;
  }
  return null;
}

async function keepLooking(
  paths: readonly string[],
  order: Order | null,
  given: Arguments,
  host: Host,
): Promise<void> {
  const palette = (await paletteFor(host.out, host, given)) ?? undefined;
  const passOver = order && folderPassedOver(order.folder, paths, host);
  const isPassedOver = (id: string): boolean => passOver !== null && isInside(passOver, id);
  const lookOut = host.watch(passOver);
  try {
    await lookOut.follow(paths);
    host.err.write(`watching ${paths.map((path) => visible(shown(path))).join(', ')}; Ctrl-C ends it\n`);
    let before: Watched | null = null;
    do {
      const now: Watched = await lookAgain(host, paths, isPassedOver, before);
      await tell(before, now, order, host, palette);
      await lookOut.follow([...now.files.keys()]);
      before = now;
    } while (host.out.isRead() && (await lookOut.changed()));
  } finally {
    await lookOut.stop();
  }
}

/** The output folder, so that what is written does not start another look; null where recipes are watched in it. */
function folderPassedOver(out: string, paths: readonly string[], host: Host): string | null {
  const folder = host.realPath(out) ?? resolve(host.cwd, out);
  return paths.some((path) => isInside(folder, host.realPath(path) ?? resolve(host.cwd, path)))
    ? null
    : folder;
}

/** Says what has changed and what there is to say about it, and builds it again. */
async function tell(
  before: Watched | null,
  now: Watched,
  order: Order | null,
  host: Host,
  palette: Palette | undefined,
): Promise<void> {
  for (const trouble of now.troubles) if (!before?.troubles.includes(trouble)) complain(host, trouble);
  for (const change of before ? changesSince(before, now, host) : []) host.out.write(`${visible(change)}\n`);
  const names = toTell(before, now);
  const found = now.diagnostics.filter(({ primary }) => names.has(primary.span.source.name));
  const recipes = now.recipes.filter(({ envelope }) => names.has(envelope.span.source.name));
  const files = [...now.files.values()].filter(({ name, given }) => given && names.has(name)).length;
  host.out.write(found.length > 0 ? renderText(found, palette) : nothingWrong({ files, recipes }));
  host.out.write(remaining(now, found.length, names));
  const sound = recipes.filter(({ diagnostics }) => !hasErrors(diagnostics));
  if (order !== null && sound.length > 0) await writeEnvelopes(sound, order, host);
}

/** What is still to be said about files that were not checked again. */
function remaining(now: Watched, told: number, names: ReadonlySet<string>): string {
  const others = now.diagnostics.map(({ primary }) => primary.span.source.name);
  const files = new Set(others.filter((name) => !names.has(name)));
  const count = now.diagnostics.length - told;
  if (count === 0 || names.size === 0) return '';
  return `${counted(count, 'finding')} in ${counted(files.size, 'other file')} as before\n`;
}
