import { expect, test } from 'vitest';
import { GAPING, plica, SOUND, TIGHT } from '../support/command-line.js';

const FOLDER = {
  'catalogue.plica': 'units in\n\ncatalogue {\n  title: "Tides"\n  section "Thin": half-letter\n}\n',
  'b/snug.plica': TIGHT,
  'a.plica': SOUND,
  'a/box.plica':
    'units in\n\nenvelope box {\n  card: quarter letter\n  depth: 1/2\n  bulk: 3/8\n  tags: box\n}\n',
  'b/gaping.plica': GAPING,
  'z.plica': SOUND,
};

const made = async () => {
  const { files, code } = await plica('build . --emit facts --out facts', { files: FOLDER });
  expect(code).toBe(1); // one recipe gapes, one name is declared twice: the facts tell it all the same
  return Object.fromEntries(files);
};

test('there are facts for each recipe file, called by its path', async () => {
  const facts = Object.keys(await made()).filter((path) => path.startsWith('/studio/facts/'));
  expect(facts.sort()).toEqual(
    [
      'a.facts.json',
      'a/box.facts.json',
      'b/gaping.facts.json',
      'b/snug.facts.json',
      'catalogue.facts.json',
      'z.facts.json',
    ].map((name) => `/studio/facts/${name}`),
  );
});

test('facts may be asked for with all that is drawn of an envelope', async () => {
  const { files, err } = await plica('build a.plica --emit all,facts --out out', { files: FOLDER });
  expect(files.has('/studio/out/a.facts.json')).toBe(true);
  expect(files.has('/studio/out/half-letter.svg')).toBe(true);
  expect(err).toContain('wrote the facts of 1 recipe file into out');
});

test.each(['pdf', 'html', 'csv', 'md', 'json'])(
  'the book of facts is the one made in one go, byte for byte: %s',
  async (ending) => {
    const files = await made();
    const atOnce = await plica(`catalogue . --out book.${ending}`, { files: FOLDER });
    const assembled = await plica(`catalogue . --from-facts facts --out book.${ending}`, { files });
    expect(assembled.code).toBe(atOnce.code);
    expect(assembled.err).toBe(atOnce.err);
    const book = atOnce.files.get(`/studio/book.${ending}`);
    expect(book?.length).toBeGreaterThan(500);
    expect(
      Buffer.compare(
        assembled.files.get(`/studio/book.${ending}`) ?? new Uint8Array(),
        book ?? new Uint8Array(),
      ),
    ).toBe(0);
  },
);

test('a book is made from facts where no recipe is at hand', async () => {
  const files = Object.fromEntries(
    Object.entries(await made()).filter(
      ([path]) => !path.endsWith('.plica') || path.endsWith('catalogue.plica'),
    ),
  );
  const { err, code } = await plica('catalogue . --from-facts facts --out book.md', { files });
  expect(err).toContain('wrote book.md: 3 envelopes');
  expect(code).toBe(1);
});

const FACTS = '/studio/facts/a.facts.json';
const damages: readonly (readonly [what: string, damage: (text: string) => string, said: string])[] = [
  [
    'a figure was changed',
    (text) => text.replace('285.75', '285.74'),
    'it has been changed or cut short; build it again',
  ],
  ['it was cut short', (text) => text.slice(0, -100), 'it has been changed or cut short; build it again'],
  [
    'it is something else',
    () => '{"format":"plica-facts","version":1}',
    'it is no file of facts that `plica build --emit facts` wrote',
  ],
  [
    'another plica made it',
    (text) => text.replace(/"madeBy":"../, '"madeBy":"00'),
    'another version of plica made it; build it again with this one',
  ],
];
test.each(damages)('facts are taken only as they were written: %s', async (_, damage, said) => {
  const files = await made();
  files[FACTS] = Buffer.from(damage(Buffer.from(files[FACTS] ?? []).toString()));
  const { err, code, files: after } = await plica('catalogue . --from-facts facts --out book.md', { files });
  expect(err).toBe(`plica: facts/a.facts.json: ${said}\n`);
  expect(code).toBe(2);
  expect(after.has('/studio/book.md')).toBe(false);
});

test('two files with the facts of one recipe file are one too many', async () => {
  const files = await made();
  files['/studio/facts/copy.facts.json'] = files[FACTS] ?? new Uint8Array();
  const { err, code } = await plica('catalogue . --from-facts facts --out book.md', { files });
  expect(err).toContain('are both the facts of a.plica');
  expect(code).toBe(2);
});
