import { PROBLEMS } from '../../problems.js';
import { COMMON_OPTIONS } from '../arguments.js';
import { type Command, complain } from '../command.js';
import { completionScript, INSTALLING, type Shell, SHELLS } from '../completion-scripts.js';
import { didYouMean } from '../words.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';

export const completion: Command = {
  name: 'completion',
  operands: 'SHELL',
  takes: [1, 1],
  summary: 'print the script that completes plica’s words in bash, zsh or fish',
  details: `Prints the script for the shell \`bash\`, \`zsh\` or \`fish\`. To install it:

${SHELLS.map((shell) => `  ${INSTALLING[shell]}`).join('\n')}`,
  example: 'plica completion bash',
  options: [],
  run: async (given, host) => {
    const [written = ''] = given.operands;
    if (!isShell(written)) {
      complain(
        host,
        `there is no script for \`${visible(written)}\`, only for bash, zsh and fish${didYouMean(nearest(written, SHELLS))}`,
      );
      return 2;
    }
    // The table of commands holds this one too, so it is read when it is asked for.
    const { COMMANDS } = await import('./index.js');
    const words = { explain: PROBLEMS.map(({ name }) => name), completion: SHELLS };
    host.out.write(completionScript(written, { commands: COMMANDS, common: COMMON_OPTIONS, words }));
    return 0;
  },
};

const isShell = (word: string): word is Shell => SHELLS.some((shell) => shell === word);
