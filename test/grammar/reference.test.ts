import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/cli/commands/index.js';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { RECIPE_PROBLEMS } from '../../src/recipe/problems.js';
import { PROPERTIES } from '../../src/recipe/properties.js';
import { RULES } from '../../src/rules/index.js';
import { limit, syntax } from '../../src/syntax/problems.js';
import { lineText, position, source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';
import { referenceExamples, referencePage } from '../support/reference-examples.js';

const files = Object.fromEntries(referenceExamples.map(({ name, text }) => [name, text]));

/** `4 syntax`: the findings of a recipe, by line. */
const findings = ({ name, text }: { readonly name: string; readonly text: string }): string[] =>
  compileText(text, { name, files }).diagnostics.map(
    ({ problem, primary: { span } }) => `${position(span.source, span.start).line} ${problem.name}`,
  );

/** What the comments at the ends of lines announce. */
const announced = (text: string): string[] => {
  const given = source('', text);
  return given.lineStarts.flatMap((_, index) => {
    const rule = /# ([a-z-]+)$/.exec(lineText(given, index + 1))?.[1];
    return rule === undefined ? [] : [`${index + 1} ${rule}`];
  });
};

describe('the examples of the reference', () => {
  test.each(referenceExamples.filter(({ right }) => right))('at line $line: nothing is found', (example) => {
    expect(findings(example)).toEqual([]);
  });

  test.each(referenceExamples.filter(({ right }) => !right))(
    'at line $line: what the comments say is found',
    (example) => {
      expect(announced(example.text)).not.toEqual([]);
      expect(findings(example)).toEqual(announced(example.text));
    },
  );
});

/** The rows of the table from one heading to the next, each by its cells. */
function rows(heading: string): string[][] {
  const section = referencePage.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? '';
  return section
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) => line.slice(2, -2).split(' | '));
}

test.each([
  ['Properties', 'envelope'],
  ['Papers', 'paper'],
] as const)('the table of %s is the code’s own: name, value, default, meaning, in order', (heading, type) => {
  const declared = Object.entries(PROPERTIES)
    .filter(([, { where }]) => where.includes(type))
    .map(([name, { kind, leftOut, meaning }]) => [`\`${name}\``, kind.wants, leftOut, meaning]);
  expect(rows(heading)).toEqual(declared);
});

test('the table of figures has each name that an expect may use, and its kind', () => {
  const told = rows('`expect`').map(([name, kind]) => [name, kind]);
  expect(told).toEqual([...EXPECT_NAMES].map(([name, kind]) => [`\`${name}\``, kind]));
});

describe('the table of findings', () => {
  const problems = [syntax, limit, ...RECIPE_PROBLEMS, ...RULES.map(({ problem }) => problem)];

  test('has the name, severity and meaning of each', () => {
    const declared = problems.map(({ name, severity, meaning }) => [`\`${name}\``, severity, meaning]);
    expect(rows('Findings')).toEqual(declared);
  });

  test('leaves out none that is declared anywhere', () => {
    const declared = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) => [
        ...readFileSync(`src/${file}`, 'utf8').matchAll(/: Problem = \{\s*name: '([^']+)'/g),
      ])
      .map(([, name]) => name);
    expect(problems.map(({ name }) => name).toSorted()).toEqual(declared.toSorted());
  });
});

test('the table of commands has each command', () => {
  const told = rows('The command line').map(([call]) => /plica ([a-z]+)/.exec(call ?? '')?.[1]);
  expect(told).toEqual(COMMANDS.map(({ name }) => name));
});

test('the first recipe comes out as the page says', () => {
  const [first] = referenceExamples;
  const [recipe] = compileText(first?.text ?? '').recipes;
  // 11 1/4 in, common practice for a half-letter card, no published source
  expect(recipe?.facts.blank.width).toBeCloseTo(11.25 * 25.4, 9);
});

test('the table of contents leads to every section', () => {
  const headings = [...referencePage.matchAll(/^## (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^a-z -]/g, '')
      .replaceAll(' ', '-'),
  );
  const links = [...referencePage.matchAll(/\(#([a-z-]+)\)/g)].map(([, link]) => link);
  expect(links).toEqual(headings);
});
