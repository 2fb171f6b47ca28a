/* What is offered against a mistake: words that mend it, an edit where it is surely meant, and what helps in general. */
import { expect, test } from 'vitest';
import { applyEdits } from '../../src/text/edit.js';
import { compileText } from '../support/compile-text.js';

const recipe = (...lines: readonly string[]): string =>
  ['units mm', 'envelope tide-card {', '  card: A6', ...lines.map((line) => `  ${line}`), '}', ''].join('\n');

const findings = (text: string) => {
  const { recipes, diagnostics } = compileText(text);
  expect(recipes).not.toEqual([]);
  return diagnostics;
};

const helpWith = (rule: string, text: string): string | null | undefined =>
  findings(text).find(({ problem }) => problem.name === rule)?.help;

test('a box with folded corners is surely meant to have notched ones: an edit, of the recipe’s own words', () => {
  const text = recipe('depth: 6', 'bulk: 3', 'corners: folded');
  const [{ fix, help } = {}, ...others] = findings(text);
  expect(others).toEqual([]);
  expect(help).toBe('write `corners: notched`');
  expect(applyEdits(text, fix ?? [])).toBe(text.replace('folded', 'notched'));
});

test('no edit where the words stand in a style, which others are like as well', () => {
  const style = 'style house {\n  corners: folded\n}\n';
  const [{ fix, help } = {}] = findings(
    recipe('depth: 6', 'bulk: 3').replace('envelope tide-card', `${style}envelope tide-card like house`),
  );
  expect(help).toBe('write `corners: notched`');
  expect(fix).toBeNull();
});

test('no edit where more than one way would mend it', () => {
  const [{ fix, help } = {}] = findings(recipe('blank: 210 x 205'));
  expect(help).toBe('write `blank: 210 mm`, or write `blank: 205 mm`');
  expect(fix).toBeNull();
});

test('no length below nothing is offered, which no recipe may state', () => {
  // Seams worked out from a blank that is far too small, and an ease from a face that is, lie below 0.
  const small = recipe('blank: 60', 'seal-mark: 50', 'bottom-mark: 50', 'side-mark: 50').replace('A6', 'A4');
  const narrow = recipe('face: 10 x 10', 'blank: 300', 'bulk: 20');
  const helps = [small, narrow].flatMap(findings).map(({ help }) => help ?? '');
  expect(helps.length).toBeGreaterThan(5);
  expect(helps.filter((help) => /: -/.test(help))).toEqual([]);
});

test('where too much is wrong for any one edit, what helps in general', () => {
  const flap = recipe('blank: 250', 'tape: 20', 'shift: 5').replace('A6', '300 x 10');
  expect(helpWith('flap-closes', flap)).toBe(
    'take a larger seam or blank, a shift that lengthens the seal flap, or narrower tape',
  );
});
