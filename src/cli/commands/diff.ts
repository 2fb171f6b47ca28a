import { basename, dirname } from 'node:path';
import { CONSEQUENCES, type Difference, type EnvelopeChange } from '../../diff/difference.js';
import type { Host } from '../../host/host.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import { type Arguments, itemsOf } from '../arguments.js';
import { type Command, complain, type ExitCode, worst } from '../command.js';
import { ONLY } from '../compile-inputs.js';
import { paletteFor } from '../palette.js';
import { textWidth } from '../text-width.js';

export const diff: Command = {
  name: 'diff',
  operands: '[OLD [NEW]]',
  takes: [0, 2],
  summary: 'tell what changed in recipes, and what follows from it on paper',
  details: `Tells of each envelope that changed what was written, what came of it on paper, and
whether it has to be cut, scored, trimmed or glued anew. Layout, order and comments are
no change. OLD and NEW are files, folders, or what git keeps: REVISION:PATH, or REVISION
for all its recipes, each with the files that it used then. Without NEW, OLD is compared
with the work tree (a file or folder as it was at HEAD); without both, all recipes are.

Ends with 0 where nothing differs, with 1 where something does (with --fail-on: where one
of those does), and with 2 where not all of both sides can be read.`,
  example: 'plica diff HEAD~1 --fail-on recut,restock',
  options: [
    {
      name: 'format',
      value: 'FORMAT',
      choices: ['text', 'markdown', 'json', 'html'],
      meaning: 'for people, to paste into a review, for programs, or a page with pictures',
    },
    {
      name: 'svg',
      value: 'FILE',
      meaning: 'draw what is cut or scored otherwise, before and after, into FILE',
    },
    {
      name: 'fail-on',
      value: 'LIST',
      choices: [...CONSEQUENCES, 'added', 'removed'],
      many: true,
      meaning: 'end with 1 only where one of these differs, with commas between',
    },
    ONLY,
  ],
  run: async (given, host) => {
    const picture = given.value('svg');
    if (picture !== null && !picture.endsWith('.svg'))
      return refuse(host, `\`--svg ${visible(picture)}\` is to be a drawing; its name ends in \`.svg\``);
    const { sidesOf } = await import('../diff/sides.js');
    const sides = sidesOf(given.operands, host);
    if ('kind' in sides) return refuse(host, sides.reason);
    const { compileSides } = await import('../diff/compile-sides.js');
    const compiled = await compileSides(sides, given, host);
    if (compiled === null) return 2;
    const { noSuchEnvelope, ofEnvelope } = await import('../diff/one-envelope.js');
    const only = given.value('only');
    const missing = only === null ? null : noSuchEnvelope(only, compiled);
    if (missing !== null) return refuse(host, missing);
    const { diff: differenceOf } = await import('../../diff/diff.js');
    const all = { ...differenceOf(compiled.before, compiled.after), isPartial: !compiled.whole };
    const difference: Difference = only === null ? all : ofEnvelope(only, all);
    const failing = given.value('fail-on');
    host.out.write(await (RENDERERS[given.value('format') ?? 'text'] as Renderer)(difference, given, host));
    return worst(
      picture === null ? 0 : await draw(difference, picture, host),
      codeOf(difference, failing === null ? null : itemsOf(failing)),
      difference.isPartial ? 2 : 0,
    );
  },
};

function refuse(host: Host, reason: string): ExitCode {
  complain(host, reason);
  return 2;
}

type Renderer = (difference: Difference, given: Arguments, host: Host) => Promise<string>;

const RENDERERS: Readonly<Record<string, Renderer>> = {
  text: async (difference, given, host) => {
    const { renderText } = await import('../../diff/render-text.js');
    return renderText(
      difference,
      (await paletteFor(host.out, host, given)) ?? undefined,
      textWidth(host.out),
    );
  },
  markdown: async (difference) => (await import('../../diff/render-markdown.js')).renderMarkdown(difference),
  json: async (difference) => (await import('../../diff/render-json.js')).renderJson(difference),
  html: async (difference, _, host) => {
    const { renderHtml } = await import('../../diff/render-html.js');
    return renderHtml(difference, (await pictures(difference, host)).each);
  },
};

const pictures = async (difference: Difference, host: Host) =>
  (await import('../diff/change-pictures.js')).changePictures(difference, host);

/** Writes the picture of all that is cut or scored otherwise. A file is left as it is where there is nothing to draw. */
async function draw(difference: Difference, path: string, host: Host): Promise<ExitCode> {
  const { all } = await pictures(difference, host);
  const name = visible(shown(path));
  if (all === null) {
    host.err.write(`nothing is cut or scored otherwise; ${name} is not written\n`);
    return 0;
  }
  const file = { name: basename(path), bytes: new TextEncoder().encode(all) };
  const written = host.write(dirname(path), [file]);
  if (written.kind === 'unwritable') return refuse(host, `${name} cannot be written: ${written.reason}`);
  host.err.write(`wrote ${name}\n`);
  return 0;
}

/**
 * What became of an envelope that cannot be read, nobody knows; else it counts where it is one of `failing` (null: all are). A batch
 * counts where all do.
 */
function codeOf({ changes, batches = [] }: Difference, failing: readonly string[] | null): ExitCode {
  if (changes.some(({ kind }) => kind === 'unreadable')) return 2;
  const counts = (change: EnvelopeChange): boolean =>
    failing === null || kindsOf(change).some((kind) => failing.includes(kind));
  return changes.some(counts) || (failing === null && batches.length > 0) ? 1 : 0;
}

const kindsOf = (change: EnvelopeChange): readonly string[] =>
  'consequences' in change ? change.consequences : [change.kind];
