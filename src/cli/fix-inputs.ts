import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { placeIn } from '../diagnostics/render-line.js';
import type { Host } from '../host/host.js';
import { rewriteText } from '../host/read-text.js';
import type { Source } from '../text/source.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import { complain } from './command.js';
import { type Compiled, compileFiles, compileRead } from './compile-inputs.js';
import { type GivenFile, readInputs } from './inputs.js';
import { counted } from '../text/counted.js';

/**
 * Reads the files given to a command, mends in them what findings carry an edit for, writes those that changed, and says
 * what was done. What it comes to is compiled from the files as they then are.
 */
export async function fixInputs(given: Arguments, host: Host): Promise<Compiled> {
  const { applyFixes } = await import('../diagnostics/apply-fixes.js');
  const inputs = await readInputs(host, given.operands);
  const { files } = inputs;
  const sources = files.map(({ input }) => input.source);
  const mended = applyFixes(sources, (edited) => compileFiles(withSources(files, edited), host).diagnostics);
  const now = files.map((file, index) => written(file, mended.sources[index] ?? file.input.source, host));
  const failed = now.filter((source, index) => source !== mended.sources[index]).map(({ name }) => name);
  const compiled = compileRead({ ...inputs, files: withSources(files, now) }, host);
  sayFixed(mended.fixed.filter(isApartFrom(failed)), host);
  sayLeft(compiled.diagnostics.filter(isApartFrom(failed)), now, host);
  return { ...compiled, code: failed.length > 0 ? 2 : compiled.code };
}

const withSources = (files: readonly GivenFile[], sources: readonly Source[]): readonly GivenFile[] =>
  files.map((file, index) => ({
    ...file,
    input: { ...file.input, source: sources[index] ?? file.input.source },
  }));

/** Writes a file whose text has changed; what its text then is. */
function written({ input: { id, source } }: GivenFile, after: Source, host: Host): Source {
  if (after === source) return source;
  const result = rewriteText(host, id, source.text, after.text);
  if (result.kind === 'written') return after;
  complain(host, `${visible(source.name)} cannot be written: ${result.reason}`);
  return source;
}

/** Findings none of whose edits are of these files. */
const isApartFrom =
  (names: readonly string[]) =>
  ({ fix }: Diagnostic): boolean =>
    !filesOf(fix).some((name) => names.includes(name));

const filesOf = (fix: Diagnostic['fix']): readonly string[] => [
  ...new Set((fix ?? []).map(({ span }) => span.source.name)),
];

function sayFixed(fixed: readonly Diagnostic[], { err }: Host): void {
  if (fixed.length === 0) return;
  for (const finding of fixed) err.write(`fixed ${inShort(finding)}\n`);
  const files = new Set(fixed.flatMap(({ fix }) => filesOf(fix)));
  err.write(`${fixed.length} mended in ${counted(files.size, 'file')}\n`);
}

/** Says of findings that carry an edit why it was not made. */
function sayLeft(found: readonly Diagnostic[], given: readonly Source[], { err }: Host): void {
  for (const finding of found) {
    if (finding.fix === null) continue;
    const others = finding.fix.map(({ span }) => span.source).filter((source) => !given.includes(source));
    const reason =
      others[0] === undefined
        ? 'its edit does not serve here by itself'
        : `${visible(others[0].name)} was not given, so it is not changed`;
    err.write(`left ${inShort(finding)} (${reason})\n`);
  }
}

const inShort = ({ primary, problem, message }: Diagnostic): string =>
  `${placeIn(primary.span)}: ${problem.name}: ${visible(message)}`;
