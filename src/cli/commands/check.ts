import { basename } from 'node:path';
import type { CheckedRecipe, Compilation } from '../../compile.js';
import about from '../../../package.json' with { type: 'json' };
import { renderJson } from '../../diagnostics/render-json.js';
import { renderLine } from '../../diagnostics/render-line.js';
import { type Palette, renderText } from '../../diagnostics/render-text.js';
import { paletteFor } from '../palette.js';
import type { Host, Trouble } from '../../host/host.js';
import type { PlacedFile } from '../../host/reader.js';
import { STATED_IN } from '../../recipe/catalogue.js';
import type { Arguments } from '../arguments.js';
import { type Command, complain, worst } from '../command.js';
import { checkFiles, codeOf, type Compiled, compiledFrom, compileFiles, STRICT } from '../compile-inputs.js';
import { readGiven, STAGED } from '../staged.js';
import { counted } from '../../text/counted.js';

export const check: Command = {
  name: 'check',
  operands: '[PATH…]',
  takes: [0, Infinity],
  summary: 'say whether the envelopes will work, and what would mend them',
  details: `Checks every envelope in the files given (or in the working folder), and every expect
that they state. Ends with 0 when nothing is wrong, 1 when an error is found, 2 when
a file cannot be read.

With --fix, what surely mends a finding is written into the files given, and each is
named on standard error; what remains is then shown as ever. Comments stay.

With --staged, the files are read as the next commit would have them, and so is what
they use: for a hook before a commit. With --since, a recipe that does not come out as
it did at a revision is found too, unless an expect of it was added, changed or removed.`,
  example: 'plica check specs --strict',
  options: [
    {
      name: 'format',
      value: 'FORMAT',
      choices: ['text', 'line', 'json', 'sarif'],
      meaning: 'for people, a line for each finding, or for programs (sarif: SARIF 2.1.0)',
    },
    STRICT,
    STAGED,
    {
      name: 'since',
      value: 'REVISION',
      meaning: 'find also what comes out otherwise than then, though no `expect` of it was touched',
    },
    { name: 'fix', value: null, meaning: 'mend in the files what can surely be mended' },
  ],
  run: async (given, host) => {
    const compiled = await compileAll(given, host);
    if ('reason' in compiled) {
      complain(host, compiled.reason);
      return 2;
    }
    const render = RENDERERS[given.value('format') ?? 'text'] as Renderer;
    host.out.write(await render(compiled, (await paletteFor(host.out, host, given)) ?? undefined));
    return worst(compiled.code, codeOf(compiled.diagnostics, given));
  },
};

type Checked = Compiled<CheckedRecipe>;

/** How files are compiled: for their findings alone, or for all that they come to. */
type Compiler<Recipe extends CheckedRecipe> = (
  files: readonly PlacedFile[],
  host: Host,
) => Compilation<Recipe> | Promise<Compilation<Recipe>>;

async function compileAll(given: Arguments, host: Host): Promise<Checked | Trouble> {
  const revision = given.value('since');
  if (revision === null) return given.has('fix') ? fixed(given, host) : compileGiven(given, host, checkFiles);
  const { sideSince, withFindingsSince } = await import('../since.js');
  const then = sideSince(revision, given.operands, host);
  if (then.kind === 'trouble') return then;
  const compiled = await (given.has('fix') ? fixed(given, host) : compileGiven(given, host, compileFiles));
  return 'reason' in compiled ? compiled : withFindingsSince(then, compiled, given, host);
}

async function fixed(given: Arguments, host: Host): Promise<Compiled | Trouble> {
  if (given.operands.includes('-'))
    return refused('`check --fix` writes into files, and standard input is none; give it the file');
  if (given.has(STAGED.name))
    return refused('`check --fix` writes into files, and what is staged is none; leave `--staged` out');
  return (await import('../fix-inputs.js')).fixInputs(given, host);
}

async function compileGiven<Recipe extends CheckedRecipe>(
  given: Arguments,
  host: Host,
  compiler: Compiler<Recipe>,
): Promise<Compiled<Recipe> | Trouble> {
  const reading = await readGiven(given, host);
  if (reading.kind === 'trouble') return reading;
  const { files } = reading.inputs;
  const compiled = compiledFrom(reading.inputs, await compiler(files, reading.host), host);
  if (!files.some(({ input }) => basename(input.id) === STATED_IN)) return compiled;
  const folders = (given.operands.length === 0 ? ['.'] : given.operands).filter(
    (path) => host.kind(path) === 'folder',
  );
  const { sectionFindings } = await import('../section-findings.js');
  const unknown = sectionFindings(folders, files, compiled.recipes, reading.host);
  return { ...compiled, diagnostics: [...compiled.diagnostics, ...unknown] };
}

const refused = (reason: string): Trouble => ({ kind: 'trouble', reason });

type Renderer = (compiled: Checked, palette: Palette | undefined) => string | Promise<string>;

const RENDERERS: Readonly<Record<string, Renderer>> = {
  text: (compiled, palette) =>
    compiled.diagnostics.length > 0 ? renderText(compiled.diagnostics, palette) : nothingWrong(compiled),
  line: ({ diagnostics }) => renderLine(diagnostics),
  json: ({ diagnostics }) => renderJson(diagnostics),
  sarif: async ({ diagnostics }) => {
    const { renderSarif } = await import('../../diagnostics/render-sarif.js');
    return renderSarif(diagnostics, { name: about.name, version: about.version });
  },
};

/** What is said where there is no finding. */
export function nothingWrong({ files, recipes }: Pick<Checked, 'files' | 'recipes'>): string {
  if (files === 0) return '';
  if (recipes.length === 0)
    return `nothing wrong in ${counted(files, 'file')}, but no envelope in it either\n`;
  return `nothing wrong in ${counted(recipes.length, 'envelope')} of ${counted(files, 'file')}\n`;
}
