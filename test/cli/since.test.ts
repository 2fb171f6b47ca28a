import { describe, expect, test } from 'vitest';
import { plicaIn } from '../support/program.js';
import { type Files, type ScratchRepository, scratchRepository } from '../support/repository.js';
import { sarifErrors } from '../support/sarif-schema.js';

const card = (name: string, ...lines: readonly string[]): string =>
  [
    'units in',
    '',
    `envelope ${name} {`,
    '  card: 8 1/2 x 5 1/2',
    ...lines.map((line) => `  ${line}`),
    '}',
    '',
  ].join('\n');

const house = (...lines: readonly string[]): string =>
  ['units in', '', 'style house {', ...lines.map((line) => `  ${line}`), '}', ''].join('\n');

const styled = (name: string, ...lines: readonly string[]): string =>
  card(name, ...lines)
    .replace('units in\n', 'units in\n\nuse "house.plica"\n')
    .replace(` ${name} {`, ` ${name} like house {`);

/** A repository with one commit, and what its files became. */
function revised(before: Files, after: Files): ScratchRepository {
  const repository = scratchRepository();
  repository.commit('Before', before);
  repository.put(after);
  return repository;
}

/** The envelopes that are found to come out otherwise. */
async function found(repository: ScratchRepository, ...args: readonly string[]): Promise<readonly string[]> {
  const { out } = await plicaIn(repository, ['check', '--since', 'HEAD', '--format', 'json', ...args]);
  const { findings } = JSON.parse(out) as { findings: readonly { rule: string; message: string }[] };
  return findings
    .filter(({ rule }) => rule === 'figures-changed')
    .map(({ message }) => message.split(' ')[0] ?? '');
}

