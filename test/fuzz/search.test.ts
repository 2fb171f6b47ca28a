/* The fuzzer itself: it finds what there is to find, makes it short, and does the same each time. */
import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { nothingReached } from './reached.js';
import { search } from './search.js';
import { shrunk } from './shrunk.js';

const seeds = ['units in\nenvelope tides { card: A6 }\n', 'let hand = 1/16\n', 'style house { seam: 1/2 }\n'];

/** A program that fails where a text states a lining in a style, behind doors that open one after the other. */
const doors = [/^style/m, /style[^}]*liner/, /style[^}]*liner[^}]*inset/];

async function searchedWith(seed: number) {
  const { counts, ...counters } = { counts: new Uint32Array(doors.length), rooms: ['hall', 'hall', 'attic'] };
  const reached = nothingReached({ counts, ...counters });
  const broken = (text: string): readonly string[] => {
    doors.forEach((door, index) => {
      if (door.test(text)) counts[index] = 1;
    });
    return doors.every((door) => door.test(text)) ? ['no lining in a style'] : [];
  };
  const searched = await search(
    { broken, brokenByMade: async () => [], hasReached: reached.see },
    { seeds, seed, goesOn: (runs) => runs < 3000 },
  );
  return { searched, rooms: reached.rooms() };
}

test('what lies behind several doors is found, and told in the shortest text', async () => {
  const { searched, rooms } = await searchedWith(1);
  expect(searched.found).toEqual([{ law: 'no lining in a style', text: 'stylelinerinset', before: null }]);
  expect(rooms.get('attic')).toEqual({ run: 1, all: 1 });
});

test('the same seed gives the same', async () => {
  expect(await searchedWith(7)).toEqual(await searchedWith(7));
});

test('what breaks in what is made is told with what was before it', async () => {
  const { found } = await search(
    {
      broken: () => [],
      brokenByMade: async (text, before) => (text !== before ? ['made alike'] : []),
      hasReached: () => false,
    },
    { seeds, seed: 1, goesOn: (runs) => runs < 400 },
  );
  expect(found).toEqual([{ law: 'made alike', text: '', before: expect.stringContaining('envelope') }]);
});

test('a text is cut down to what matters', async () => {
  const text = 'a\nb\nlet x = 1/0 # there\nc\n';
  expect(await shrunk(text, (shorter) => shorter.includes('1/0'), 100)).toBe('1/0');
  expect(await shrunk(text, (shorter) => shorter.includes('1/0'), 0)).toBe(text);
  expect(await shrunk(text, () => true, 100)).toBe('');
});

test('a short run over the whole program breaks no law', () => {
  const { stdout, status } = spawnSync('node', ['test/fuzz/fuzz.mjs', '--texts', '--runs', '200'], {
    encoding: 'utf8',
  });
  expect(stdout).toMatch(/^seed 1, \d+ texts to begin with\n200 runs, \d+ texts reached something new\n/);
  expect(stdout).not.toContain('broken');
  expect(status).toBe(0);
}, 180_000);

test('what is asked wrongly is answered with what can be asked', () => {
  const { stdout, status } = spawnSync('node', ['test/fuzz/fuzz.mjs', '--runs', 'many'], {
    encoding: 'utf8',
  });
  expect(stdout).toMatch(/^npm run fuzz/);
  expect(status).toBe(2);
});
