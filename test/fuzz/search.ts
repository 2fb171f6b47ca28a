import fc from 'fast-check';
import { anyStep, type Step } from './mutations.js';
import { programs } from '../support/programs.js';
import { shrunk } from './shrunk.js';

type LawsOf = (text: string) => readonly string[] | Promise<readonly string[]>;

/** What the search asks of the program. */
export interface Trial {
  /** The laws that a text breaks; called for every text. */
  readonly broken: (text: string) => readonly string[];
  /**
   * The laws that are broken by what is made of a text, and of its difference from what was before it; asked of whole programs and of
   * some of the texts that are kept.
   */
  readonly brokenByMade: (text: string, before: string) => Promise<readonly string[]>;
  /** Whether anything was reached since the last time that never had been. */
  readonly hasReached: () => boolean;
}

export interface Wanted {
  readonly seeds: readonly string[];
  readonly seed: number;
  /** Asked before each run. */
  readonly goesOn: (runs: number) => boolean;
}

export interface Found {
  readonly law: string;
  /** As short as it could be made. */
  readonly text: string;
  /** What was before it, where that was looked at too. */
  readonly before: string | null;
}

export interface Searched {
  readonly runs: number;
  /** Texts that reached something new, in the order in which they did. */
  readonly kept: readonly string[];
  /** The first text that breaks a law, for each law. */
  readonly found: readonly Found[];
}

/**
 * Makes text after text, keeps those that reach something new to make others of, and notes those that break a law. The same
 * seed, seeds and number of runs give the same.
 */
export async function search(
  { broken, brokenByMade, hasReached }: Trial,
  { seeds, seed, goesOn }: Wanted,
): Promise<Searched> {
  const found = new Map<string, Found>();
  const kept: string[] = [];
  const note = async (text: string, before: string | null, lawsOf: LawsOf, trials: number): Promise<void> => {
    for (const law of await lawsOf(text)) {
      if (found.has(law)) continue;
      const breaks = async (shorter: string): Promise<boolean> => (await lawsOf(shorter)).includes(law);
      found.set(law, { law, text: await shrunk(text, breaks, trials), before });
    }
  };
  for (const text of seeds) await note(text, null, broken, TRIALS);
  hasReached();
  const steps = stepsFrom(seed);
  let runs = 0;
  for (; goesOn(runs); runs++) {
    const isProgram = runs % RUNS_FOR_A_PROGRAM === RUNS_FOR_A_PROGRAM - 1;
    const [step, [was, program]] = steps.next().value;
    const text = isProgram ? program : step([...seeds, ...kept]);
    await note(text, null, broken, TRIALS);
    const isKept = hasReached();
    const before = isProgram ? was : (kept.at(-1) ?? text);
    if (isKept) kept.push(text);
    if (!isProgram && !(isKept && kept.length % KEPT_FOR_ONE_MADE === 0)) continue;
    await note(text, before, (each) => brokenByMade(each, before), TRIALS_OF_MADE);
    hasReached();
  }
  return { runs, kept, found: [...found.values()] };
}

/** To make everything of a text takes as long as hundreds of runs. */
const RUNS_FOR_A_PROGRAM = 400;
const KEPT_FOR_ONE_MADE = 20;

/** How often a text is tried shorter. */
const TRIALS = 3000;
const TRIALS_OF_MADE = 60;

/** So many are drawn at a time. */
const DRAWN = 100;

type Drawn = readonly [step: Step, program: readonly [before: string, after: string]];

const drawn: fc.Arbitrary<Drawn> = fc.tuple(anyStep, programs);

function* stepsFrom(seed: number): Generator<Drawn, never> {
  for (let round = 0; ; round++) yield* fc.sample(drawn, { seed: seed + round * 7919, numRuns: DRAWN });
}
