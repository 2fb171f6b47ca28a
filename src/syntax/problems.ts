import type { Problem } from '../diagnostics/problem.js';

/** Writing that is not Plica: one finding for each slip. */
export const syntax: Problem = {
  name: 'syntax',
  severity: 'error',
  meaning: 'The text cannot be read here: a number, a mark or a line is not written as the language asks.',
  matters:
    'A size read otherwise than it was meant is found only when the paper is cut: `51/2` may be 5 1/2 or 25 1/2 in.',
  remedy: 'Write it as the help says; grammar/reference.md shows every construct.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 51/2
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
}
`,
  },
};

/** More than the compiler is willing to read. */
export const limit: Problem = {
  name: 'limit',
  severity: 'error',
  meaning:
    'The text goes beyond what any recipe needs: in the length of a file, a word or a sum, in slips, or in how deep brackets, `like` or `use` lead.',
  matters:
    'Such a text is seldom a recipe, and reading on could take the machine’s memory or a very long time.',
  remedy:
    'Say it in smaller parts: a short name and a long `title`, part of a sum as a `let`, a file in two.',
  example: {
    wrong: `units in

envelope tide-table-of-the-whole-year-with-springs-neaps-moons-and-storms {
  card: 8 1/2 x 5 1/2
}
`,
    mended: `units in

envelope tide-table {
  title: "Tide table of the whole year, with springs, neaps, moons and storms"
  card: 8 1/2 x 5 1/2
}
`,
  },
};

/** What an editor does not show, where any text may stand. */
export const unseenCharacter: Problem = {
  name: 'unseen-character',
  severity: 'warning',
  meaning:
    'A string or a comment has a character that cannot be seen: it has no width, ends a line elsewhere, or turns the writing round.',
  matters:
    'Whoever looks a recipe over could take it for another: a comment may look like a property, or a figure in a title like another one.',
  remedy:
    'Leave the character out: `plica check --fix` does, since one that cannot be seen is hard to delete.',
  example: {
    wrong: `units in

envelope tide-table {
  title: "Tide\u200b table"
  card: 8 1/2 x 5 1/2
}
`,
    mended: `units in

envelope tide-table {
  title: "Tide table"
  card: 8 1/2 x 5 1/2
}
`,
  },
};

/** What can go wrong in the writing. */
export const SYNTAX_PROBLEMS: readonly Problem[] = [syntax, limit, unseenCharacter];
