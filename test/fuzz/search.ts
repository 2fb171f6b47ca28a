import fc from 'fast-check';
import { anyStep, type Step } from './mutations.js';
import { shrunk } from './shrunk.js';

/** What the search asks of the program. */
export interface Trial {
  /** The laws that a text breaks; called for every text. */
  readonly broken: (text: string) => readonly string[];
  /** The laws that a text breaks further on; called where a text has reached anything new. */
  readonly brokenByMade: (text: string) => Promise<readonly string[]>;
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
  const found = new Map<string, string>();
  const kept: string[] = [];
  const note = (text: string): void => {
    for (const law of broken(text))
      if (!found.has(law))
        found.set(
          law,
          shrunk(text, (shorter) => broken(shorter).includes(law)),
        );
  };
  for (const text of seeds) note(text);
  hasReached();
  const steps = stepsFrom(seed);
  let runs = 0;
  for (; goesOn(runs); runs++) {
    const text = (steps.next().value as Step)([...seeds, ...kept]);
    note(text);
    if (!hasReached()) continue;
    kept.push(text);
    for (const law of await brokenByMade(text)) if (!found.has(law)) found.set(law, text);
    hasReached();
  }
  return { runs, kept, found: [...found].map(([law, text]) => ({ law, text })) };
}

/** Steps are drawn so many at a time. */
const DRAWN = 100;

function* stepsFrom(seed: number): Generator<Step, never> {
  for (let drawn = 0; ; drawn++) yield* fc.sample(anyStep, { seed: seed + drawn * 7919, numRuns: DRAWN });
}
