import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Log, Region, Result, Run } from 'sarif';
import { expect, test } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { renderJson } from '../../src/diagnostics/render-json.js';
import { renderSarif } from '../../src/diagnostics/render-sarif.js';
import { uriOf } from '../../src/diagnostics/uri.js';
import { source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';
import { refusedRecipes } from '../support/rejected.js';
import { sarifErrors } from '../support/sarif-schema.js';
import { finding, recipe, spanAt, styles } from './findings.js';

const TOOL = { name: 'plica', version: '1.2.3' };
const logOf = (diagnostics: readonly Diagnostic[]): Log => JSON.parse(renderSarif(diagnostics, TOOL));
const runOf = (log: Log): Run => log.runs[0] as Run;

const acrossFiles = finding({
  message: 'the scores of `tide-table` do not cross: write `}`',
  at: spanAt(recipe, '10'),
  label: 'stops short',
  related: [{ span: spanAt(styles, '1/4'), text: 'the ease comes from here' }],
  why: 'crossing -1/4 in, must be 0 or more',
  help: 'write `11 1/4`',
  fix: [{ span: spanAt(recipe, '10'), text: '11 1/4' }],
});

test('a finding: rule, level, message, places, edits', () => {
  const { tool, results, columnKind } = runOf(logOf([acrossFiles]));
  expect(columnKind).toBe('unicodeCodePoints');
  expect(tool.driver).toMatchObject({ name: 'plica', version: '1.2.3', rules: [{ id: 'creases-cross' }] });
  expect(results).toEqual([
    {
      ruleId: 'creases-cross',
      ruleIndex: 0,
      level: 'error',
      message: {
        text: [
          'the scores of `tide-table` do not cross: write `}}`',
          'why: crossing -1/4 in, must be 0 or more',
          'help: write `11 1/4`',
        ].join('\n'),
      },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'tides.plica' },
            region: { startLine: 6, startColumn: 10, endLine: 6, endColumn: 12 },
          },
          message: { text: 'stops short' },
        },
      ],
      relatedLocations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'house/styles.plica' },
            region: { startLine: 4, startColumn: 9, endLine: 4, endColumn: 12 },
          },
          message: { text: 'the ease comes from here' },
        },
      ],
      fixes: [
        {
          description: { text: 'write `11 1/4`' },
          artifactChanges: [
            {
              artifactLocation: { uri: 'tides.plica' },
              replacements: [
                {
                  deletedRegion: { startLine: 6, startColumn: 10, endLine: 6, endColumn: 12 },
                  insertedContent: { text: '11 1/4' },
                },
              ],
            },
          ],
        },
      ],
    },
  ]);
});

test('nothing found is a log too', () => {
  expect(sarifErrors(logOf([]))).toEqual([]);
  expect(runOf(logOf([])).results).toEqual([]);
});

test('the schema refuses a log that is broken', () => {
  const log = logOf([acrossFiles]);
  const broken = (change: Partial<Result>): unknown => ({
    ...log,
    runs: [{ ...runOf(log), results: [{ ...runOf(log).results?.[0], ...change }] }],
  });
  const at = (uri: string, region: Region): Partial<Result> => ({
    locations: [{ physicalLocation: { artifactLocation: { uri }, region } }],
  });
  expect(sarifErrors(broken({}))).toEqual([]);
  expect(sarifErrors(broken(at('a b.plica', { startLine: 1 })))).not.toEqual([]);
  expect(sarifErrors(broken(at('a:b.plica%', { startLine: 1 })))).not.toEqual([]);
  expect(sarifErrors(broken(at('a.plica', { startLine: 0 })))).not.toEqual([]);
  expect(sarifErrors(broken({ level: 'grave' as 'error' }))).not.toEqual([]);
  expect(sarifErrors({ ...log, version: '2.0.0' })).not.toEqual([]);
});

