/* What a title says is text and nothing else, in whatever is printed or written of it. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, test } from 'vitest';
import { plica } from '../support/command-line.js';
import { HOSTILE_TITLES, TITLE } from '../support/hostile-titles.js';

/** One of these in a page, by itself, with its name. */
const NAMED = /<bdi class="unseen" title="U\+[0-9A-F]{4,6}">.<\/bdi>/gsu;

/** The characters of a text that do anything, as numbers. */
const slyIn = (text: string): readonly (number | undefined)[] =>
  [...text]
    .filter((each) => /[^\n\P{Cc}]|[\p{Cf}\p{Zl}\p{Zp}]/u.test(each))
    .map((each) => each.codePointAt(0));

const tides = (card: string): string => `units in\n\nenvelope tides {\n  title: "${TITLE}"\n  ${card}\n}\n`;
const FILES = {
  'tides.plica': tides('card: 8 1/2 x 5 1/2'),
  'wide.plica': tides('card: 8 1/2 x 6'),
};

/** Demands that a text does nothing, and that it is JSON that says `TITLE` somewhere. */
function expectTame(json: string): void {
  expect(slyIn(json)).toEqual([]);
  const strings: string[] = [];
  JSON.parse(json, (_, value: unknown) => {
    if (typeof value === 'string') strings.push(value);
    return value;
  });
  expect(strings.some((text) => text.includes(TITLE))).toBe(true);
}

describe('JSON holds every title as it is, in escapes', () => {
  test.each(['show tides.plica --format json', 'diff tides.plica wide.plica --format json'])(
    '%s',
    async (line) => expectTame((await plica(line, { files: FILES })).out),
  );

  test.each([
    ['build tides.plica --emit fold --out out', 'out/tides.fold'],
    ['build tides.plica --emit facts --out out', 'out/tides.facts.json'],
    ['catalogue recipes --no-cache --out out/book.json', 'out/book.json'],
  ])('%s', async (line, path) => {
    const files = { ...FILES, 'recipes/tides.plica': FILES['tides.plica'] };
    const { code, files: written } = await plica(line, { files });
    expect(code).toBe(0);
    expectTame(Buffer.from(written.get(`/studio/${path}`) ?? []).toString());
  });
});

test.each(['json', 'sarif', 'line', 'text'])(
  'check --format %s, of a file with such a name',
  async (format) => {
    const name = `wrong-${TITLE.replaceAll(' ', '-')}.plica`;
    const files = { [name]: tides('card: moon') };
    const { code, out } = await plica(`check ${name} --format ${format}`, { files });
    expect(code).toBe(1);
    expect(slyIn(out)).toEqual([]);
    if (format === 'json') expectTame(out.replaceAll('-', ' '));
  },
);

/** Every file that is made of an envelope, and the catalogue in every format. */
async function allOf(title: string): Promise<ReadonlyMap<string, Uint8Array>> {
  const text = `units in\n\nenvelope tides {\n  title: "${title}"\n  note: "${title}"\n  card: A6\n}\n`;
  const made = new Map<string, Uint8Array>();
  for (const line of [
    'build in --emit all,facts --out out',
    ...['pdf', 'html', 'csv', 'md', 'json'].map(
      (format) => `catalogue in --no-cache --out out/book.${format}`,
    ),
  ]) {
    const { code, files } = await plica(line, { files: { 'in/tides.plica': text } });
    expect({ line, code }).toEqual({ line, code: 0 });
    for (const [path, bytes] of files) if (path.startsWith('/studio/out/')) made.set(path, bytes);
  }
  return made;
}

/** The names of a text's elements and attributes, each once, and how many scripts there are. */
function markupIn(text: string): readonly unknown[] {
  const tags = text.replace(/"[^"<>]*"/g, '""').match(/<[a-z!?/][^>]*>/gi) ?? [];
  const names = tags.flatMap((tag) => tag.match(/^<[^\s>]+|\s[a-z-:]+(?==)/gi) ?? []);
  return [tags.filter((tag) => /^<script/i.test(tag)).length, [...new Set(names)].sort()];
}

const harmless = await allOf('Tide table');

describe.each(HOSTILE_TITLES)('%j', async (payload) => {
  const made = await allOf(payload);

  test('the same files as of any title', () => {
    expect([...made.keys()]).toEqual([...harmless.keys()]);
    expect(made.size).toBe(14);
  });

  test.each([...made.keys()].filter((path) => /\.(svg|html)$/.test(path)))(
    '%s: no markup of its own',
    (path) => {
      const [is, was] = [made, harmless].map((files) =>
        markupIn(
          Buffer.from(files.get(path) ?? [])
            .toString()
            .replace(NAMED, ''),
        ),
      );
      expect(is).toEqual(was);
    },
  );

  test.each([...made.keys()].filter((path) => path.endsWith('.pdf')))(
    '%s: no script, no action',
    async (path) => {
      const document = await getDocument({ data: (made.get(path) ?? new Uint8Array()).slice(), verbosity: 0 })
        .promise;
      expect(await document.getOpenAction()).toBe(null);
      expect(await document.getJSActions()).toBe(null);
      expect(await document.getAttachments()).toBe(null);
      await document.destroy();
    },
  );

  // The page holds the recipe as it was written, to be downloaded; lines of the table end as RFC 4180 says.
  test.each([...made.keys()].filter((path) => !/\.(pdf|html)$/.test(path)))(
    '%s: no character does anything',
    (path) => {
      const text = Buffer.from(made.get(path) ?? []).toString();
      expect(slyIn(path.endsWith('.csv') ? text.slice(1).replaceAll('\r\n', '\n') : text)).toEqual([]);
    },
  );
});

test('in a catalogue’s page each such character of a recipe stands alone, named, and turns nothing else', async () => {
  const { files } = await plica('catalogue recipes --no-cache --out book.html', {
    files: { 'recipes/tides.plica': FILES['tides.plica'] },
  });
  const page = Buffer.from(files.get('/studio/book.html') ?? []).toString();
  const recipe = /<pre[^>]*><code>(.*?)<\/code>/s.exec(page)?.[1] ?? '';
  expect(recipe).toContain('Tide <bdi class="unseen" title="U+202E">\u202e</bdi>esrever');
  expect(slyIn(recipe.replace(NAMED, ''))).toEqual([]);
});