test('as people see it: the figures, and the statement that did it', async () => {
  const repository = revised(
    { 'house.plica': house('ease: 1/4'), 'tides.plica': styled('tides', 'tags: flat') },
    { 'house.plica': house('ease: 3/8') },
  );
  const { code, out, err } = await plicaIn(repository, ['check', '--since', 'HEAD']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  // 11 1/4 in for a half-letter card: common practice, no published source
  expect(out).toContain('blank 11 1/4 in → ');
  await expect(out).toMatchFileSnapshot('figures-changed.findings.txt');
  expect(await plicaIn(repository, ['check', '--since', 'HEAD', '--strict'])).toMatchObject({ code: 1 });
  expect(await plicaIn(repository, ['check', '--strict'])).toMatchObject({ code: 0 });
});

test('what does not move a figure is not pointed at', async () => {
  const repository = revised(
    { 'tides.plica': card('tides') },
    { 'tides.plica': card('tides', 'title: "High water"', 'note: "Dry it."', 'seam: 9/16', 'tags: flat') },
  );
  const { out } = await plicaIn(repository, ['check', '--since', 'HEAD']);
  expect(out.match(/\w+ is not what it was/g)).toEqual(['seam is not what it was']);
});

/** A recipe before and after, and whether it is found. */
const REVISIONS: readonly (readonly [what: string, before: string, after: string, isFound: boolean])[] = [
  ['nothing is expected', card('tides'), card('tides', 'seam: 9/16'), true],
  [
    'what is expected stays',
    card('tides', 'expect layers <= 9'),
    card('tides', 'seam: 9/16', 'expect layers <= 9'),
    true,
  ],
  [
    'it is expected of another spelling of the same',
    card('tides', 'expect blank < 12'),
    card('tides', 'seam: 9/16', 'expect blank < 304.8 mm'),
    true,
  ],
  ['an expectation is added', card('tides'), card('tides', 'seam: 9/16', 'expect blank = 11 3/8'), false],
  [
    'an expectation is changed',
    card('tides', 'expect blank = 11 1/4'),
    card('tides', 'seam: 9/16', 'expect blank = 11 3/8'),
    false,
  ],
  ['an expectation is removed', card('tides', 'expect blank = 11 1/4'), card('tides', 'seam: 9/16'), false],
  ['only words', card('tides'), card('tides', 'title: "High water"', 'note: "Dry it flat."'), false],
  ['only the layout', card('tides', 'seam: 1/2'), `# a card\n${card('tides', 'seam: 12.7 mm')}`, false],
  ['what no ruler shows', card('tides', 'bulk: 1 mm'), card('tides', 'bulk: 1.0001 mm'), false],
  ['nothing', card('tides'), card('tides'), false],
  ['a new recipe', 'units in\n', card('tides'), false],
  ['a recipe that is gone', card('tides'), 'units in\n', false],
  ['a recipe under another name', card('tides'), card('ebb'), false],
];

test('what is found, and what is not', async () => {
  const repository = scratchRepository();
  for (const [what, before, after, isFound] of REVISIONS) {
    repository.commit(what, { 'tides.plica': before });
    repository.put({ 'tides.plica': after });
    expect.soft([what, ...(await found(repository))]).toEqual([what, ...(isFound ? ['tides'] : [])]);
  }
});

test('an edit in a style is found in each recipe that it reaches, but for those whose expectations were touched', async () => {
  const before = {
    'house.plica': house('ease: 1/4'),
    'ebb.plica': styled('ebb'),
    'flood.plica': styled('flood'),
    'moon.plica': styled('moon', 'ease: 1/4'),
  };
  const repository = revised(before, {
    'house.plica': house('ease: 3/8'),
    'flood.plica': styled('flood', 'expect layers <= 9'),
  });
  expect(await found(repository)).toEqual(['ebb']);
  repository.put({ 'house.plica': house('ease: 3/8', 'expect layers <= 9') });
  expect(await found(repository)).toEqual([]);
});

test('it is looked for where it is looked at, through another name of a file', async () => {
  const repository = revised(
    { 'ebb.plica': card('ebb'), 'flood.plica': card('flood') },
    {
      'ebb.plica': null,
      'slim.plica': card('ebb', 'seam: 9/16'),
      'flood.plica': card('flood', 'seam: 9/16'),
    },
  );
  expect(await found(repository)).toEqual(['ebb', 'flood']);
  expect(await found(repository, 'flood.plica')).toEqual(['flood']);
  expect(await plicaIn(repository, ['check', '--since', 'HEAD', 'slim.plica'])).toEqual({
    code: 0,
    out: 'nothing wrong in 1 envelope of 1 file\n',
    err: '',
  });
});

test('the usual findings come first; lines, JSON and SARIF have it too', async () => {
  const broken = card('tides', 'seam: 9/16', 'expect blank = 11 1/4');
  const repository = revised(
    { 'tides.plica': card('tides', 'expect blank = 11 1/4') },
    { 'tides.plica': broken },
  );
  const rendered = (format: string) => plicaIn(repository, ['check', '--since', 'HEAD', '--format', format]);
  const lines = await rendered('line');
  expect(lines).toMatchObject({ code: 1, err: '' });
  expect(lines.out).toMatch(
    /^tides\.plica:6:18: error: expectation: .*\ntides\.plica:3:10: warning: figures-changed: tides comes out otherwise than at `HEAD`, .*\n$/,
  );
  const { findings } = JSON.parse((await rendered('json')).out) as { findings: readonly { why: string }[] };
  expect(findings[1]?.why).toMatch(/^blank 11 1\/4 in → 11 3\/8 in; /);
  expect(sarifErrors(JSON.parse((await rendered('sarif')).out))).toEqual([]);
});

test('what is staged, against a revision', async () => {
  const repository = revised(
    { 'tides.plica': card('tides') },
    { 'tides.plica': card('tides', 'seam: 9/16') },
  );
  expect(await found(repository, '--staged')).toEqual([]);
  repository.git('add', '--all');
  repository.put({ 'tides.plica': card('tides') });
  expect(await found(repository, '--staged')).toEqual(['tides']);
  expect(await found(repository)).toEqual([]);
});

describe('what cannot be compared', () => {
  /** What is given, and what is said. */
  const REFUSED: readonly (readonly [args: readonly string[], said: string])[] = [
    [['--since', 'v9'], '`v9`: there is no such revision'],
    [['--since=--output=stolen'], '`--output=stolen`: there is no such revision'],
    [['--since', 'HEAD', '../elsewhere'], '../elsewhere: it is not in this repository'],
    [
      ['--since', 'HEAD', '-'],
      '`--since` compares with what git keeps, and standard input is not among it; give it the file',
    ],
  ];

  test('is refused, and nothing is said of the recipes', async () => {
    const repository = revised({ 'tides.plica': card('tides') }, {});
    const host = { ...repository, host: () => ({ ...repository.host(), readInput: async () => EMPTY }) };
    for (const [args, said] of REFUSED)
      expect
        .soft(await plicaIn(host, ['check', ...args]))
        .toEqual({ code: 2, out: '', err: `plica: ${said}\n` });
  });

  test('mistakes of then are said; what was sound then is compared', async () => {
    const repository = revised(
      { 'slip.plica': 'units in\n\nenvelope slip { card: }\n', 'tides.plica': card('tides') },
      { 'slip.plica': card('slip'), 'tides.plica': card('tides', 'seam: 9/16') },
    );
    const { code, out, err } = await plicaIn(repository, ['check', '--since', 'HEAD', '--format', 'line']);
    expect(code).toBe(0);
    expect(out).toMatch(/^tides\.plica:3:10: warning: figures-changed: [^\n]*\n$/);
    expect(err).toMatch(/^plica: HEAD: these mistakes keep recipes from being compared\nerror\[syntax\]/);
  });
});

const EMPTY = { kind: 'bytes', bytes: new Uint8Array() } as const;
