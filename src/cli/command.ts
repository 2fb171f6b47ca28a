/*
 * cli/: the commands: which files, what to say on which stream, which exit code.
 * In: arguments and a Host. Out: text on its streams, files, an exit code.
 * Refuses to know: how a recipe is understood, folded, checked or drawn.
 */
import type { Host } from '../host/host.js';
import type { Arguments } from './arguments.js';

/** 0: nothing wrong; 1: errors found; 2: wrong usage, or a file that cannot be read or written. */
export type ExitCode = 0 | 1 | 2;

/** `--name`, or `--name VALUE`. */
export interface Option {
  readonly name: string;
  /** What stands for its value in the help; null: it takes none. */
  readonly value: string | null;
  /** The only values it takes. */
  readonly choices?: readonly string[];
  /** It takes several of its choices, with commas between. */
  readonly many?: true;
  readonly meaning: string;
}

export interface Command {
  readonly name: string;
  /** What follows the name in the help: `PATH…`. */
  readonly operands: string;
  /** The fewest and the most operands. */
  readonly takes: readonly [fewest: number, most: number];
  /** One line for the list of commands. */
  readonly summary: string;
  /** A paragraph or two, in lines of at most 80 characters. */
  readonly details: string;
  readonly example: string;
  readonly options: readonly Option[];
  readonly run: (given: Arguments, host: Host) => Promise<ExitCode>;
}

/** The worst of several outcomes. */
export const worst = (...codes: readonly ExitCode[]): ExitCode => Math.max(...codes) as ExitCode;

/** Says on standard error what is in the way. */
export const complain = ({ err }: Host, message: string): void => err.write(`plica: ${message}\n`);
