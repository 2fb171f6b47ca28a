import type { Facts } from '../folding/facts.js';
import type { Crease, GlueLine, Tip } from '../folding/folding.js';
import type { Envelope, Paper } from '../recipe/recipe.js';
import { CONSEQUENCES, type Consequence, type Recipe } from './difference.js';
import { sameValue } from './same-value.js';

/**
 * What a change asks of whoever made the envelope before: all that apply, the most far-reaching first. Read off what is
 * made, not off what is written, and each off measures of its own: a mark is measured from its corner, so that a larger
 * blank alone does not move it; notches and strips lie where the marks put them, so that they count by themselves only
 * where the marks stay.
 */
export function consequences(before: Recipe, after: Recipe): readonly Consequence[] {
  const apply = CONSEQUENCES.filter((consequence) => TESTS[consequence](before, after));
  return apply.length > 0 ? apply : ['none'];
}

type Test = (before: Recipe, after: Recipe) => boolean;

const differs =
  (read: (recipe: Recipe) => unknown): Test =>
  (before, after) =>
    !sameValue(read(before), read(after));

const either =
  (...tests: readonly Test[]): Test =>
  (before, after) =>
    tests.some((test) => test(before, after));

/** The last test counts only where none of the others finds a difference. */
const where =
  (same: Test, test: Test): Test =>
  (before, after) =>
    !same(before, after) && test(before, after);

/** Whether the blank itself is cut otherwise, not only its lining. */
export const blank = differs(({ folding }) => folding.made.blank);
const lining = differs(({ facts: { liner } }) => liner && [liner.width, liner.height, liner.area]);

const papers = differs(({ envelope, facts }) => papersUsed(envelope, facts).map(stock));

/** Whether the blank is of other paper, not only its lining. */
export const ownPaper = differs(({ envelope: { paper } }) => paper.value && stock(paper.value));

const marks = differs(({ folding: { made, creases } }) => [
  made.first,
  made.second,
  creases.map(creaseKind).sort(),
]);

const tips = differs(({ folding: { made } }) => [Object.values(made.tips).map(cutOf), made.corners]);
const outline = differs(({ folding }) => folding.cutOutline);

const seams = differs(({ envelope, folding }) => [envelope.fasten.value, folding.glue.map(seam)]);
const strips = differs(({ folding }) => folding.glue);

const words = differs(({ envelope: { name, title, note, tags } }) => [
  name,
  title.value,
  note.value,
  [...tags.value].sort(),
]);
const paperNames = differs(({ envelope, facts }) => papersUsed(envelope, facts).map(({ name }) => name));
const paperTitles = differs(({ envelope, facts }) => papersUsed(envelope, facts).map(({ title }) => title));

const TESTS: Readonly<Record<Consequence, Test>> = {
  recut: either(blank, lining),
  restock: papers,
  rescore: marks,
  retrim: either(tips, where(either(blank, marks), outline)),
  reglue: either(seams, where(either(blank, marks, tips), strips)),
  wording: either(words, where(paperNames, paperTitles)),
  none: () => false,
};

/** Its paper, and that of a lining if it is another. */
const papersUsed = ({ paper, linerPaper }: Envelope, { liner }: Facts): readonly Paper[] =>
  [paper.value, liner && linerPaper.value !== paper.value ? linerPaper.value : null].filter(
    (each) => each !== null,
  );

/** What a paper is to whoever buys it; neither its price nor how much is left. */
const stock = ({ name, sheet, weight, caliper, grain }: Paper) => [
  name,
  sheet && [sheet.value.width, sheet.value.height].sort((a, b) => a - b),
  weight?.value,
  caliper?.value,
  grain,
];

const creaseKind = ({ flap, order, sense }: Crease): string => `${flap} ${order} ${sense}`;

const cutOf = ({ shape, cut, radius }: Tip) => [shape, cut, radius];

const seam = ({ name, on, onto, width }: GlueLine) => [name, on, onto, width];
