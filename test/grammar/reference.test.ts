import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EXPECT_NAMES } from '../../src/recipe/expect-names.js';
import { PROPERTIES } from '../../src/recipe/properties.js';
import { lineText, position, source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';

const page = readFileSync('grammar/reference.md', 'utf8');

/** The fenced recipes: `plica`, `plica FILE` for one that later ones may use, `plica-wrong`. */
const examples = [...page.matchAll(/^```plica(-wrong)?(?: (\S+))?\n([\s\S]*?)^```$/gm)].map(
  ({ index, 1: wrong, 2: name, 3: text = '' }) => ({
    line: position(source('', page), index).line,
    right: wrong === undefined,
    name: name ?? 'recipe.plica',
    text,
  }),
);
const files = Object.fromEntries(examples.map(({ name, text }) => [name, text]));

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
  test.each(examples.filter(({ right }) => right))('at line $line: nothing is found', (example) => {
    expect(findings(example)).toEqual([]);
  });

  test.each(examples.filter(({ right }) => !right))(
    'at line $line: what the comments say is found',
    (example) => {
      expect(announced(example.text)).not.toEqual([]);
      expect(findings(example)).toEqual(announced(example.text));
    },
  );
});

/** The words in back quotes of the first column of tables, in order, from one heading to the next. */
function firstColumn(heading: string): string[] {
  const section = page.split(/^## /m).find((part) => part.startsWith(heading)) ?? '';
  const cells = section.split('\n').map((row) => /^\| ((?:`[a-z-]+`,? ?)+) \|/.exec(row)?.[1] ?? '');
  return cells.flatMap((cell) => [...cell.matchAll(/`([a-z-]+)`/g)].map(([, word = '']) => word));
}

test('the tables of properties have each property, in order', () => {
  const of = (type: 'envelope' | 'paper'): string[] =>
    Object.entries(PROPERTIES)
      .filter(([, { where }]) => where.includes(type))
      .map(([name]) => name);
  expect(firstColumn('Properties')).toEqual(of('envelope'));
  expect(firstColumn('Papers')).toEqual(of('paper'));
});

test('the table of figures has each name that an expect may use', () => {
  expect(firstColumn('`expect`').toSorted()).toEqual([...EXPECT_NAMES.keys()].toSorted());
});

test('the first recipe comes out as the page says', () => {
  const [first] = examples;
  const [recipe] = compileText(first?.text ?? '').recipes;
  // 11 1/4 in, common practice for a half-letter card, no published source
  expect(recipe?.facts.blank.width).toBeCloseTo(11.25 * 25.4, 9);
});

test('the table of contents leads to every section', () => {
  const headings = [...page.matchAll(/^## (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^a-z -]/g, '')
      .replaceAll(' ', '-'),
  );
  const links = [...page.matchAll(/\(#([a-z-]+)\)/g)].map(([, link]) => link);
  expect(links).toEqual(headings);
});
