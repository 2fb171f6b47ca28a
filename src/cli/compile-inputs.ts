import {
  type CheckedRecipe,
  type Compilation,
  type CompiledRecipe,
  checkOnly,
  compile,
  ownedFindings,
} from '../compile.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Host } from '../host/host.js';
import { type PlacedFile, reader } from '../host/reader.js';
import { nearest } from '../text/nearest.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import { complain, type ExitCode, type Option } from './command.js';
import { checkTogether } from './check-together.js';
import { type Inputs, readInputs } from './inputs.js';
import { didYouMean } from './words.js';

/** What the files given to a command come to. */
export interface Compiled<Recipe extends CheckedRecipe = CompiledRecipe> extends Compilation<Recipe> {
  /** How many files are there to read. */
  readonly files: number;
  /** 2 where a path could not be read, which has been said. */
  readonly code: ExitCode;
}

/** Reads and compiles the files given to a command. */
export const compileInputs = async (given: Arguments, host: Host): Promise<Compiled> =>
  compileRead(await readInputs(host, given.operands), host);

/** Compiles what was read for a command, and says what could not be. */
export const compileRead = (inputs: Inputs, host: Host): Compiled =>
  compiledFrom(inputs, compileFiles(inputs.files, host), host);

/** What was read for a command, with what it came to; says what could not be read. */
export function compiledFrom<Recipe extends CheckedRecipe>(
  { files, limits, troubles }: Inputs,
  { diagnostics, ...compiled }: Compilation<Recipe>,
  host: Host,
): Compiled<Recipe> {
  for (const trouble of troubles) complain(host, trouble);
  return {
    ...compiled,
    diagnostics: [...limits, ...diagnostics],
    files: files.length + limits.length,
    code: troubles.length > 0 ? 2 : 0,
  };
}

/** Compiles files that were read, each with its text as it is here. */
export const compileFiles = (files: readonly PlacedFile[], host: Host): Compilation =>
  compile(
    files.map(({ input }) => input),
    reader(host, files),
  );

/** Checks files for a command that asks for nothing but findings; much text on several threads. */
export async function checkFiles(
  files: readonly PlacedFile[],
  host: Host,
): Promise<Compilation<CheckedRecipe>> {
  const length = files.reduce((sum, { input }) => sum + input.source.text.length, 0);
  if (length >= MUCH) {
    const others = Math.floor(length / WORTH_A_THREAD);
    return checkTogether(files, others, host);
  }
  return checkOnly(
    files.map(({ input }) => input),
    reader(host, files),
  );
}

/** So much text, in UTF-16 units, is checked some files at a time: what all come to would fill the memory. */
const MUCH = 50_000;

/**
 * With less text for each, in UTF-16 units, threads are slower than one: each has to make the program fast for itself, and on two
 * cores what does so is in the way of both (DEVELOPERS.md, decision 118).
 */
const WORTH_A_THREAD = 1_000_000;

/** What a command works on: some of the envelopes, and what there is to say about them and about the files. */
export interface Chosen {
  readonly recipes: readonly CompiledRecipe[];
  /** Findings that belong to none of the envelopes that compiled. */
  readonly others: readonly Diagnostic[];
  readonly code: ExitCode;
}

export const ONLY: Option = { name: 'only', value: 'NAME', meaning: 'this envelope alone' };

/** The envelopes that a command is to work on: all, or the one that `--only` names. That there is none is said here. */
export function choose(given: Arguments, host: Host, compiled: Compiled): Chosen {
  const only = given.value('only');
  const recipes = compiled.recipes.filter(({ envelope }) => only === null || envelope.name === only);
  const owned = ownedFindings(compiled);
  const others = compiled.diagnostics.filter((found) => !owned.has(found));
  if (recipes.length > 0 || compiled.files === 0) return { recipes, others, code: compiled.code };
  if (hasErrors(others)) {
    if (only !== null)
      complain(
        host,
        `\`${visible(only)}\` is not among the envelopes that could be read${near(only, compiled)}`,
      );
    return { recipes, others, code: compiled.code };
  }
  complain(host, only === null ? 'there is no envelope in what was given' : noSuch(only, compiled));
  return { recipes, others, code: 2 };
}

const noSuch = (only: string, compiled: Compiled): string =>
  `there is no envelope \`${visible(only)}\` in what was given${near(only, compiled)}`;

/** The envelopes that may have been meant. */
const near = (only: string, { recipes }: Compiled): string =>
  didYouMean(
    nearest(
      only,
      recipes.map(({ envelope }) => envelope.name),
    ),
  );

export const hasErrors = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ severity }) => severity === 'error');

/** The exit code that findings call for. With `--strict`, warnings count as errors; notes never do. */
export const codeOf = (diagnostics: readonly Diagnostic[], given: Arguments): ExitCode =>
  diagnostics.some(({ severity }) => severity === 'error' || (severity === 'warning' && given.has('strict')))
    ? 1
    : 0;

export const STRICT: Option = { name: 'strict', value: null, meaning: 'warnings count as errors' };
