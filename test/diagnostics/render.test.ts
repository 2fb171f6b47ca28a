import { expect, test } from 'vitest';
import { renderJson } from '../../src/diagnostics/render-json.js';
import { renderLine } from '../../src/diagnostics/render-line.js';
import { count, renderText } from '../../src/diagnostics/render-text.js';
import { source } from '../../src/text/source.js';
import { finding, recipe, spanAt, styles } from './findings.js';

const acrossFiles = finding({
  message: 'the scores of `tide-table` do not cross, so its back would gape',
  at: spanAt(recipe, '10'),
  label: 'the two marks on an edge stop 1/4 in short of each other',
  related: [
    { span: spanAt(recipe, '8 1/2 x 5 1/2'), text: 'face 8 3/4 x 5 3/4 in' },
    { span: spanAt(styles, '1/4'), text: 'the ease comes from here' },
  ],
  why: 'crossing -1/4 in, must be 0 or more',
  help: 'leave `blank` out, or write at least 10 1/4',
});

test('a finding shows its places, also across files', () => {
  expect(renderText([acrossFiles])).toBe(
    [
      'error[creases-cross]: the scores of `tide-table` do not cross, so its back would gape',
      '  --> tides.plica:6:10',
      '  |',
      '5 |   card: 8 1/2 x 5 1/2',
      '  |         ------------- face 8 3/4 x 5 3/4 in',
      '6 |   blank: 10',
      '  |          ^^ the two marks on an edge stop 1/4 in short of each other',
      '  |',
      '  ::: house/styles.plica:4:9',
      '  |',
      '4 |   ease: 1/4',
      '  |         --- the ease comes from here',
      '  |',
      '  = why:  crossing -1/4 in, must be 0 or more',
      '  = help: leave `blank` out, or write at least 10 1/4',
      '',
      '1 error',
      '',
    ].join('\n'),
  );
});

test('two things to say of one line stand under it, and lines left out are marked', () => {
  const text = renderText([
    finding({
      at: spanAt(recipe, '5 1/2'),
      label: 'second',
      related: [
        { span: spanAt(recipe, '8 1/2'), text: 'first' },
        { span: spanAt(recipe, 'in'), text: 'far above' },
      ],
    }),
  ]);
  expect(text.split('\n').slice(2, 10)).toEqual([
    '  |',
    '1 | units in',
    '  |       -- far above',
    '...',
    '5 |   card: 8 1/2 x 5 1/2',
    '  |         ----- first',
    '  |                 ^^^^^ second',
    '  |',
  ]);
});

test('numbers of lines are set to the right', () => {
  const long = source('long.plica', `${'\n'.repeat(99)}card\n`);
  expect(renderText([finding({ at: spanAt(long, 'card') })])).toContain('\n100 | card\n    | ^^^^\n');
});

test.each([
  ['a tab', '\tease: 3/2', '    ease: 3/2', '          ^^^'],
  ['a tab in the middle', 'ease:\t3/2', 'ease:   3/2', '        ^^^'],
  ['wide characters', '"潮の表", 3/2', '"潮の表", 3/2', '          ^^^'],
  ['a combining accent', '"e\u0301", 3/2', '"e\u0301", 3/2', '     ^^^'],
  ['a picture', '"🌊", 3/2', '"🌊", 3/2', '      ^^^'],
  ['an escape sequence', '"\u001b[2J", 3/2', '"\\u{1b}[2J", 3/2', '             ^^^'],
  ['a turn of direction', '"\u202eab", 3/2', '"\\u{202e}ab", 3/2', '              ^^^'],
])('%s keeps the underline in its place, and does no harm', (_, line, shown, marks) => {
  const text = renderText([finding({ at: spanAt(source('a.plica', line), '3/2') })]);
  expect(text).toContain(`\n1 | ${shown}\n  | ${marks}\n`);
});

test('an empty span, and one at the end of the text, get one mark', () => {
  const given = source('a.plica', 'envelope a');
  const at = { source: given, start: 10, end: 10 };
  expect(renderText([finding({ at })])).toContain('\n1 | envelope a\n  |           ^\n');
});

test('a span over several lines is underlined on its first', () => {
  const at = { source: recipe, start: recipe.text.indexOf('envelope'), end: recipe.text.length };
  expect(renderText([finding({ at })])).toContain(
    `\n4 | envelope tide-table like house {\n  | ${'^'.repeat(32)}\n`,
  );
});

test('a very long line is cut on both sides of the place', () => {
  const given = source('a.plica', `${'a'.repeat(5000)} 3/2 ${'b'.repeat(5000)}`);
  const [line = '', marks = ''] = renderText([finding({ at: spanAt(given, '3/2') })])
    .split('\n')
    .slice(3);
  expect(line.length).toBeLessThan(140);
  expect(line.slice(marks.indexOf('^'), marks.lastIndexOf('^') + 1)).toBe('3/2');
});

