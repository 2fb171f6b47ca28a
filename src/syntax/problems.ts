import type { Problem } from '../diagnostics/problem.js';

/** Writing that is not Plica: one finding for each slip. */
export const syntax: Problem = {
  name: 'syntax',
  severity: 'error',
  meaning: 'The text cannot be read here: a number, a mark or a line is not written as the language asks.',
  matters: 'A size that is read otherwise than it was meant is found only after the paper is cut.',
  remedy: 'Write it as the help says; grammar/reference.md shows every construct.',
};

/** More than the compiler is willing to read. */
export const limit: Problem = {
  name: 'limit',
  severity: 'error',
  meaning: 'The text is longer, or its brackets nest deeper, than any recipe needs.',
  matters:
    'Such a file is seldom a recipe, and reading it could take the machine’s memory or a very long time.',
  remedy: 'Split the file, or give parts of the sum a name with `let`.',
};
