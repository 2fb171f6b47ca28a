import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../../src/text/edit.js';
import { source } from '../../src/text/source.js';
import { languageFindings, placeOf } from '../support/language-findings.js';

/** A good recipe, line by line. */
const good = [
  'units in',
  '',
  'let hand = 1/16',
  'let base = 8 1/2 x 11',
  '',
  'paper kraft {',
  '  title: "Brown kraft"',
  '  sheet: 12 x 12',
  '  weight: 80 lb text',
  '  grain: long',
  '}',
  '',
  'style house {',
  '  ease: 1/4',
  '  seam: 1/2',
  '  step: hand',
  '  paper: kraft',
  '}',
  '',
  'envelope half-letter like house {',
  '  title: "Half-letter tide table"',
  '  tags: tides, flat',
  '  card: half base',
  '  expect crossing > 0',
  '}',
];

/** One of its lines with one slip in it, and the rule that says so; none hides a name that others use. */
const slips: readonly (readonly [written: string, slipped: string, rule: string])[] = [
  ['units in', 'units: in', 'syntax'],
  ['units in', 'units "in"', 'syntax'],
  ['units in', 'Units in', 'syntax'],
  ['units in', 'units inches', 'unknown-name'],
  ['let hand = 1/16', 'let hand: 1/16', 'syntax'],
  ['let hand = 1/16', 'let hand 1/16', 'syntax'],
  ['let hand = 1/16', 'var hand = 1/16', 'syntax'],
  ['let hand = 1/16', 'let hand = 1/16;', 'syntax'],
  ['let base = 8 1/2 x 11', 'let base = 8 1/2 X 11', 'syntax'],
  ['let base = 8 1/2 x 11', 'let base = 8-1/2 x 11', 'syntax'],
  ['let base = 8 1/2 x 11', 'let base = 8 1/2 x 11 x 1/4', 'syntax'],
  ['let base = 8 1/2 x 11', 'let base = 8 1/2 in wide x 11 in high', 'syntax'],
  ['paper kraft {', 'Paper kraft {', 'syntax'],
  ['paper kraft {', 'paper: kraft {', 'syntax'],
  ['paper kraft {', 'paper kraft', 'syntax'],
  ['  title: "Brown kraft"', '  title: "Brown kraft', 'syntax'],
  ['  title: "Brown kraft"', '  title: “Brown kraft”', 'syntax'],
  ['  title: "Brown kraft"', '  title: Brown kraft', 'wrong-kind'],
  ['  title: "Brown kraft"', '  title: Kraft!', 'syntax'],
  ['  sheet: 12 x 12', '  sheet: 12 by 12', 'syntax'],
  ['  sheet: 12 x 12', '  sheet = 12 x 12', 'syntax'],
  ['  sheet: 12 x 12', '  sheet: (12 x 12)', 'syntax'],
  ['  weight: 80 lb text', '  weight: 80# text', 'syntax'],
  ['  weight: 80 lb text', '  weight: 120 g/m2', 'syntax'],
  ['  weight: 80 lb text', '  weight: 120 g / m²', 'syntax'],
  ['  weight: 80 lb text', '  weight: 120 g / m2', 'unknown-name'],
  ['  weight: 80 lb text', '  weight: 80 lb', 'missing'],
  ['  grain: long', '  grian: long', 'unknown-property'],
  ['  grain: long', '  grain: long side', 'wrong-kind'],
  ['style house {', 'style House {', 'syntax'],
  ['style house {', 'style house begin', 'syntax'],
  ['  ease: 1/4', '  ease: 1//4', 'syntax'],
  ['  ease: 1/4', '  ease: 3/2', 'syntax'],
  ['  ease: 1/4', '  - ease: 1/4', 'syntax'],
  ['  seam: 1/2', '  seam: 1/2 +', 'syntax'],
  ['  seam: 1/2', '  seam:: 1/2', 'syntax'],
  ['  seam: 1/2', '  seam 1/2', 'syntax'],
  ['  seam: 1/2', '  seam: 0,5', 'syntax'],
  ['  seam: 1/2', '  seam: 1/2 in wide', 'syntax'],
  ['  seam: 1/2', '  seam: 1/2 wide', 'unknown-name'],
  ['  seam: 1/2', '  seam_width: 1/2', 'unknown-property'],
  ['  step: hand', '  step: hand/2', 'syntax'],
  ['  step: hand', '  step: hnad', 'unknown-name'],
  ['  paper: kraft', '  "paper": kraft', 'syntax'],
  ['  paper: kraft', '  paper:\u00a0kraft', 'syntax'],
  ['envelope half-letter like house {', 'envelope half-letter extends house {', 'syntax'],
  ['envelope half-letter like house {', 'envelope half-letter like "house" {', 'syntax'],
  ['envelope half-letter like house {', 'envelope half-letter like house! {', 'syntax'],
  ['envelope half-letter like house {', 'envelop half-letter like house {', 'syntax'],
  ['envelope half-letter like house {', 'envelope 5x7 like house {', 'syntax'],
  ['  title: "Half-letter tide table"', '  title: "The 8 1/2" tide table"', 'syntax'],
  ['  title: "Half-letter tide table"', '  title: "Half-letter tide table",', 'syntax'],
  ['  title: "Half-letter tide table"', '  title: &quot;Tide table&quot;', 'syntax'],
  ['  title: "Half-letter tide table"', '  title: "Half-letter" "tide table"', 'syntax'],
  ['  tags: tides, flat', '  tags: [tides, flat]', 'syntax'],
  ['  tags: tides, flat', '  tags: tides; flat', 'syntax'],
  ['  tags: tides, flat', '  tags： tides, flat', 'syntax'],
  ['  card: half base', '  card - half base', 'syntax'],
  ['  card: half base', '  card: half base // folded once', 'syntax'],
  ['  card: half base', '  card: half base <!-- folded once -->', 'syntax'],
  ['  card: half base', '  card: base/2', 'syntax'],
  ['  card: half base', '  card: letter / 2', 'unknown-name'],
  ['  expect crossing > 0', '  expect crossing is 0', 'syntax'],
  ['  expect crossing > 0', '  expect crossing is more than 0', 'syntax'],
  ['  expect crossing > 0', '  expect face width > 0', 'syntax'],
  ['  expect crossing > 0', '  crossing > 0', 'syntax'],
  ['  expect crossing > 0', '  expects crossing > 0', 'syntax'],
];

