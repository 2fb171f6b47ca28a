import { expect, test } from 'vitest';
import { COMMANDS } from '../../src/cli/commands/index.js';
import { run } from '../../src/cli/run.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { GAPING, plica, SOUND } from '../support/command-line.js';

const files = { 'a.plica': SOUND, 'cards/tides.plica': SOUND };

test('the help names every command; without a command it is wrong usage', async () => {
  const { code, out, err } = await plica('--help');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  for (const { name } of COMMANDS) expect(out).toContain(`\n  ${name} `);
  expect(await plica('')).toMatchObject({ code: 2, out: '', err: out });
  expect(await plica('help')).toMatchObject({ code: 0, out });
});

test.each(COMMANDS.map(({ name }) => name))(
  'the help of %s fits 96 columns and has an example',
  async (name) => {
    const { code, out, err } = await plica(`${name} --help`);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(`\nExample: plica ${name} `);
    expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(96);
    for (const line of [`help ${name}`, `${name} -h`]) {
      expect(await plica(line)).toMatchObject({ code: 0, out });
    }
  },
);

test('`--version` prints the number alone', async () => {
  expect(await plica('--version')).toMatchObject({ code: 0, out: '0.1.0\n', err: '' });
});

/** What is typed, and what is said about it. */
const WRONG: readonly (readonly [line: string, said: string])[] = [
  ['chekc a.plica', 'there is no command `chekc`; did you mean `check`?'],
  ['frobnicate', 'there is no command `frobnicate`'],
  ['--strict check', 'the command comes first, then its options: `plica check --strict`'],
  ['check --fromat json', '`check` has no option `--fromat`; did you mean `--format`?'],
  ['check -x', '`check` has no option `-x`'],
  ['check -strict a.plica', '`check` has no option `-strict`; did you mean `--strict`?'],
  ['show -only=tides a.plica', '`show` has no option `-only`; did you mean `--only`?'],
  ['-v', 'there is no option `-v`; did you mean `--version`?'],
  ['--versoin', 'there is no option `--versoin`; did you mean `--version`?'],
  ['show --strict a.plica', '`show` has no option `--strict`; `check`, `build`, `catalogue` and `plan` have'],
  ['check --units in', '`check` has no option `--units`; `fit` and `new` have'],
  ['check a.plcia', 'a.plcia: there is no such file or folder; did you mean `a.plica`?'],
  ['check a', 'a: there is no such file or folder; did you mean `a.plica`?'],
  ['check cards/tide', 'cards/tide: there is no such file or folder; did you mean `cards/tides.plica`?'],
  ['show card/tides.plica', 'card/tides.plica: there is no such file or folder'],
  ['check --format', '`--format` wants a value: `--format FORMAT`'],
  ['check --format --strict', '`--format` wants a value: `--format FORMAT`, but `--strict` follows'],
  [
    'check --format jsno',
    '`--format` is `text`, `line`, `json` or `sarif`, not `jsno`; did you mean `json`?',
  ],
  ['check --strict=yes', '`--strict` takes no value'],
  ['check --strict --strict', '`--strict` is given twice'],
  ['check --color sometimes', '`--color` is `auto`, `always` or `never`, not `sometimes`'],
  ['show', '`show` wants PATH…, as in `plica show specs/tide-tables.plica --only half-letter`'],
  ['build a.plica', 'say where to write, as in `--out out`'],
  [
    'build a.plica --out out --page a5',
    '`--page` is `letter`, `a4`, `a3`, `tabloid`, `legal` or `fit`, not `a5`',
  ],
  ['build --out out --margin 6', '`--margin` is a length with its unit, as `6mm` or `1/4in`, not `6`'],
  ['build --out out --margin 3gsm', '`--margin` is a length with its unit, as `6mm` or `1/4in`, not `3gsm`'],
  ['build --out out --margin 2in', '`--margin 2in` is more than 35 mm'],
];

test.each(WRONG)('plica %s', async (line, said) => {
  const { code, out, err } = await plica(line, { files });
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(`plica: ${said}`);
});

/** Names that would clear the screen, forge a line, or turn it round. */
const SLY = ['\u001b[2J', 'ebb\nplica:', '\u202eacilp'];

test.each(['check', 'show', 'build --out out', 'format', 'watch', 'new', 'explain', 'completion'])(
  '%s shows what is hidden in an argument or a file’s name',
  async (command) => {
    for (const name of SLY) {
      const [, ...options] = command.split(' ');
      const host = memoryHost({ files: { [`${name}.plica`]: GAPING } });
      for (const operand of [name, `${name}.plica`, `${name}.`]) {
        await run([command.split(' ')[0] as string, operand, ...options], host);
      }
      expect(host.said.out + host.said.err).not.toMatch(/[\u001b\u202e]|^plica:\.|^plica: *$/m);
    }
  },
);

test('what is typed cannot move the cursor', async () => {
  expect((await plica('\u001b[2J')).err).not.toContain('\u001b');
  expect((await plica('check \u001b[2J')).err).not.toContain('\u001b');
});

test('colour: on a terminal only, and as --color and NO_COLOR ask', async () => {
  const bad = { files: { 'a.plica': 'units in\nenvelope a { }\n' } };
  const terminal = { columns: 80 };
  const coloured = async (line: string, more: object): Promise<boolean> =>
    (await plica(`check a.plica ${line}`, { ...bad, ...more })).out.includes('\u001b[');
  expect(await coloured('', {})).toBe(false);
  expect(await coloured('', { terminal })).toBe(true);
  expect(await coloured('', { terminal, env: { NO_COLOR: '1' } })).toBe(false);
  expect(await coloured('', { terminal, env: { NO_COLOR: '' } })).toBe(true);
  expect(await coloured('', { terminal, env: { TERM: 'dumb' } })).toBe(false);
  expect(await coloured('--color never', { terminal })).toBe(false);
  expect(await coloured('--color=always', { env: { NO_COLOR: '1' } })).toBe(true);
});
