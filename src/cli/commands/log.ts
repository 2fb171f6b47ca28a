import { plain } from '../../diagnostics/render-text.js';
import type { Host, Trouble } from '../../host/host.js';
import { isCutOff } from '../../host/is-cut-off.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type Command, complain } from '../command.js';
import { envelopeLog } from '../envelope-log.js';
import { envelopeOperand } from '../envelope-operand.js';
import { type FileHistory, fileHistory } from '../file-history.js';
import { fileStating } from '../file-stating.js';
import { logJson } from '../log-json.js';
import { logText } from '../log-text.js';
import { paletteFor } from '../palette.js';
import type { RecipeFile } from '../recipe-file.js';
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
    const most = given.value('most') ?? 'Infinity';
    const wrong = /^(Infinity|[1-9]\d*)$/.test(most) ? null : NO_NUMBER(most);
    const asked = wrong ?? (await findEnvelope(given.operands[0] as string, host));
    if (asked.kind === 'trouble') {
      complain(host, asked.reason);
      return 2;
    }
    const count = await tell(asked, Number(most), given, host);
    if (count === 0) complain(host, await noSuch(asked));
    return count === 0 ? 2 : 0;
  },
};

const NO_NUMBER = (written: string): Trouble =>
  trouble(`\`--most\` wants a number from 1, not \`${visible(written)}\``);

/** The envelope that is asked for, and the file that it is in. */
interface Asked {
  readonly kind: 'asked';
  readonly path: string;
  readonly name: string;
  readonly past: FileHistory;
}

async function findEnvelope(operand: string, host: Host): Promise<Asked | Trouble> {
  const { path, name } = envelopeOperand(operand, host);
  if (path === null) {
    const file = await fileStating(name ?? '', host);
    return file.kind === 'trouble' ? file : findEnvelope(`${file.path}#${name}`, host);
  }
  const past = fileHistory(host, path);
  if (past.kind === 'trouble') return past;
  if (name !== null) return { kind: 'asked', path, name, past };
  const { names } = await newest(past);
  const [only, ...others] = names;
  if (only !== undefined && others.length === 0) return { kind: 'asked', path, name: only, past };
  const choices = names.map((each) => `\`${visible(`${path}#${each}`)}\``).join(', ');
  return trouble(
    only === undefined
      ? `${visible(path)}: no envelope can be read in it; name one, as in \`${visible(path)}#NAME\``
      : `${visible(path)} has several envelopes; name one of them: ${choices}`,
  );
}

/** The file as it was last seen. */
async function newest({ moments, read }: FileHistory): Promise<RecipeFile> {
  for (const moment of moments) {
    const file = await read(moment);
    if (file.isThere) return file;
  }
  return read(moments[0]);
}

/** Answers how many changes there were to tell. */
async function tell(
  { path, name, past }: Asked,
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

async function noSuch({ path, name, past }: Asked): Promise<string> {
  const near = nearest(name, (await newest(past)).names);
  return `${visible(path)} never had an envelope \`${visible(name)}\`${didYouMean(near)}`;
}

const trouble = (reason: string): Trouble => ({ kind: 'trouble', reason });
