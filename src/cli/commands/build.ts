import { basename, dirname } from 'node:path';
import { findRecipes } from '../../host/find-recipes.js';
import type { Host } from '../../host/host.js';
import { noted } from '../../host/noted.js';
import { shown } from '../../host/reader.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { EMIT, EMIT_OR_FACTS, KINDS_LISTED } from '../chosen-kinds.js';
import { type Command, complain, type ExitCode, worst } from '../command.js';
import { choose, codeOf, compileInputs, ONLY, STRICT } from '../compile-inputs.js';
import { sayFindings } from '../say-findings.js';
import { depfile } from '../depfile.js';
import { counted } from '../../text/counted.js';
import { type Order, OUTPUT_OPTIONS, readOrder, writeEnvelopes } from '../write-envelopes.js';

export const build: Command = {
  name: 'build',
  operands: '[PATH…] --out DIR',
  takes: [0, Infinity],
  summary: 'write cut sheets, true-size templates and drawings',
  details: `Writes the files of every envelope in the files given (or in the working folder):
${KINDS_LISTED}
A lining has drawings and pages of its own. An envelope with an error is not built; the
others are. Files of the same names are replaced, nothing else in the folder is touched.`,
  example: 'plica build specs --out out --page a4',
  options: [
    ...OUTPUT_OPTIONS.map((option) => (option === EMIT ? EMIT_OR_FACTS : option)),
    ONLY,
    STRICT,
    {
      name: 'depfile',
      value: 'FILE',
      meaning: 'write down what was made from which files, as make and ninja read it',
    },
  ],
  run: async (given, host) => {
    const place = given.value('depfile');
    if (place === null) return buildOn(given, host);
    const { host: watched, read, written } = noted(host);
    const code = await buildOn(given, watched);
    return code === 0 && written.size > 0 ? writeDepfile(place, [...written], [...read], host) : code;
  },
};

async function buildOn(given: Arguments, host: Host): Promise<ExitCode> {
  const order = readOrder(given, host);
  if (typeof order === 'string') {
    complain(host, order);
    return 2;
  }
  const { recipes, others, code } = choose(given, host, await compileInputs(given, host));
  const findings = [...others, ...recipes.flatMap(({ diagnostics }) => diagnostics)];
  await sayFindings(findings, given, host);
  const sound = recipes.filter(({ diagnostics }) => codeOf(diagnostics, given) === 0);
  return worst(
    code,
    codeOf(findings, given),
    sound.length > 0 && order.kinds.size > 0 ? await writeEnvelopes(sound, order, host) : 0,
    order.facts ? await factsOf(given, order, host) : 0,
  );
}

/** Facts are of whole files, also of those with errors, which they tell. */
async function factsOf({ operands }: Arguments, { folder, options }: Order, host: Host): Promise<ExitCode> {
  const { writeFacts } = await import('../catalogue/write-facts.js');
  const files = (operands.length === 0 ? ['.'] : operands).flatMap((given) =>
    host.kind(given) === 'folder'
      ? findRecipes(host, given).files.map((path) => ({ path, given }))
      : [{ path: given, given }],
  );
  const written = await writeFacts(files, folder, options.date, host);
  if (typeof written === 'string') {
    complain(host, written);
    return 2;
  }
  host.err.write(
    `wrote the facts of ${counted(written.length, 'recipe file')} into ${visible(shown(folder))}\n`,
  );
  return 0;
}

function writeDepfile(
  place: string,
  targets: readonly string[],
  from: readonly string[],
  host: Host,
): ExitCode {
  const made = depfile(targets, from, host.realPath('.') ?? host.cwd);
  if (typeof made === 'string') {
    complain(host, made);
    return 2;
  }
  const written = host.write(dirname(place), [{ name: basename(place), bytes: Buffer.from(made.text) }]);
  if (written.kind === 'written') return 0;
  complain(host, `${visible(shown(written.path))} cannot be written: ${written.reason}`);
  return 2;
}