test.each([
  ['tide tables.plica', 'tide%20tables.plica'],
  ['a#b?.plica', 'a%23b%3F.plica'],
  ['100%.plica', '100%25.plica'],
  ['潮/é.plica', '%E6%BD%AE/%C3%A9.plica'],
  ['a\\b.plica', 'a%5Cb.plica'],
  ['a:b.plica', 'a%3Ab.plica'],
  ['<stdin>', '%3Cstdin%3E'],
  ['a[1].plica', 'a%5B1%5D.plica'],
  ['a\n\u001b.plica', 'a%0A%1B.plica'],
  ['half \ud83c.plica', 'half%20%EF%BF%BD.plica'],
  ['../papers.plica', '../papers.plica'],
  ['/island/tide tables.plica', 'file:///island/tide%20tables.plica'],
  ['C:/island/tides.plica', 'file:///C:/island/tides.plica'],
  ['//press/tides.plica', 'file://press/tides.plica'],
])('the file %j is %s', (name, uri) => {
  expect(uriOf(name)).toBe(uri);
  const at = spanAt(source(name, 'card'), 'card');
  expect(sarifErrors(logOf([finding({ at, fix: [{ span: at, text: '' }] })]))).toEqual([]);
  const meant = new URL(uri, 'file:///').pathname.split('/').at(-1) ?? '';
  expect(decodeURIComponent(meant)).toBe(
    name
      .split('/')
      .at(-1)
      ?.replace(/\p{Cs}/gu, '\ufffd'),
  );
});

/** The findings and rules of a log, in the shape of the JSON. */
function asJson(log: Log): unknown {
  const { results = [], tool } = runOf(log);
  return {
    findings: results.map((result) => {
      const [location] = result.locations ?? [];
      const said = plain(result.message.text).split('\n');
      const line = (opening: string): string | null =>
        said.find((text) => text.startsWith(opening))?.slice(opening.length) ?? null;
      return {
        rule: result.ruleId,
        severity: result.level,
        message: said[0],
        label: location?.message ? plain(location.message.text) : null,
        why: line('why: '),
        help: line('help: '),
        ...placed(location?.physicalLocation),
        related: (result.relatedLocations ?? []).map(({ message, physicalLocation }) => ({
          message: plain(message?.text),
          ...placed(physicalLocation),
        })),
        fix: result.fixes
          ? result.fixes.flatMap(({ artifactChanges }) =>
              artifactChanges.flatMap(({ artifactLocation, replacements }) =>
                replacements.map(({ deletedRegion, insertedContent }) => ({
                  ...placed({ artifactLocation, region: deletedRegion }),
                  text: insertedContent?.text,
                })),
              ),
            )
          : null,
      };
    }),
    rules: (tool.driver.rules ?? []).map((rule) => ({
      rule: rule.id,
      severity: rule.defaultConfiguration?.level,
      meaning: plain(rule.shortDescription?.text),
      matters: plain(rule.fullDescription?.text),
      remedy: plain(rule.help?.text),
    })),
  };
}

const plain = (text = ''): string => text.replaceAll('{{', '{').replaceAll('}}', '}');

const placed = (
  place: NonNullable<NonNullable<Result['locations']>[number]['physicalLocation']> | undefined,
) => ({
  file: decodeURIComponent(place?.artifactLocation?.uri ?? ''),
  line: place?.region?.startLine,
  column: place?.region?.startColumn,
  endLine: place?.region?.endLine,
  endColumn: place?.region?.endColumn,
});

test.each(refusedRecipes())('%s: the log is valid, and says what the JSON says', (path) => {
  const { diagnostics } = compileText(readFileSync(path, 'utf8'), { name: basename(path) });
  const log = logOf(diagnostics);
  expect(sarifErrors(log)).toEqual([]);
  const { findings, rules } = JSON.parse(renderJson(diagnostics));
  expect(asJson(log)).toEqual({ findings, rules });
  expect(renderSarif(diagnostics, TOOL)).toBe(renderSarif(diagnostics, TOOL));
});
