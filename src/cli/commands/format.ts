import { parse } from '../../../grammar/parser.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import type { Host, Trouble } from '../../host/host.js';
import { rewriteText } from '../../host/read-text.js';
import { visible } from '../../text/visible.js';
import { type Command, complain, worst } from '../command.js';
import { type GivenFile, INPUT_PLACE } from '../inputs.js';
import { sayFindings } from '../say-findings.js';
import { readGiven, type Reading, STAGED } from '../staged.js';
import { counted } from '../../text/counted.js';

export const format: Command = {
  name: 'format',
  operands: '[PATH…]',
  takes: [0, Infinity],
  summary: 'lay out recipe files in the one way; only white space changes',
  details: `Lays out the files given (or those in the working folder) and writes them back; with
\`-\`, standard input is laid out to standard output. Order, spelling and comments stay
as they are. A file that cannot be read as a recipe is left alone, and its slips shown.`,
  example: 'plica format specs --check',
  options: [
    {
      name: 'check',
      value: null,
      meaning: 'write nothing; list the files that would change, and end with 1 if there are any',
    },
    STAGED,
  ],
  run: async (given, host) => {
    const reading: Reading | Trouble =
      given.has(STAGED.name) && !given.has('check') ? NOT_WRITTEN : await readGiven(given, host);
    if (reading.kind === 'trouble') {
      complain(host, reading.reason);
      return 2;
    }
    const { files, limits, troubles } = reading.inputs;
    for (const trouble of troubles) complain(host, trouble);
    const laidOut = await layOut(files);
    await sayFindings([...limits, ...laidOut.flatMap(({ slips }) => slips)], given, host);
    const settle = given.has('check') ? list : write;
    const outcomes = laidOut.map((file) => settle(file, host));
    host.err.write(summary(outcomes));
    return worst(
      troubles.length > 0 ? 2 : 0,
      limits.length > 0 ? 1 : 0,
      ...outcomes.map((outcome) => CODES[outcome]),
    );
  },
};

const NOT_WRITTEN: Trouble = {
  kind: 'trouble',
  reason: 'what is staged is only looked at, not written: `format --check --staged`',
};

/** A file, and its text in the layout; with slips that is its text as it was. */
interface LaidOut extends GivenFile {
  readonly text: string;
  readonly slips: readonly Diagnostic[];
}

async function layOut(files: readonly GivenFile[]): Promise<readonly LaidOut[]> {
  const { format: textOf } = await import('../../format/format.js');
  return files.map((given) => {
    const { file, diagnostics: slips } = parse(given.input.source);
    return { ...given, text: slips.length > 0 ? given.input.source.text : textOf(file), slips };
  });
}

/** What became of a file, and the exit code that calls for. `passed on`: from standard input to standard output. */
const CODES = {
  'as it was': 0,
  'passed on': 0,
  formatted: 0,
  'to format': 1,
  'not passed on': 1,
  'with slips': 1,
  unwritable: 2,
} as const;

type Outcome = keyof typeof CODES;

function write({ input: { id, source }, mark, text, slips }: LaidOut, host: Host): Outcome {
  if (source.name === INPUT_PLACE) {
    if (slips.length > 0) return 'not passed on';
    host.out.write(`${mark}${text}`);
    return 'passed on';
  }
  if (slips.length > 0) return 'with slips';
  if (text === source.text) return 'as it was';
  const written = rewriteText(host, id, source.text, text);
  if (written.kind === 'written') return 'formatted';
  complain(host, `${visible(source.name)} cannot be written: ${written.reason}`);
  return 'unwritable';
}

function list({ input: { source }, text, slips }: LaidOut, host: Host): Outcome {
  if (slips.length > 0) return 'with slips';
  if (text === source.text) return 'as it was';
  host.out.write(`${visible(source.name)}\n`);
  return 'to format';
}

/** What was done, in a line; empty where there is no file but standard input, or what is to be said has been said. */
function summary(outcomes: readonly Outcome[]): string {
  const count = (wanted: Outcome): number => outcomes.filter((outcome) => outcome === wanted).length;
  const files = counted(outcomes.length - count('passed on') - count('not passed on'), 'file');
  const parts = [
    count('formatted') > 0 ? `formatted ${count('formatted')} of ${files}` : '',
    count('to format') > 0 ? `would format ${count('to format')} of ${files}` : '',
    count('with slips') > 0 ? `passed over ${counted(count('with slips'), 'file')} with slips` : '',
  ].filter((part) => part !== '');
  if (parts.length > 0) return `${parts.join('; ')}\n`;
  return outcomes.includes('as it was') ? `nothing to format in ${files}\n` : '';
}
