import { describe, expect, test } from 'vitest';
import { renderText } from '../../src/diagnostics/render-text.js';
import { lineText, position, source } from '../../src/text/source.js';
import { compileText } from '../support/compile-text.js';
import { referenceExamples, referencePage } from '../support/reference-examples.js';
import { partsIn, REFERENCE_PARTS, withFreshParts } from '../support/reference-parts.js';

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

describe('what the code itself tells', () => {
  test('stands in the page, each part once', () => {
    expect(partsIn(referencePage).toSorted()).toEqual(Object.keys(REFERENCE_PARTS).toSorted());
  });

  test('is told there as it is now (`npm run bless` writes it anew)', async () => {
    await expect(withFreshParts(referencePage)).toMatchFileSnapshot('../../grammar/reference.md');
  });
});

test('the finding that the page shows is what Plica says', () => {
  const text = 'units in\n\nenvelope tide-table {\n  card: 8 1/2 x 5 1/2\n  blank: 10\n}\n';
  const [said] = renderText(compileText(text, { name: 'tides.plica' }).diagnostics).split('\n\n1 error');
  expect(said).toMatch(/^error\[creases-cross\]/);
  expect(referencePage).toContain(`\`\`\`\n${said}\n\`\`\`\n`);
});

test('the first recipe comes out as the page says', () => {
  const [first] = referenceExamples;
  const [recipe] = compileText(first?.text ?? '').recipes;
  // 11 1/4 in, common practice for a half-letter card, no published source
  expect(recipe?.facts.blank.width).toBeCloseTo(11.25 * 25.4, 9);
});

/** A heading as a link names it. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z -]/g, '')
    .replaceAll(' ', '-');

test('the contents lead to every section, in order, and every link to one', () => {
  const headings = [...referencePage.matchAll(/^## (.+)$/gm)].map(([, heading = '']) => anchor(heading));
  const [contents = ''] = referencePage.split(/^## /m);
  const links = (text: string) => [...text.matchAll(/\(#([a-z-]+)\)/g)].map(([, link]) => link);
  expect(links(contents)).toEqual(headings);
  expect(links(referencePage).filter((link) => !headings.includes(link ?? ''))).toEqual([]);
});