/** The recipe with these slips, at most one a line. */
function slipped(chosen: readonly (typeof slips)[number][]): {
  readonly text: string;
  readonly said: string[];
} {
  const lines = [...good];
  const said = new Map<number, string>();
  for (const [written, wrong, rule] of chosen) {
    const line = good.indexOf(written);
    lines[line] = wrong;
    said.set(line + 1, `${line + 1}: ${rule}`);
  }
  const inOrder = [...said].sort(([a], [b]) => a - b).map(([, text]) => text);
  return { text: `${lines.join('\n')}\n`, said: inOrder };
}

const found = (text: string): readonly string[] => {
  const written = source('recipe.plica', text);
  return languageFindings(written).map((finding) => placeOf(finding, written));
};

test('the recipe itself is good', () => {
  expect(found(slipped([]).text)).toEqual([]);
});

test.each(slips)('%s → %s', (...slip) => {
  const { text, said } = slipped([slip]);
  expect(found(text)).toEqual(said);
});

const choice = fc.shuffledSubarray([...slips], { minLength: 2, maxLength: 9 });

test('whatever slips stand together, each is found once, on its line, and nothing else', () => {
  fc.assert(
    fc.property(choice, (chosen) => {
      const { text, said } = slipped(chosen);
      expect(found(text)).toEqual(said);
    }),
    { seed: 1, numRuns: 300 },
  );
});

test('the fixes of a text, made together, leave only the slips that had none', () => {
  fc.assert(
    fc.property(choice, (chosen) => {
      const { text } = slipped(chosen);
      const findings = languageFindings(source('recipe.plica', text));
      const left = findings.filter(({ fix }) => fix === null);
      const mended = applyEdits(
        text,
        findings.flatMap(({ fix }) => fix ?? []),
      );
      expect(found(mended)).toHaveLength(left.length);
    }),
    { seed: 1, numRuns: 200 },
  );
});
