import { join } from 'node:path';
import type { CompiledRecipe } from '../compile.js';
import type { Emitter, EmitOptions, PageName } from '../emit/emitter.js';
import { FACTS } from '../emit/kinds.js';
import type { Host } from '../host/host.js';
import { shown } from '../host/reader.js';
import { fileStem } from '../text/file-stem.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import { chosenKinds, EMIT } from './chosen-kinds.js';
import { complain, type ExitCode, type Option } from './command.js';
import { readLength } from './read-length.js';
import { stampDate } from './stamp-date.js';
import { counted } from '../text/counted.js';

/** What most printers cannot reach (common practice, no source), and more than any needs, in mm. */
const USUAL_MARGIN = 6;
const MOST_MARGIN = 35;

const PAGES: readonly PageName[] = ['letter', 'a4', 'a3', 'tabloid', 'legal', 'fit'];

/** How a command is told where to write, and for which printer. */
export const OUTPUT_OPTIONS: readonly Option[] = [
  { name: 'out', value: 'DIR', meaning: 'the folder to write into; made when missing' },
  EMIT,
  {
    name: 'page',
    value: 'PAGE',
    choices: PAGES,
    meaning: 'the printer’s paper (left out: letter for recipes in inches, else a4)',
  },
  {
    name: 'margin',
    value: 'LENGTH',
    meaning: `what the printer cannot reach at each edge, as 6mm or 1/4in (left out: ${USUAL_MARGIN} mm)`,
  },
];

/** What is to be written where. */
export interface Order {
  readonly folder: string;
  /** The names of the kinds of file. */
  readonly kinds: ReadonlySet<string>;
  /** Whether facts of the recipe files are wanted too. */
  readonly facts: boolean;
  readonly options: Omit<EmitOptions, 'fonts'>;
}

/** Reads the order out of the arguments and the environment, or says what is wrong with it. */
export function readOrder(given: Arguments, { env }: Host): Order | string {
  const folder = given.value('out');
  if (folder === null) return 'say where to write, as in `--out out`';
  const written = given.value('margin') ?? `${USUAL_MARGIN} mm`;
  const margin = readLength(written);
  if (margin === null)
    return `\`--margin\` is a length with its unit, as \`6mm\` or \`1/4in\`, not \`${visible(written)}\``;
  if (margin > MOST_MARGIN) return `\`--margin ${visible(written)}\` is more than ${MOST_MARGIN} mm`;
  const date = stampDate(env['SOURCE_DATE_EPOCH']);
  if (date === null) return 'SOURCE_DATE_EPOCH is not a number of seconds since 1970';
  const page = given.value('page') as PageName | null;
  const chosen = chosenKinds(given.value('emit'));
  const kinds = new Set([...chosen].filter((name) => name !== FACTS.name));
  return { folder, kinds, facts: chosen.has(FACTS.name), options: { page, margin, date } };
}

/** Writes the files of each envelope, all or none, and says so; the first that cannot be written ends it. */
export async function writeEnvelopes(
  recipes: readonly CompiledRecipe[],
  { folder, kinds, options }: Order,
  host: Host,
): Promise<ExitCode> {
  const { EMITTERS } = await import('../emit/index.js');
  const emitters = EMITTERS.filter(({ name }) => kinds.has(name));
  const fonts = host.fonts();
  const names: string[] = [];
  for (const recipe of recipes) {
    const files = await emitAll(emitters, recipe, { ...options, fonts });
    const written = host.write(folder, files);
    if (written.kind === 'unwritable') {
      complain(host, `${visible(shown(written.path))} cannot be written: ${written.reason}`);
      return 2;
    }
    names.push(...files.map(({ name }) => name));
  }
  host.err.write(success(folder, names, kinds));
  return 0;
}

async function emitAll(emitters: readonly Emitter[], recipe: CompiledRecipe, options: EmitOptions) {
  const files: { readonly name: string; readonly bytes: Uint8Array }[] = [];
  for (const { emit } of emitters) {
    const outputs = await emit(recipe, options);
    files.push(
      ...outputs.map(({ extension, bytes }) => ({ name: fileStem(recipe.envelope.name) + extension, bytes })),
    );
  }
  return files;
}

/** How many names fit the line that says what was written. */
const NAMED = 2;

function success(folder: string, names: readonly string[], kinds: ReadonlySet<string>): string {
  const next = kinds.has('template') ? '; next: print a template at 100 % and measure its scale bars' : '';
  return names.length > 0 ? `${saidWritten(folder, names)}${next}\n` : 'nothing of that kind to write\n';
}

/** `wrote out/a.svg, out/a.pdf and 3 more files` */
export function saidWritten(folder: string, names: readonly string[]): string {
  const paths = names.slice(0, NAMED).map((name) => visible(shown(join(folder, name))));
  const more = names.length - paths.length;
  const list = more > 0 ? `${paths.join(', ')} and ${counted(more, 'more file')}` : paths.join(' and ');
  return `wrote ${list}`;
}
