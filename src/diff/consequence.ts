import type { Crease, GlueLine, Tip } from '../folding/folding.js';
import type { Paper } from '../recipe/recipe.js';
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

const blank = differs(({ folding }) => folding.made.blank);
const lining = differs(({ facts: { liner } }) => liner && [liner.width, liner.height, liner.area]);

const papers = differs(({ envelope, facts }) => [
  stock(envelope.paper.value),
  facts.liner && stock(envelope.linerPaper.value),
]);

const marks = differs(({ folding: { made, creases } }) => [
  made.first,
  made.second,
  creases.map(creaseKind).sort(),
]);

const tips = differs(({ folding: { made } }) => [Object.values(made.tips).map(cutOf), made.corners]);
const outline = differs(({ folding }) => folding.cutOutline);

const seams = differs(({ envelope, folding }) => [envelope.fasten.value, folding.glue.map(seam)]);
const strips = differs(({ folding }) => folding.glue);

const words = differs(({ envelope, facts }) => [
  envelope.name,
  envelope.title.value,
  envelope.note.value,
  [...envelope.tags.value].sort(),
  envelope.paper.value?.title,
  facts.liner && envelope.linerPaper.value?.title,
]);

const TESTS: Readonly<Record<Consequence, Test>> = {
  recut: either(blank, lining),
  restock: papers,
  rescore: marks,
  retrim: either(tips, where(either(blank, marks), outline)),
  reglue: either(seams, where(either(blank, marks, tips), strips)),
  wording: words,
  none: () => false,
};

/** What a paper is to whoever buys it; neither its price nor how much is left. */
const stock = (paper: Paper | null) =>
  paper && [
    paper.name,
    paper.sheet && [paper.sheet.value.width, paper.sheet.value.height].sort((a, b) => a - b),
    paper.weight?.value,
    paper.caliper?.value,
    paper.grain,
  ];

const creaseKind = ({ flap, order, sense }: Crease): string => `${flap} ${order} ${sense}`;

const cutOf = ({ shape, cut, radius }: Tip) => [shape, cut, radius];

const seam = ({ name, on, onto, width }: GlueLine) => [name, on, onto, width];
