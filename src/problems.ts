import type { Problem } from './diagnostics/problem.js';
import { problem as figuresChanged } from './diff/figures-changed.js';
import { problem as batchPaper } from './plan/batch-paper.js';
import { RECIPE_PROBLEMS } from './recipe/problems.js';
import { RULES } from './rules/index.js';
import { SYNTAX_PROBLEMS } from './syntax/problems.js';

/** Problems of writing and of meaning: they are found before anything is folded. */
export const LANGUAGE_PROBLEMS: readonly Problem[] = [...SYNTAX_PROBLEMS, ...RECIPE_PROBLEMS];

/** Problems of the folded envelope, in the order of the rules. */
export const FOLDING_PROBLEMS: readonly Problem[] = RULES.map(({ problem }) => problem);

/** Problems of what is made together. */
export const BATCH_PROBLEMS: readonly Problem[] = [batchPaper];

/** Problems of what changed since an earlier state. */
export const CHANGE_PROBLEMS: readonly Problem[] = [figuresChanged];

/** Every problem that Plica can report. */
export const PROBLEMS: readonly Problem[] = [
  ...LANGUAGE_PROBLEMS,
  ...FOLDING_PROBLEMS,
  ...BATCH_PROBLEMS,
  ...CHANGE_PROBLEMS,
];
