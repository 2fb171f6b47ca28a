import type { Problem } from '../diagnostics/problem.js';

export const unknownName: Problem = {
  name: 'unknown-name',
  severity: 'error',
  meaning:
    'A word stands for nothing that is known at that place: no let, paper, style, size, unit, word of the language or file.',
  matters:
    'What it should bring along, a size, a paper or a whole house style, is missing from the sheet you would cut.',
  remedy: 'Spell it as it is declared, declare it, or `use` the file that does.',
  example: {
    wrong: `units in

envelope tide-table {
  card: half-letter
}
`,
    mended: `units in

envelope tide-table {
  card: half letter
}
`,
  },
};

export const unknownProperty: Problem = {
  name: 'unknown-property',
  severity: 'error',
  meaning: 'A property is not one of those that this kind of block has.',
  matters:
    'What it should have changed would stay as it is, and nobody would notice before the card goes in.',
  remedy: 'Spell it as the table of properties does, or move it to the block it belongs to.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seem: 9/16
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seam: 9/16
}
`,
  },
};

export const repeated: Problem = {
  name: 'repeated',
  severity: 'error',
  meaning: 'One name or one property is stated twice.',
  matters: 'Two values for one thing: the paper can be cut to only one of them.',
  remedy: 'Remove one of the two, or give it a name of its own.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  ease: 1/4
  ease: 3/8
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  ease: 3/8
}
`,
  },
};

export const missing: Problem = {
  name: 'missing',
  severity: 'error',
  meaning:
    'Something that has no default is left out: the card, the units, the unit of a number, the radius of a tip.',
  matters: 'A number without a unit may be cut twenty-five times too large.',
  remedy: 'State it.',
  example: {
    wrong: `envelope tide-table {
  card: 8 1/2 x 5 1/2
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
}
`,
  },
};

export const wrongKind: Problem = {
  name: 'wrong-kind',
  severity: 'error',
  meaning: 'A value is of another kind than the place wants, or units are mixed within one value.',
  matters:
    'A weight is no length, and a bare number beside another unit is easily read wrong: half a card in inches, half in mm.',
  remedy: 'Write a value of the kind that the finding names, in one unit.',
  example: {
    wrong: `units mm

envelope tide-table {
  card: 8 1/2" x 5 1/2
}
`,
    mended: `units mm

envelope tide-table {
  card: 8 1/2" x 5 1/2"
}
`,
  },
};

export const conflict: Problem = {
  name: 'conflict',
  severity: 'error',
  meaning: 'One block fixes the same thing in two ways.',
  matters: 'They will not agree to the last graduation, and the envelope can follow only one.',
  remedy: 'Leave one of the two out; it then follows from the other.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  blank: 11 1/4
  seam: 1/2
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  blank: 11 1/4
}
`,
  },
};

export const range: Problem = {
  name: 'range',
  severity: 'error',
  meaning: 'A value is below nothing, is nothing where something is needed, or is beyond any sheet.',
  matters: 'No such paper can be cut.',
  remedy: 'Write a value within the limits that the finding names.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  tape: 0
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  tape: 1/4
}
`,
  },
};

export const cycle: Problem = {
  name: 'cycle',
  severity: 'error',
  meaning: 'Lets, likes or uses lead round in a circle.',
  matters: 'There is no first value to start from, so nothing can be measured.',
  remedy: 'State one of them by itself.',
  example: {
    wrong: `units in

let ebb = 2 * flood
let flood = ebb / 2

envelope tide-table {
  card: 8 1/2 x 5 1/2
  ease: ebb
}
`,
    mended: `units in

let ebb = 2 * flood
let flood = 1/8

envelope tide-table {
  card: 8 1/2 x 5 1/2
  ease: ebb
}
`,
  },
};

export const outsideRoot: Problem = {
  name: 'outside-root',
  severity: 'error',
  meaning: 'A `use` leads out of the project’s folder.',
  matters: 'A recipe handed on would depend on a file that stays behind, or read one that it should not.',
  remedy: 'Keep what is used inside the project: copy the file in, or state here what is needed of it.',
  example: {
    wrong: `units in

use "../mainland/papers.plica"

envelope tide-table {
  card: 8 1/2 x 5 1/2
  paper: kraft
}
`,
    mended: `units in

paper kraft { sheet: 12 x 12 }

envelope tide-table {
  card: 8 1/2 x 5 1/2
  paper: kraft
}
`,
  },
};

/** What can go wrong in this room. */
export const RECIPE_PROBLEMS: readonly Problem[] = [
  unknownName,
  unknownProperty,
  repeated,
  missing,
  wrongKind,
  conflict,
  range,
  cycle,
  outsideRoot,
];
