import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import type { CardFit, SheetFit } from '../../fit/fit.js';
import { type Tried, recipeText, type Wish } from '../../fit/wish.js';
import { jsonText } from '../../text/json-text.js';
import { found } from '../json/found.js';

/** What fits, for programs: lengths mm, in full precision. Fields are added over time, never renamed. */
export const fitJson = (fit: SheetFit | CardFit, findings: readonly Diagnostic[]): string =>
  `${jsonText(
    {
      format: 'plica-fit',
      version: 1,
      ...(fit.kind === 'sheet' ? ofSheet(fit) : ofCard(fit)),
      findings: findings.map((diagnostic) => found(diagnostic)),
    },
    2,
  )}\n`;

const ofSheet = ({ sheet, depth, largest, sizes, recipes }: SheetFit) => ({
  sheet,
  depth,
  largest: largest.map(({ shape, found: card }) => ({
    shape: shape.name,
    ratio: shape.ratio,
    found: card && made(card.wish, card.tried),
  })),
  sizes: sizes.map(({ name, wish, tried, copies }) => ({ name, copies, ...made(wish, tried) })),
  recipes,
});

const ofCard = ({ wish, tried, papers, takers }: CardFit) => ({
  ...made(wish, tried),
  papers: papers.map(({ paper, sheet, copies }) => ({ name: paper.name, sheet, copies, stock: paper.stock })),
  takenBy: takers.map(({ envelope, facts }) => ({
    name: envelope.name,
    made: facts.margins,
    worst: facts.worst,
  })),
});

const made = (wish: Wish, { facts }: Tried) => ({
  card: wish.card,
  depth: facts.depth,
  blank: facts.blank,
  scores: facts.scores,
  margins: facts.margins,
  worst: facts.worst,
  recipe: recipeText(wish),
});
