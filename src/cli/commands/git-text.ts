import { visible } from '../../text/visible.js';
import { type Command, complain } from '../command.js';

export const gitText: Command = {
  name: 'git-text',
  operands: 'FILE',
  takes: [1, 1],
  summary: 'for git: a recipe’s text, and beneath it what comes of it on paper',
  details: `Prints the text of a recipe, and then as comments each figure and each finding of its
envelopes, so that git compares these too (\`plica git-setup\` tells git to). Git hands over
an older state beside the work tree: what that uses is read as it is in the work tree now,
and where FILE may belong in several places, figures are told only if they agree.

A bad recipe is printed like any other, with what is wrong with it; the command ends with
2 only if there is no file.`,
  example: 'plica git-text specs/tide-tables.plica',
  options: [],
  run: async (given, host) => {
    const [file = ''] = given.operands;
    const read = host.read(file, MOST);
    if (read.kind === 'unreadable') {
      complain(host, `${visible(file)}: ${read.reason}`);
      return 2;
    }
    const { textForGit } = await import('../git/text-for-git.js');
    host.out.write(
      read.kind === 'too-large' ? '# too large to be shown\n' : await textForGit(host, file, read.bytes),
    );
    return 0;
  },
};

/** No text is nearly as long: this only keeps the program from running out of memory. In bytes. */
const MOST = 64 * 1024 * 1024;
