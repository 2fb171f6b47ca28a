/* Names that every object of JavaScript knows are names like any other, and known only where somebody declares them. */
import { describe, expect, test } from 'vitest';
import { plica } from '../support/command-line.js';

const good = (ease: string, card: string): string => `units in

let ${ease} = 1/4

let ${card} = 5 x 7

paper prototype {
  sheet: 20 x 26
  weight: 80 lb text
}

style valueof {
  ease: ${ease}
  paper: prototype
}

envelope hasownproperty like valueof {
  tags: ${ease}, ${card}
  card: ${card}
}
`;

test.each([
  ['constructor', 'tostring'],
  ['tolocalestring', 'constructor'],
])('a recipe of such names (`let %s`, `let %s`) is a recipe', async (ease, card) => {
  const files = { 'in/a.plica': good(ease, card) };
  expect(await plica('check in --strict', { files })).toMatchObject({ code: 0, err: '' });
  expect(await plica('format in --check', { files })).toMatchObject({ code: 0 });
  expect((await plica('show in --only hasownproperty', { files })).code).toBe(0);
  expect((await plica('build in --emit all,facts --out out', { files })).code).toBe(0);
  for (const format of ['pdf', 'html', 'csv', 'md', 'json'])
    expect((await plica(`catalogue in --no-cache --out out/book.${format}`, { files })).code).toBe(0);
});

const NAMES = ['constructor', 'prototype', 'tostring', 'hasownproperty'];

/** A line with a name at some place, and the rule that it breaks. */
const PLACES: readonly (readonly [line: (name: string) => string, rule: string])[] = [
  [(name) => `units ${name}`, 'unknown-name'],
  [(name) => `use "${name}"`, 'wrong-kind'],
  [(name) => `use "${name}.plica"`, 'unknown-name'],
  [(name) => `let a = ${name}`, 'unknown-name'],
  [(name) => `let a = 1 ${name}`, 'unknown-name'],
  [(name) => `paper a { ${name}: 1 }`, 'unknown-property'],
  [(name) => `paper a { weight: 80 lb ${name} }`, 'unknown-name'],
  [(name) => `style a like ${name} { }`, 'unknown-name'],
  [(name) => `style a { ${name}: 1 }`, 'unknown-property'],
  [(name) => `style a { card: ${name} }`, 'unknown-name'],
  [(name) => `style a { paper: ${name} }`, 'unknown-name'],
  [(name) => `style a { fasten: ${name} }`, 'unknown-name'],
  [(name) => `style a { post: ${name} }`, 'unknown-name'],
  [(name) => `style a { expect ${name} > 0 }`, 'unknown-name'],
  [(name) => `style a { expect post ${name} }`, 'unknown-name'],
  [(name) => `${name} { }`, 'syntax'],
  [(name) => `${name}`, 'syntax'],
];

describe.each(NAMES)('%s', (name) => {
  test.each(PLACES.map(([line, rule]) => [line(name), rule]))('`%s` is one mistake', async (line, rule) => {
    const { code, out, err } = await plica('check a.plica --format line', {
      files: { 'a.plica': `${line}\n` },
    });
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out).toMatch(new RegExp(`^a\\.plica:1:\\d+: error: ${rule}: .*\n$`));
  });
});

test.each([...NAMES, '__proto__', 'toString', 'hasOwnProperty'])(
  '%s is no command, rule, kind, format, option or envelope',
  async (name) => {
    const files = { 'in/a.plica': 'units in\n\nenvelope a { card: A6 }\n' };
    for (const line of [
      name,
      `explain ${name}`,
      `help ${name}`,
      `completion ${name}`,
      `check in --${name}`,
      `check in --format ${name}`,
      `show in --only ${name}`,
      `build in --emit ${name} --out out`,
      `build in --out out --paper ${name}`,
      `catalogue in --out out.${name}`,
      `catalogue in --sort ${name} --out out.pdf`,
      `log ${name}`,
    ]) {
      const { code, out, err } = await plica(line, { files });
      expect({ line, code, out }).toEqual({ line, code: 2, out: '' });
      expect(err).toMatch(/^plica: /);
    }
  },
);
