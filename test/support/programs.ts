import fc from 'fast-check';
import { postClassNames } from '../../src/stock/post-classes.js';
import { HOSTILE_TITLES } from './hostile-titles.js';
import { revisions } from './revisions.js';
import { exchange } from './texts.js';

const title = fc.constantFrom(...HOSTILE_TITLES, 'Tide tables', '潮 '.repeat(40), 'x'.repeat(300));
const length = fc
  .integer({ min: 1, max: 640 })
  .chain((count) => fc.constantFrom(`${count / 4} mm`, `${count}/16 in`));

/** Of each line it stands or does not. */
const some = (...lines: readonly fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc
    .tuple(...lines.map((line) => fc.option(line)))
    .map((stated) =>
      stated.flatMap((line) => (line === null ? [] : [`  ${line.replaceAll('\n', '\n  ')}\n`])).join(''),
    );

/** A box or a flat envelope with figures from anywhere, like one of the others. */
const envelope = fc
  .tuple(
    fc.constantFrom('', ' like tides', ' like house', ' like bench'),
    fc.tuple(length, length),
    title,
    some(
      length.map((depth) => `depth: ${depth}`),
      length.map((bulk) => `bulk: ${bulk}`),
      fc.constantFrom('opens: end', 'fasten: tuck', 'fasten: seal', 'corners: notched', 'paper: slate'),
      length.map((inset) => `liner: inset ${inset}`),
      length.map((radius) => `flap: rounded ${radius}`),
      fc.constantFrom(...postClassNames()).map((post) => `post: ${post}\n  expect post ${post}`),
      fc.constantFrom('tags: tides', 'tags: box, flat'),
      length.map((blank) => `expect blank = ${blank} +- 1/16 in`),
      title.map((words) => `note: "${words}", "${words}"`),
    ),
  )
  .map(
    ([like, [width, height], words, lines]) =>
      `envelope keepsake${like} {\n  title: "${words}"\n  card: ${width} x ${height}\n${lines}}\n`,
  );

/** Batches of all envelopes on papers whose sheets are mostly large enough. */
const batches = fc
  .tuple(
    fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 3, maxLength: 3 }),
    fc.constantFrom('', ' on chart', ' on deck'),
    title,
    some(fc.constantFrom('spoilage: 5 %', 'spoilage: 0 %', 'spoilage: 99 %')),
  )
  .map(
    ([[one, two, three], on, words, lines]) =>
      `paper deck {\n  sheet: 900 mm x 640 mm\n  weight: 120 gsm\n}\nbatch spring {\n  title: "${words}"\n  make: tides ${one}${on}, moon ${two} on deck\n${lines}}\nbatch autumn like spring {\n  make: keepsake ${three} on deck\n}\n`,
  );

const catalogue = fc
  .tuple(
    title,
    some(
      title.map((words) => `by: "${words}"`),
      title.map((words) => `foreword: "${words}"`),
      fc.constantFrom('page: half letter', 'page: A4', 'page: A6'),
      title.map((words) => `section "${words}": keepsake, tagged tides`),
    ),
  )
  .map(([words, lines]) => `catalogue {\n  title: "${words}"\n${lines}}\n`);

/**
 * Whole files with every statement that there is, as they were and as they are: papers, styles, envelopes like others, batches, a
 * catalogue, hostile titles. In some, figures, units or names are changed over.
 */
export const programs: fc.Arbitrary<readonly [before: string, after: string]> = fc
  .tuple(revisions, envelope, envelope, batches, catalogue, fc.option(exchange))
  .map(([[before, after], was, is, batch, book, spoil]) => [
    before + was + batch,
    (spoil ?? ((text: string): string => text))(after + is + batch + book),
  ]);
