import type { Host } from '../../host/host.js';
import { PROBLEMS } from '../../problems.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import { type Command, complain, type ExitCode } from '../command.js';
import { paletteFor } from '../palette.js';
import { textWidth } from '../text-width.js';
import { didYouMean } from '../words.js';

export const explain: Command = {
  name: 'explain',
  operands: '[RULE…]',
  takes: [0, Infinity],
  summary: 'tell what a finding means, with a recipe that has it and how it is mended',
  details: `Tells of a rule what it means on paper, why it matters, and what mends it, with a recipe
that breaks it and what Plica says of that. A finding shows its rule in brackets:
\`error[creases-cross]\`. Without a rule, lists them all.`,
  example: 'plica explain creases-cross',
  options: [],
  run: async (given, host) => {
    const unknown = given.operands.filter((name) => problemNamed(name) === undefined);
    if (unknown.length > 0) return refuse(unknown, host);
    const { explanation, listOfRules } = await import('../explanation.js');
    const palette = (await paletteFor(host.out, host, given)) ?? undefined;
    const page = { width: textWidth(host.out), palette };
    const told = given.operands.flatMap((name) => problemNamed(name) ?? []);
    host.out.write(
      told.length === 0 ? listOfRules(page) : told.map((problem) => explanation(problem, page)).join('\n\n'),
    );
    return 0;
  },
};

/** The problem of that name, or of a finding’s beginning as it is shown: `error[tight]`. */
function problemNamed(written: string) {
  const name = written.replace(/^(?:error|warning|note)\[(.*)\]:?$/, '$1');
  return PROBLEMS.find((problem) => problem.name === name);
}

function refuse(unknown: readonly string[], host: Host): ExitCode {
  for (const name of unknown) {
    const near = nearest(
      name,
      PROBLEMS.map((problem) => problem.name),
    );
    complain(host, `there is no rule \`${visible(name)}\`${didYouMean(near)}`);
  }
  complain(host, '`plica explain` lists them all');
  return 2;
}
