// Many files are shared among the machine's cores. Whoever checks which of them, it comes to what one alone finds.
import { expect, test } from 'vitest';
import { checkTogether, checkTurns } from '../../src/cli/check-together.js';
import { readInputs } from '../../src/cli/inputs.js';
import { checkOnly } from '../../src/compile.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import type { Host } from '../../src/host/host.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { reader } from '../../src/host/reader.js';
import { GAPING, SOUND, TIGHT } from '../support/command-line.js';

type Beside = Host['beside'];

/** What tells on its way what it has found, as another thread does: by copies. */
const another: (host: Host, most: number) => Beside = (host, most) => async (task) => {
  const told: unknown[] = [];
  const copy = structuredClone(task) as Parameters<typeof checkTurns>[0];
  try {
    checkTurns(copy, host, (each) => {
      if (told.length === most) throw new Error('the thread has failed');
      told.push(structuredClone(each));
    });
  } catch {
    // It tells no more.
  }
  return told;
};

/** Who takes part. */
const OTHERS: Readonly<Record<string, (host: Host) => Beside>> = {
  'this thread alone': () => async () => [],
  'another, quicker than this': (host) => another(host, Infinity),
  'another, which fails at once': (host) => another(host, 0),
  'another, which fails at its third turn': (host) => another(host, 2),
};

const named = (text: string, name: string): string => text.replace(/half-letter|gaping|snug/, name);

/** Files of one envelope each, by what they are. */
const many = (text: string, count = 40): Record<string, string> =>
  Object.fromEntries(
    Array.from({ length: count }, (_, number) => [`${number}.plica`, named(text, `card-${number}`)]),
  );

const HOUSE = 'units in\nstyle house {\n  seam: 1/2\n  blank: 10\n}\n';
const USER = 'units in\nuse "house.plica"\nenvelope half-letter like house { card: 8 1/2 x 5 1/2 }\n';

const FOLDERS: Readonly<Record<string, Record<string, string>>> = {
  'nothing wrong': many(SOUND),
  'a warning in each': many(TIGHT),
  'an error in one': { ...many(SOUND), 'b.plica': GAPING },
  'an error in a style that all use': { ...many(USER), 'house.plica': HOUSE },
  'two envelopes of one name, far from each other': { ...many(SOUND), 'z.plica': named(TIGHT, 'card-3') },
  'a slip of writing': { ...many(SOUND), '7.plica': 'units in\nenvelope {' },
  'a style that only another file knows': {
    ...many(SOUND),
    'z.plica': 'units in\nstyle house { ease: 1/4 }\n',
    'a.plica': 'units in\nenvelope ebb like house { card: 6 x 4 }\n',
  },
  'a batch from a sheet too small': {
    ...many(SOUND),
    'z.plica': 'use "3.plica"\npaper kraft { sheet: 10 x 10 in }\nbatch forty { make: card-3 40 on kraft }\n',
  },
};

test.each(
  Object.keys(FOLDERS).flatMap((folder) => Object.keys(OTHERS).map((others) => ({ folder, others }))),
)('$folder: found by $others as by one', async ({ folder, others }) => {
  const host = memoryHost({ files: FOLDERS[folder] ?? {} });
  const { files } = await readInputs(host, []);
  const alone = checkOnly(
    files.map(({ input }) => input),
    reader(host, files),
  );
  const beside = (OTHERS[others] as (host: Host) => Beside)(host);
  const together = await checkTogether(files, 1, { ...host, beside });
  expect(alone.diagnostics.length > 0).toBe(folder !== 'nothing wrong');
  expect(renderText(together.diagnostics)).toBe(renderText(alone.diagnostics));
  expect(together.recipes.map(({ envelope }) => envelope.name)).toEqual(
    alone.recipes.map(({ envelope }) => envelope.name),
  );
});
