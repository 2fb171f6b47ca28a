import { visible } from '../../text/visible.js';
import { type Command, complain } from '../command.js';

export const log: Command = {
  name: 'log',
  operands: 'PATH#NAME',
  takes: [1, 1],
  summary: 'the history of one envelope: what each commit changed about it',
  details: `Goes back through the commits that changed the envelope NAME of the file PATH,
the newest first: when, by which commit, what follows on paper, which figures came
out otherwise, and what was written. What it uses is read as it was then. The file
is followed through renames, and so is the envelope. NAME may be left out where the
file states one envelope only, and PATH where one file in the working folder does.

Changes that are not committed yet come first. A merge is told only where the
envelope is as in none of its parents, and is compared with the first of them. A
state that cannot be read is named and passed over.`,
  example: 'plica log specs/tide-tables.plica#half-letter',
  options: [
    { name: 'format', value: 'FORMAT', choices: ['text', 'json'], meaning: 'for people, or for programs' },
    { name: 'most', value: 'N', meaning: 'end after so many changes' },
  ],
  run: async (given, host) => {
    const most = given.value('most');
    if (most !== null && !/^[1-9]\d*$/.test(most)) {
      complain(host, `\`--most\` wants a number from 1, not \`${visible(most)}\``);
      return 2;
    }
    const { tellLog } = await import('../log/tell-log.js');
    return tellLog(given, Number(most ?? Infinity), host);
  },
};
