// Runs each test as it is, then again on each mutant that it reaches and no test has noticed yet: nothing is loaded anew.
import { appendFileSync, readFileSync } from 'node:fs';
import { type RunnerTestCase, TestRunner } from 'vitest';
import { newTest, sameTest } from './kept.js';

/** A mutant met this many times as often as what it stands for has run out of time. */
const HITS = 100;

const folder = process.env['MUTANTS'];
const files = JSON.parse(readFileSync(`${folder}/files.json`, 'utf8')) as Readonly<Record<string, string>>;
const journal = `${folder}/journal.txt`;
const write = (kind: string, what: string): void => appendFileSync(journal, `${kind} ${what}\n`);

/** What is known from a run that was stopped: mutants that need no test any more, and tests that have met all of theirs. */
const known = readFileSync(journal, 'utf8').split('\n');
const after = (kind: string): string[] =>
  known.filter((line) => line.startsWith(`${kind} `)).map((line) => line.slice(kind.length + 1));
const settled = new Set([...after('notices'), ...after('late')]);
const met = new Set(after('reaches'));
const loaded = new Set(after('loads'));
const through = new Set(after('through'));

type Hits = Readonly<Record<string, number>>;

/** The switches and counts, as the files with mutants in them look them up. */
interface Switches {
  activeMutant?: string;
  hitCount?: number;
  hitLimit?: number;
  currentTestId?: string;
  readonly mutantCoverage?: { readonly static: Hits; readonly perTest: Readonly<Record<string, Hits>> };
}
const switches: Switches = {};
let isSpoiled = false;
Object.assign(globalThis, { __stryker__: switches });

// oxlint-disable-next-line import/no-default-export -- vitest takes a runner from one
export default class OnMutants extends TestRunner {
  /** What acts while a file is loaded is no work of a test, not even of one that would load the file first. */
  async onBeforeRunFiles(): Promise<void> {
    for (const path of Object.keys(files)) await import(path);
  }

  async runTask(test: RunnerTestCase): Promise<void> {
    const name = `${test.id} ${test.name.replaceAll('\n', ' ')}`;
    if (through.has(name)) return;
    for (const [mutant, count] of Object.entries(await this.#reached(test))) {
      if (settled.has(mutant)) continue;
      write('tries', mutant);
      Object.assign(switches, { activeMutant: mutant, hitCount: 0, hitLimit: count * HITS });
      const passes = await this.#run(test).then(
        () => true,
        () => false,
      );
      delete switches.activeMutant;
      if (passes) continue;
      settled.add(mutant);
      write((switches.hitCount ?? 0) > count * HITS ? 'late' : 'notices', mutant);
      await this.#asItIs(test);
    }
    delete switches.currentTestId;
    write('through', name);
  }

  /** How often a test meets each mutant while none is active. */
  async #reached(test: RunnerTestCase): Promise<Hits> {
    newTest();
    switches.currentTestId = test.id;
    await this.#asItIs(test);
    switches.currentTestId = 'again';
    const { static: atLoad = {}, perTest = {} } = switches.mutantCoverage ?? {};
    const hits = perTest[test.id] ?? {};
    for (const [kind, seen, mutants] of [
      ['loads', loaded, atLoad],
      ['reaches', met, hits],
    ] as const) {
      for (const mutant of Object.keys(mutants)) {
        if (!seen.has(mutant)) write(kind, mutant);
        seen.add(mutant);
      }
    }
    return hits;
  }

  /**
   * Without a mutant. Where one has spoiled what all tests share (a table that it sorted in place), this fails, and so would
   * every mutant to come: the next run begins afresh.
   */
  async #asItIs(test: RunnerTestCase): Promise<void> {
    if (isSpoiled) throw new Error('an earlier test failed without a mutant');
    await this.#run(test).catch((error: unknown) => {
      isSpoiled = true;
      throw error;
    });
  }

  async #run(test: RunnerTestCase): Promise<void> {
    sameTest();
    this.onBeforeTryTask(test);
    await TestRunner.getTestFn(test)();
  }
}
