import { describe, expect, test } from 'vitest';
import { exampleFindings } from '../../src/cli/example-findings.js';
import { renderText } from '../../src/diagnostics/render-text.js';
import { PROBLEMS } from '../../src/problems.js';
import { plica } from '../support/command-line.js';

/** A text as it is read, whatever its line breaks. */
const unwrapped = (text: string): string => text.replace(/\s+/g, ' ');

test('a rule in full, as people see it', async () => {
  const { code, out, err } = await plica('explain creases-cross');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  await expect(out).toMatchFileSnapshot('explain.creases-cross.txt');
});

describe.each(PROBLEMS)('$name', ({ name, meaning, matters, remedy, example, source }) => {
  test('is told with its meaning, its reason, its cure and its source', async () => {
    const { code, out } = await plica(`explain ${name}`);
    expect(code).toBe(0);
    for (const told of [meaning, matters, remedy, source ?? '']) expect(unwrapped(out)).toContain(told);
  });

  test('is shown in a recipe, with what check says of it', async () => {
    const { out } = await plica(`explain ${name}`);
    const said = renderText(exampleFindings(example, example.wrong));
    const { before = '', wrong, mended } = example;
    for (const line of [said, before, wrong, mended].flatMap((text) => text.split('\n')))
      expect(out).toContain(line === '' ? '\n' : `\n  ${line}\n`);
  });
});

test('without a rule, all of them: of the language, of the envelope, of what changed', async () => {
  const { code, out, err } = await plica('explain');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const told = [...out.matchAll(/^ {2}([a-z-]+) +(?:error|warning|note) /gm)].map(([, name]) => name);
  expect(told).toEqual(PROBLEMS.map(({ name }) => name));
  for (const { meaning } of PROBLEMS) expect(unwrapped(out)).toContain(meaning);
});

test('several rules, one after another', async () => {
  const { out } = await plica('explain tight creases-cross');
  expect(out.indexOf('warning[tight]')).toBe(0);
  expect(out).toContain('\n\n\nerror[creases-cross]\n');
});

test.each([60, 80, 300])('prose fits a terminal of %i columns', async (columns) => {
  const { out } = await plica('explain --color never', { terminal: { columns } });
  const widest = Math.max(...out.split('\n').map(({ length }) => length));
  expect(widest).toBeLessThanOrEqual(Math.min(columns, 96));
});

test('colour where it is wanted', async () => {
  const { out } = await plica('explain tight --color always');
  expect(out).toContain('\u001b[33mwarning[tight]');
});

test('a rule that is misspelt: the near ones are named, and nothing is told', async () => {
  expect(await plica('explain warning[tight]')).toEqual(await plica('explain tight'));
  expect(await plica('explain tight creses-cross')).toMatchObject({
    code: 2,
    out: '',
    err: 'plica: there is no rule `creses-cross`; did you mean `creases-cross`?\nplica: `plica explain` lists them all\n',
  });
});
