import { plain } from '../../diagnostics/render-text.js';
import type { Host } from '../../host/host.js';
import { isCutOff } from '../../host/is-cut-off.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type AskedEnvelope, askedEnvelope } from '../asked-envelope.js';
import { type Command, complain } from '../command.js';
import { envelopeLog } from '../envelope-log.js';
import { logJson } from '../log-json.js';
import { logText } from '../log-text.js';
import { paletteFor } from '../palette.js';
import { textWidth } from '../text-width.js';
import type { Told } from '../told.js';
import { didYouMean } from '../words.js';

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
    const asked = await askedEnvelope(given.operands[0] as string, host);
    if (asked.kind === 'trouble') {
      complain(host, asked.reason);
      return 2;
    }
    const count = await tell(asked, Number(most ?? Infinity), given, host);
    if (count === 0) complain(host, await noSuch(asked));
    return count === 0 ? 2 : 0;
  },
};

/** Answers how many changes there were to tell. */
async function tell(
  { path, name, past }: AskedEnvelope,
  most: number,
  given: Arguments,
  host: Host,
): Promise<number> {
  const palette = (await paletteFor(host.out, host, given)) ?? plain;
  const isJson = given.value('format') === 'json';
  const told: Told[] = [];
  for await (const happening of envelopeLog(past.moments, name, past.read)) {
    const { commit } = happening.point;
    const each = {
      ...happening,
      isCutOff: happening.isFirst && commit !== null && isCutOff(host, commit.hash),
    };
    if (!isJson)
      host.out.write(`${told.length > 0 ? '\n' : ''}${logText(each, palette, textWidth(host.out))}`);
    told.push(each);
    if (told.length >= most || !host.out.isRead()) break;
  }
  if (isJson && told.length > 0) host.out.write(logJson(path, name, told));
  return told.length;
}

async function noSuch({ path, name, past }: AskedEnvelope): Promise<string> {
  const near = nearest(name, (await past.lastSeen()).names);
  return `${visible(path)} never had an envelope \`${visible(name)}\`${didYouMean(near)}`;
}
