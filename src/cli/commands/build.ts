import { KINDS_LISTED } from '../chosen-kinds.js';
import { type Command, complain, worst } from '../command.js';
import { choose, codeOf, compileInputs, ONLY, STRICT } from '../compile-inputs.js';
import { sayFindings } from '../say-findings.js';
import { OUTPUT_OPTIONS, readOrder, writeEnvelopes } from '../write-envelopes.js';

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
  options: [...OUTPUT_OPTIONS, ONLY, STRICT],
  run: async (given, host) => {
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
      sound.length > 0 ? await writeEnvelopes(sound, order, host) : 0,
    );
  },
};
