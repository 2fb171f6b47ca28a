import { plain } from '../../diagnostics/render-text.js';
import type { Host } from '../../host/host.js';
import { isCutOff } from '../../host/is-cut-off.js';
import { nearest } from '../../text/nearest.js';
import { visible } from '../../text/visible.js';
import type { Arguments } from '../arguments.js';
import { type AskedEnvelope, askedEnvelope } from './asked-envelope.js';
import { complain, type ExitCode } from '../command.js';
import { envelopeLog } from './envelope-log.js';
import { logJson } from './log-json.js';
import { logText } from './log-text.js';
import { paletteFor } from '../palette.js';
import { textWidth } from '../text-width.js';
import type { Told } from './told.js';
import { didYouMean } from '../words.js';

/** Prints the history of the envelope that a command is given, at most so many changes; as they are found, where people read it. */
export async function tellLog(given: Arguments, most: number, host: Host): Promise<ExitCode> {
  const asked = await askedEnvelope(given.operands[0] as string, host);
  if (asked.kind === 'trouble') {
    complain(host, asked.reason);
    return 2;
  }
  const count = await tell(asked, most, given, host);
  if (count === 0) complain(host, await noSuch(asked));
  return count === 0 ? 2 : 0;
}

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
