import { diff } from '../diff/diff.js';
import { figuresChanged } from '../diff/figures-changed.js';
import type { Host, Trouble } from '../host/host.js';
import { visible } from '../text/visible.js';
import type { Arguments } from './arguments.js';
import { worst } from './command.js';
import type { Compiled } from './compile-inputs.js';
import { compileSide, sayHidden } from './compile-sides.js';
import { INPUT } from './inputs.js';
import { sideAt, withRecipes } from './side.js';

/**
 * Adds to what was compiled the findings about recipes whose figures are not what they were at a revision, though what is
 * expected of them is. What cannot be read of that revision is said.
 */
export async function withFindingsSince(
  revision: string,
  compiled: Compiled,
  given: Arguments,
  host: Host,
): Promise<Compiled | Trouble> {
  const { operands } = given;
  if (operands.includes(INPUT)) return { kind: 'trouble', reason: NO_INPUT };
  const then = sideAt(revision, operands.length > 0 ? operands : { inRepository: '' }, host);
  if (then.kind === 'trouble') return then;
  const side = withRecipes(then);
  const before = await compileSide(side);
  await sayHidden(side, before, given, host);
  const found = figuresChanged(diff(before, compiled), `at \`${visible(revision)}\``);
  return {
    ...compiled,
    diagnostics: [...compiled.diagnostics, ...found],
    code: worst(compiled.code, before.troubles.length > 0 ? 2 : 0),
  };
}

const NO_INPUT =
  '`--since` compares with what git keeps, and standard input is not among it; give it the file';
