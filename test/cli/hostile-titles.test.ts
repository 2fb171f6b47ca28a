/* What a title says is text and nothing else, in whatever is printed or written of it. */
import { describe, expect, test } from 'vitest';
import { plica } from '../support/command-line.js';

/** Turns the line round, ends it, clears a terminal, hides: below U+0100, below U+10000 and beyond. */
const TITLE =
  'Tide \u202eesrever\u202c \u2028\u2029 \u001b[2J\u0007\u007f \u0085\u009b2J \u200b\u00ad\ufeff \u{e0041}\u{110bd}';

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
