/* Which stages an envelope has, and what they say. */
import { expect, test } from 'vitest';
import { stages } from '../../../src/drawing/stages/stages.js';
import type { Job } from '../../../src/emit/emitter.js';
import { EXTREMES } from '../../support/extremes.js';
import { job } from '../../support/jobs.js';
import { specJobs } from '../../support/spec-jobs.js';

const captions = ({ folding, envelope }: Job): readonly string[] =>
  stages(folding, envelope).map(({ caption }) => caption);

const folded = { bottom: 'folded', seal: 'folded' } as const;
const notched = { bottom: 'notched', seal: 'notched' } as const;

test('where nothing is cut, no stage says so', () => {
  expect(
    captions(job({ corners: folded })).filter((caption) => /Cut (the )?(notch|tip)/.test(caption)),
  ).toEqual([]);
});

test.each([
  ['notches', { corners: notched }, 'Cut the notches.'],
  ['tips', { corners: folded, flap: { kind: 'rounded', radius: 10 } as const }, 'Cut the tips.'],
  ['both', { flap: { kind: 'rounded', radius: 10 } as const }, 'Cut notches and tips.'],
])('what is cut is named: %s', (_, wishes, words) => {
  expect(captions(job(wishes))).toContain(words);
});

test.each([
  ['glue', 'Flap closed'],
  ['tuck', 'Flap tucked behind the bottom flap'],
  ['seal', 'Flap closed with a seal'],
] as const)('%s: the closing says how', (fasten, words) => {
  expect(captions(job({ fasten })).at(-2)).toContain(`${words}: the back.`);
  expect(captions(job({ fasten, depth: 6, corners: notched }))).toContain(`${words}.`);
});

test('a flap that does not reach the bottom flap is tucked behind the side flaps', () => {
  // Face 110 × 153 mm, seam 12: blank 263/√2 + 24 = 210, diagonal 297; both end flaps reach 72 mm, together less than 153.
  const tall = job({ face: { width: 110, height: 153 }, seam: 12, fasten: 'tuck' });
  expect(captions(tall).at(-2)).toContain('Flap tucked behind the side flaps: the back.');
});

test('a box stands before it is glued', () => {
  expect(captions(job({ depth: 6, corners: notched }))).toEqual([
    'Cut the blank, mark its edges.',
    'Score from mark to mark.',
    'Cut the notches.',
    'Fold up: the walls stand.',
    'Left flap in, then right. Bottom flap over them, glued.',
    'Card in.',
    'Flap closed.',
    'The back. Dashed: edges under paper; dotted: glue.',
    'The front: room for address and stamp.',
  ]);
});

test('side flaps that are glued to each other are said to be', () => {
  const tall = job({ face: { width: 110, height: 153 } });
  expect(tall.folding.centreSeam).toBe(true);
  expect(captions(tall)).toContain('Left flap in, then right, glued to it. Glue on the bottom flap.');
});

test('a front too small for any post has no room for address and stamp', () => {
  expect(captions(job({ face: { width: 55, height: 40 }, seam: 5 })).at(-1)).toBe('The front.');
});

test.each(Object.entries({ ...specJobs(), ...EXTREMES }))('%s: seven to ten stages', (_, of) => {
  const count = captions(of).length;
  expect(count).toBeGreaterThanOrEqual(7);
  expect(count).toBeLessThanOrEqual(10);
});