test('messages, labels and file names are shown harmlessly too', () => {
  const given = source('a\u001b[31m.plica', 'card');
  const text = renderText([
    finding({
      message: 'no `\u202e`',
      at: spanAt(given, 'card'),
      label: '\u0007',
      why: '\u009b2J',
      help: '\u200b',
    }),
  ]);
  expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
});

test('colours come from the palette alone', () => {
  const mark = (sign: string) => (text: string) => `<${sign}${text}>`;
  const palette = {
    error: mark('E:'),
    warning: mark('W:'),
    note: mark('N:'),
    strong: mark('S:'),
    faint: mark('F:'),
  };
  const text = renderText(
    [finding({ at: spanAt(recipe, '10'), severity: 'warning', label: 'here' })],
    palette,
  );
  expect(text.split('\n')[0]).toBe('<W:warning[creases-cross]><S:: the scores do not cross>');
  expect(text).toContain('<W:^^ here>');
});

test('the last line counts errors, warnings and notes', () => {
  const at = spanAt(recipe, '10');
  const many = [
    finding({ at }),
    finding({ at, severity: 'note' }),
    finding({ at, severity: 'warning' }),
    finding({ at }),
  ];
  expect(count(many)).toBe('2 errors, 1 warning, 1 note');
  expect(renderText(many)).toMatch(/\n2 errors, 1 warning, 1 note\n$/);
  expect(renderText([])).toBe('');
});

test('a line for each finding, for editors', () => {
  const crossed = finding({ message: 'no\n`\u001b`', at: spanAt(recipe, '10'), severity: 'warning' });
  expect(renderLine([acrossFiles, crossed])).toBe(
    'tides.plica:6:10: error: creases-cross: the scores of `tide-table` do not cross, so its back would gape\n' +
      'tides.plica:6:10: warning: creases-cross: no `\\u{1b}`\n',
  );
  expect(renderLine([])).toBe('');
});

test('findings for programs: every field, and columns in code points', () => {
  const given = source('a.plica', '🌊 3/2\n');
  expect(JSON.parse(renderJson([finding({ at: spanAt(given, '3/2') })]))).toEqual({
    format: 'plica-findings',
    version: 1,
    findings: [
      {
        rule: 'creases-cross',
        severity: 'error',
        message: 'the scores do not cross',
        label: null,
        why: null,
        help: null,
        file: 'a.plica',
        line: 1,
        column: 3,
        endLine: 1,
        endColumn: 6,
        related: [],
        fix: null,
      },
    ],
    rules: [{ rule: 'creases-cross', severity: 'error', meaning: '', matters: '', remedy: '' }],
  });
  const { why, help, related } = JSON.parse(renderJson([acrossFiles])).findings[0];
  expect({ why, help, related }).toEqual({
    why: 'crossing -1/4 in, must be 0 or more',
    help: 'leave `blank` out, or write at least 10 1/4',
    related: [
      {
        message: 'face 8 3/4 x 5 3/4 in',
        file: 'tides.plica',
        line: 5,
        column: 9,
        endLine: 5,
        endColumn: 22,
      },
      {
        message: 'the ease comes from here',
        file: 'house/styles.plica',
        line: 4,
        column: 9,
        endLine: 4,
        endColumn: 12,
      },
    ],
  });
  expect(JSON.parse(renderJson([])).findings).toEqual([]);
});

test('the edits of a finding stand in the JSON, with the line ends of the file that they go into', () => {
  const given = source('a.plica', 'envelope a {\r\n  card: A6\r\n');
  const at = { source: given, start: given.text.length, end: given.text.length };
  const [found] = JSON.parse(renderJson([finding({ at, fix: [{ span: at, text: '}\n' }] })])).findings;
  expect(found.fix).toEqual([
    { file: 'a.plica', line: 3, column: 1, endLine: 3, endColumn: 1, text: '}\r\n' },
  ]);
});

test.each(['a:b.plica', 'tide tables.plica', 'a\nb.plica', '\u001b[2J.plica', 'a:1:2.plica'])(
  'a line stays one line, and can be taken apart, for the file %j',
  (name) => {
    const line = renderLine([finding({ at: spanAt(source(name, 'card'), 'card'), message: 'no: `:`' })]);
    expect(line).toMatch(/^[^\p{Cc}]+\n$/u);
    expect(/^(.+):(\d+):(\d+): (error|warning|note): ([a-z-]+): (.+)\n$/.exec(line)?.slice(2)).toEqual([
      '1',
      '1',
      'error',
      'creases-cross',
      'no: `:`',
    ]);
  },
);
