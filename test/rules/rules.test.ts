import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { RULES } from '../../src/rules/index.js';
import { applyEdits } from '../../src/text/edit.js';
import { alternatives, applyHelp } from '../support/apply-help.js';
import { compileText } from '../support/compile-text.js';
import { expectFindings, recipesIn } from '../support/rejected.js';

const folders = RULES.map(({ problem }) => problem.name);

test('every rule has a folder of recipes, and every folder a rule', () => {
  const found = readdirSync(import.meta.dirname, { withFileTypes: true }).filter((entry) =>
    entry.isDirectory(),
  );
  expect(found.map(({ name }) => name).sort()).toEqual([...folders].sort());
});

describe.each(folders)('%s', (rule) => {
  const recipes = recipesIn(`${import.meta.dirname}/${rule}`);
  const accepted = recipes.filter((path) => basename(path).startsWith('accepted-'));
  const rejected = recipes.filter((path) => !basename(path).startsWith('accepted-'));

  test.each(accepted)('has nothing to say: %s', (path) => {
    expect(compileText(readFileSync(path, 'utf8')).diagnostics).toEqual([]);
  });

  test('rejects something', () => {
    expect(rejected).not.toEqual([]);
  });

  describe.each(rejected)('%s', (path) => {
    const text = readFileSync(path, 'utf8');
    const recipes = compileText(text).recipes.flatMap(({ envelope, diagnostics }) =>
      diagnostics.map((finding) => ({ envelope: envelope.name, finding })),
    );

    test('is found as it says', () => expectFindings(path));

    test.each(recipes)('$finding.message: what the help says mends it', ({ envelope, finding }) => {
      expect(finding.help).not.toBeNull();
      for (const way of alternatives(finding.help ?? '').filter(isAnEdit)) {
        expectMended(finding, text, applyHelp(text, envelope, way));
      }
    });

    test.each(recipes.filter(({ finding }) => finding.fix))(
      '$finding.message: its fix mends it',
      ({ finding }) => {
        expectMended(finding, text, applyEdits(text, finding.fix ?? []));
      },
    );
  });
});

/** Advice that is no edit of the envelope (another paper, a property of its paper) has tests of its own below. */
const isAnEdit = (way: string): boolean => /write `|leave `/.test(way);

/** The finding is gone, and nothing has come that was not there before. */
function expectMended({ problem, message }: Diagnostic, text: string, mended: string): void {
  expect(mended).not.toBe(text);
  const before = compileText(text).diagnostics.map(
    ({ problem, primary }) => `${problem.name} ${primary.text}`,
  );
  const after = compileText(mended);
  expect(after.recipes).not.toEqual([]);
  expect(after.diagnostics.filter((found) => found.problem === problem && found.message === message)).toEqual(
    [],
  );
  const come = after.diagnostics.filter(({ problem, severity, primary }) => {
    return severity !== 'note' && !before.includes(`${problem.name} ${primary.text}`);
  });
  expect(come.map(({ problem, message }) => `${problem.name}: ${message}`)).toEqual([]);
}

test('where no seam is small enough for the sheet, a sheet of the size named is', () => {
  const text =
    'units in\npaper office {\n  sheet: letter\n}\nenvelope card {\n  card: 8 1/2 x 5 1/2\n  paper: office\n}\n';
  const [finding] = compileText(text).diagnostics;
  const [, size = ''] = /sheet of at least (.+)$/.exec(finding?.help ?? '') ?? [];
  const errors = compileText(text.replace('letter', size)).diagnostics.filter(
    ({ severity }) => severity !== 'note',
  );
  expect(errors).toEqual([]);
});

test('an expectation that cannot be known names the property that is missing, and holds once it is there', () => {
  const text =
    'units mm\npaper kraft {\n  sheet: 300 x 300\n}\nenvelope card {\n  card: A6\n  paper: kraft\n  expect mass < 20 g\n}\n';
  const [finding] = compileText(text).diagnostics;
  expect(finding?.help).toBe('state `weight` in paper kraft');
  expect(compileText(text.replace('{\n  sheet', '{\n  weight: 118 gsm\n  sheet')).diagnostics).toEqual([]);
});
