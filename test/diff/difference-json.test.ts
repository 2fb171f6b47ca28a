/* A difference for programs: held to its schema by a general-purpose validator. */
import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { renderJson } from '../../src/diff/render-json.js';
import { compareFiles, type Files } from '../support/compare.js';

const schema = JSON.parse(readFileSync('src/diff/difference.schema.json', 'utf8')) as object;

/** The schema, but with every field that it does not name refused. */
const closed = JSON.parse(JSON.stringify(schema), (_, value: unknown) =>
  typeof value === 'object' && value !== null && 'properties' in value
    ? { ...value, additionalProperties: false }
    : value,
) as object;

interface Printed {
  readonly changes: readonly Readonly<Record<string, unknown>>[];
  readonly shared: readonly unknown[];
}

const printed = (before: Files, after: Files): Printed =>
  JSON.parse(renderJson(compareFiles(before, after))) as Printed;

const example = (name: string): readonly [Files, Files] => {
  const read = (state: string) => readFileSync(`test/diff/${name}.${state}.plica`, 'utf8');
  return [{ 'tides.plica': read('old') }, { 'tides.plica': read('new') }];
};

const ebb = (...statements: readonly string[]): string =>
  ['units mm', '', 'envelope ebb {', ...statements.map((statement) => `  ${statement}`), '}', ''].join('\n');

const ajv = new Ajv({ allErrors: true, allowUnionTypes: true });

const errorsOf = (each: object, value: unknown): unknown => {
  ajv.validate(each, value);
  return ajv.errors;
};

test.each<readonly [string, Files, Files]>([
  ['an edit that is shared', ...example('shared-ease')],
  ['findings that came, sides that differ, a lining that went', ...example('marks-and-tips')],
  ['renamed, added, removed', ...example('come-and-gone')],
  ['nothing', ...example('only-layout')],
  ['a file that cannot be read', { 'e.plica': ebb('card: A6') }, { 'e.plica': ebb('card A6') }],
  // A wrong name is mended by an edit, and points at another place.
  [
    'a finding with its edit',
    { 'e.plica': ebb('card: A6', 'blank: 215') },
    { 'e.plica': ebb('card: A6', 'blank: 100') },
  ],
])('%s: keeps to the schema, and every field is in it', (_, before, after) => {
  const content = printed(before, after);
  expect(errorsOf(schema, content)).toBeNull();
  expect(errorsOf(closed, content)).toBeNull();
});

test('the schema notices a field that is missing, of another kind, or not of its list', () => {
  const content = printed(...example('shared-ease'));
  const [change] = content.changes as [Readonly<Record<string, unknown>>];
  const { written: _, ...without } = change;
  for (const bad of [
    without,
    { ...change, kind: 'moved' },
    { ...change, consequences: ['fold'] },
    { ...change, name: 3 },
  ])
    expect(errorsOf(schema, { ...content, changes: [bad] })).not.toBeNull();
  expect(errorsOf(schema, { ...content, version: 2 })).not.toBeNull();
});

test('figures are raw, and every place has its line and column', () => {
  const { changes, shared } = printed(...example('shared-ease'));
  // 11 1/4 and 11 7/16 in, an inch being 25.4 mm.
  expect(changes[0]).toMatchObject({
    kind: 'changed',
    name: 'half-letter',
    consequences: ['recut', 'rescore'],
    before: { file: 'tides.plica', line: 10, column: 10 },
    written: [
      {
        property: 'ease',
        before: { text: '1/4', place: { kind: 'style', name: 'house' }, line: 5, column: 9, endColumn: 12 },
        after: { text: '3/8' },
      },
    ],
    appeared: [{ rule: 'expectation', severity: 'error', file: 'tides.plica' }],
    went: [],
  });
  const figures = changes[0]?.['figures'] as readonly { name: string; before: number[]; after: number[] }[];
  const blank = figures.find(({ name }) => name === 'blank');
  expect(blank?.before[0]).toBeCloseTo(11.25 * 25.4, 9);
  expect(blank?.after[0]).toBeCloseTo(11.4375 * 25.4, 9);
  expect(shared).toMatchObject([
    { place: { kind: 'style', name: 'house' }, property: 'ease', reaches: ['half-letter', 'pocket-tides'] },
  ]);
});
