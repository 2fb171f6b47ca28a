import fc from 'fast-check';
import { postClassNames } from '../../src/stock/post-classes.js';
import { HOSTILE_TITLES } from './hostile-titles.js';
import { revisions } from './revisions.js';
import { exchange } from './texts.js';

const title = fc.constantFrom(...HOSTILE_TITLES, 'Tide tables', '潮 '.repeat(40), 'x'.repeat(300));

/** A length up to so many mm, in either unit. */
const upTo = (most: number): fc.Arbitrary<string> =>
  fc
    .integer({ min: 1, max: most * 2 })
    .chain((halves) => fc.constantFrom(`${halves / 2} mm`, `${Math.ceil(halves / 3.2) / 16} in`));
const side = fc.integer({ min: 100, max: 600 }).map((halves) => `${halves / 2} mm`);

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
    fc.tuple(side, side),
    title,
    some(
      upTo(25).map((depth) => `depth: ${depth}`),
      upTo(12).map((bulk) => `bulk: ${bulk}`),
      fc.constantFrom('opens: end', 'fasten: tuck', 'fasten: seal', 'corners: notched', 'paper: slate'),
      upTo(15).map((inset) => `liner: inset ${inset}`),
      upTo(20).map((radius) => `flap: rounded ${radius}`),
      fc.constantFrom(...postClassNames()).map((post) => `post: ${post}\n  expect post ${post}`),
      fc.constantFrom('tags: tides', 'tags: box, flat'),
      upTo(400).map((blank) => `expect blank = ${blank} +- 1/16 in`),
      title.map((words) => `note: "${words}", "${words}"`),
    ),
  )
  .map(
    ([like, [width, height], words, lines]) =>
      `envelope keepsake${like} {\n  title: "${words}"\n  card: ${width} x ${height}\n${lines}}\n`,
  );

/** Cards of ordinary sizes, made together; nothing is wrong with most of their envelopes. */
const batches = fc
  .tuple(
    fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 400 })), { minLength: 1, maxLength: 3 }),
    title,
    some(fc.constantFrom('spoilage: 5 %', 'spoilage: 0 %', 'spoilage: 99 %')),
    some(fc.constantFrom('price: 0.4', 'stock: 3', 'weight: 120 gsm', 'grain: long')),
  )
  .map(([cards, words, ofBatch, ofPaper]) =>
    [
      `paper deck {\n  title: "${words}"\n  sheet: 900 mm x 640 mm\n${ofPaper}}`,
      ...cards.map(([width, height], index) => `envelope card-${index} {\n  card: ${width} x ${height}\n}`),
      `batch spring {\n  title: "${words}"\n${ofBatch}  make: ${cards.map(([, , count], index) => `card-${index} ${count} on deck`).join(', ')}\n}`,
      'batch autumn like spring {\n  make: keepsake 2 on deck, moon 5 on chart\n}\n',
    ].join('\n'),
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
