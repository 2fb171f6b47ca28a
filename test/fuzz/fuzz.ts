import { parseArgs } from 'node:util';
import { brokenOutputLaws } from '../support/output-laws.js';
import { brokenTextLaws } from '../support/text-laws.js';
import { CORPUS, corpusTexts, layDown, saveCorpus, seedTexts } from './corpus.js';
import { type Counters, nothingReached, type Reached } from './reached.js';
import { type Searched, search } from './search.js';

const CRASHES = 'test/fuzz/crashes';

const USAGE = `npm run fuzz -- [--runs N | --seconds N] [--seed N] [--texts] [--save]

  --runs N     stop after so many runs (left out: 20000)
  --seconds N  stop after so long instead
  --seed N     another seed draws other texts (left out: 1)
  --texts      look at texts alone: make no files of them
  --save       keep in ${CORPUS} what reaches something new
`;

/** Fuzzes as asked, and tells what came of it; 1 where a law is broken. */
export async function fuzz(args: readonly string[], counters: Counters): Promise<number> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      runs: { type: 'string', default: '20000' },
      seconds: { type: 'string' },
      seed: { type: 'string', default: '1' },
      texts: { type: 'boolean', default: false },
      save: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  const [runs, seed] = [Number(values.runs), Number(values.seed)];
  const seconds = values.seconds === undefined ? null : Number(values.seconds);
  if (values.help || ![runs, seed, seconds ?? 0].every(Number.isSafeInteger)) {
    console.log(USAGE);
    return values.help ? 0 : 2;
  }
  const start = Date.now();
  const elapsed = (): number => (Date.now() - start) / 1000;
  const reached = nothingReached(counters);
  const slow = new Map<string, number>();
  const seeds = [...new Set([...seedTexts(), ...corpusTexts()])];
  console.log(`seed ${seed}, ${seeds.length} texts to begin with`);
  const searched = await search(
    {
      broken: (text) => timed(text, slow, () => brokenTextLaws(text)),
      brokenByMade: values.texts ? async () => [] : brokenOutputLaws,
      hasReached: reached.see,
    },
    { seeds, seed, goesOn: (done) => (seconds === null ? done < runs : elapsed() < seconds) },
  );
  tell(searched, reached);
  if (seconds !== null) {
    console.log(`${(searched.runs / elapsed()).toFixed(0)} runs a second`);
    for (const [text, ms] of slow) console.log(`slow, ${ms.toFixed(0)} ms: ${layDown(CRASHES, text)}`);
  }
  if (values.save) {
    // Branches alone, or the corpus would be large.
    const anew = nothingReached(counters, [1]);
    const isNew = (text: string): boolean => {
      brokenTextLaws(text);
      return anew.see();
    };
    console.log(`${saveCorpus(searched.kept, isNew)} texts in ${CORPUS}`);
  }
  return report(searched);
}

/** A text that keeps the processor busy for longer than this, in ms, is worth a look. */
const SLOW = 2000;

function timed<T>(text: string, slow: Map<string, number>, work: () => T): T {
  const before = process.cpuUsage();
  const result = work();
  const ms = process.cpuUsage(before).user / 1000;
  if (ms > SLOW) slow.set(text, ms);
  return result;
}

function tell({ runs, kept }: Searched, reached: Reached): void {
  console.log(`${runs} runs, ${kept.length} texts reached something new`);
  for (const [room, { run, all }] of [...reached.rooms()].sort(([a], [b]) => (a < b ? -1 : 1)))
    console.log(`  ${room.padEnd(18)} ${((100 * run) / all).toFixed(1).padStart(5)} %`);
}

/** Lays down what breaks a law, and says where. */
function report({ found }: Searched): number {
  for (const { law, text, before } of found) {
    console.log(`broken: ${law}\n${layDown(CRASHES, text)}\n${JSON.stringify(text)}`);
    if (before !== null) console.log(`after ${layDown(CRASHES, before)}`);
  }
  return found.length > 0 ? 1 : 0;
}
