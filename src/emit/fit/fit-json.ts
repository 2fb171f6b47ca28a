import type { CardFit, SheetFit } from '../../fit/fit.js';
import { type Compiled, recipeText, type Wish } from '../../fit/wish.js';
import { jsonText } from '../../text/json-text.js';
import { found as finding } from '../json/found.js';

/** What fits, for programs: lengths mm, in full precision. Fields are added over time, never renamed. */
export const fitJson = (fit: SheetFit | CardFit): string =>
  `${jsonText({ format: 'plica-fit', version: 1, ...(fit.kind === 'sheet' ? ofSheet(fit) : ofCard(fit)) }, 2)}\n`;

const ofSheet = ({ sheet, depth, largest, sizes, recipes }: SheetFit) => ({
  sheet,
  depth,
  largest: largest.map(({ shape, found }) => ({
    shape: shape.name,
    ratio: shape.ratio,
    found: found && made(found.wish, found.compiled),
  })),
  sizes: sizes.map(({ name, wish, compiled, copies }) => ({ name, copies, ...made(wish, compiled) })),
  recipes,
});

const ofCard = ({ wish, compiled, papers, takers }: CardFit) => ({
  ...made(wish, compiled),
  findings: compiled.diagnostics.map((diagnostic) => finding(diagnostic)),
  papers: papers.map(({ paper, sheet, copies }) => ({ name: paper.name, sheet, copies })),
  takenBy: takers.map(({ envelope, facts }) => ({
    name: envelope.name,
    made: facts.margins,
    worst: facts.worst,
  })),
});

const made = (wish: Wish, { facts }: Compiled) => ({
  card: wish.card,
  depth: facts.depth,
  blank: facts.blank,
  scores: facts.scores,
  margins: facts.margins,
  worst: facts.worst,
  recipe: recipeText(wish),
});
