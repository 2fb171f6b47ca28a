import { diff } from '../diff/diff.js';
import { figuresChanged } from '../diff/figures-changed.js';
import type { Host, Trouble } from '../host/host.js';
import type { Arguments } from './arguments.js';
import { worst } from './command.js';
import type { Compiled } from './compile-inputs.js';
import { compileSide, sayHidden } from './diff/compile-sides.js';
import { INPUT } from './inputs.js';
import { type Side, sideAt, withRecipes } from './diff/side.js';

/** What a command is given to read, as it was at a revision; all of the repository where it is given nothing. */
export function sideSince(revision: string, operands: readonly string[], host: Host): Side | Trouble {
  if (operands.includes(INPUT)) return { kind: 'trouble', reason: NO_INPUT };
  const then = sideAt(revision, operands.length > 0 ? operands : { inRepository: '' }, host);
  return then.kind === 'trouble' ? then : withRecipes(then);
}

const NO_INPUT =
  '`--since` compares with what git keeps, and standard input is not among it; give it the file';

/**
 * Adds to what was compiled the findings about recipes whose figures are not what they were, though what is expected of them
 * is. What cannot be read of how they were is said.
 */
export async function withFindingsSince(
  then: Side,
  compiled: Compiled,
  given: Arguments,
  host: Host,
): Promise<Compiled> {
  const before = await compileSide(then);
  await sayHidden(then, before, given, host);
  const found = figuresChanged(diff(before, compiled), `at \`${then.label}\``);
  return {
    ...compiled,
    diagnostics: [...compiled.diagnostics, ...found],
    code: worst(compiled.code, before.troubles.length > 0 ? 2 : 0),
  };
}
