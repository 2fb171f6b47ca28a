import { COMMON_OPTIONS } from './arguments.js';
import type { Command, Option } from './command.js';

/** The help for all of plica. */
export const usage = (
  commands: readonly Command[],
): string => `Plica reads envelope recipes (*.plica) and works out the sheet to cut and the lines to score.

Usage: plica COMMAND [PATH…] [OPTION…]

${columns(commands.map(({ name, summary }) => [name, summary]))}

A PATH is a recipe file, a folder of them, or \`-\` for standard input.
\`plica COMMAND --help\` tells more; \`plica --version\` tells which plica this is.

Example: plica check specs
`;

/** The help for one command. */
export const commandUsage = ({ name, operands, details, example, options }: Command): string =>
  `Usage: plica ${name} ${operands} [OPTION…]

${details}

${[...options, ...COMMON_OPTIONS].map((option) => `  --${spelled(option)}\n      ${option.meaning}`).join('\n')}

Example: ${example}
`;

/** `strict`, `out DIR`, `format text|json` */
const spelled = ({ name, value, choices, many }: Option): string =>
  value === null ? name : `${name} ${(!many && choices?.join('|')) || value}`;

function columns(rows: readonly (readonly [left: string, right: string])[]): string {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`).join('\n');
}
