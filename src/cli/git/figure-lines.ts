import type { Compilation } from '../../compile.js';
import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import { allFigures } from '../../diff/all-figures.js';
import { figureRows } from '../../diff/figure-rows.js';

/** A line for each figure and each finding. Findings are told without their lines, which move with every edit above. */
export function figureLines({ recipes, diagnostics }: Compilation): readonly string[] {
  const owned = new Set(recipes.flatMap((recipe) => recipe.diagnostics));
  return [
    ...recipes.flatMap(({ envelope, facts, diagnostics: own }) => [
      ...figureRows(allFigures(facts), { units: envelope.units, step: envelope.step.value }).map(
        ({ words, after }) => `${envelope.name}: ${words} ${after}`,
      ),
      ...own.map((finding) => `${envelope.name}: ${inWords(finding)}`),
    ]),
    ...diagnostics.filter((finding) => !owned.has(finding)).map(inWords),
  ];
}

const inWords = ({ severity, problem, message }: Diagnostic): string =>
  `${severity}[${problem.name}]: ${message}`;
