import { basename } from 'node:path';
import { type Compilation, compile } from '../../compile.js';
import type { Host } from '../../host/host.js';
import { overlay } from '../../host/overlay.js';
import { readText } from '../../host/read-text.js';
import { reader } from '../../host/reader.js';
import { LONGEST_TEXT } from '../../text/longest.js';
import { source } from '../../text/source.js';
import { visible } from '../../text/visible.js';
import { figureLines } from './figure-lines.js';
import { readInputs } from '../inputs.js';
import { placesFor } from './places-for.js';

/**
 * The text of a file, as git keeps it, and beneath it as comments what its envelopes come to: a line for each figure and each
 * finding, with nothing in it that another line's coming or going would change. `file`: where git laid the bytes.
 */
export async function textForGit(host: Host, file: string, bytes: Uint8Array): Promise<string> {
  const read = readText(host, file);
  const written = Buffer.from(bytes).toString(read.kind === 'unreadable' ? 'latin1' : 'utf8');
  const comments =
    read.kind === 'text'
      ? await figuresOf(host, file, read.text, bytes)
      : [read.kind === 'unreadable' ? read.reason : TOO_LONG];
  return [shown(written), ...section(comments)].join('');
}

const TOO_LONG = `it is longer than ${LONGEST_TEXT} bytes, so its figures are left out`;

/** As it is, but for characters that would do something to a terminal; line ends stay. */
const shown = (text: string): string =>
  text
    .split(/(\r?\n|\t)/)
    .map((part, index) => (index % 2 === 0 ? part.split('\r').map(visible).join('\\u{d}') : part))
    .join('') + (text === '' || text.endsWith('\n') ? '' : '\n');

/** The first line is what git puts at the head of each hunk below it. */
const section = (comments: readonly string[]): readonly string[] =>
  comments.length === 0 ? [] : ['\n# on paper\n', ...comments.map((comment) => `# ${visible(comment)}\n`)];

/** Where it uses other files, it is read in its place, or in each that may be its place: all must come to the same. */
async function figuresOf(
  host: Host,
  file: string,
  text: string,
  bytes: Uint8Array,
): Promise<readonly string[]> {
  const name = basename(file);
  const alone = byItself(name, text);
  if (alone !== null) return figureLines(alone);
  const found = new Map<string, readonly string[]>();
  for (const place of placesFor(host, file)) {
    const whole = await inPlace(overlay(host, new Map([[place, bytes]])), place);
    const lines = whole === null ? null : figureLines(whole);
    if (lines !== null) found.set(lines.join('\n'), lines);
  }
  const [one, ...others] = found.values();
  if (one === undefined) return [NOT_FOUND];
  return others.length === 0 ? one : [SEVERAL];
}

const NOT_FOUND = 'what it uses is not to be found from here, so its figures are left out';
const SEVERAL = 'several files have its name and would come to other figures, so they are left out';

/** What a text comes to; null where it uses other files. */
function byItself(name: string, text: string): Compilation | null {
  let isAlone = true;
  const compiled = compile([{ id: name, source: source(name, text) }], () => {
    isAlone = false;
    return { kind: 'outside-root' };
  });
  return isAlone ? compiled : null;
}

/** What a file comes to where it lies; null where something that it uses cannot be read. */
async function inPlace(host: Host, place: string): Promise<Compilation | null> {
  const { files } = await readInputs(host, [place]);
  const read = reader(host, files);
  let isWhole = true;
  const compiled = compile(
    files.map(({ input }) => input),
    (path, from) => {
      const result = read(path, from);
      isWhole = isWhole && result.kind === 'source';
      return result;
    },
  );
  return isWhole ? compiled : null;
}
