import type { Problem } from '../diagnostics/problem.js';

export const unknownName: Problem = {
  name: 'unknown-name',
  severity: 'error',
  meaning:
    'A word stands for nothing that is known at that place: no let, paper, style, size, unit, word of the language or file.',
  matters: 'What it should bring along (a size, a paper, a whole house style) cannot be had.',
  remedy: 'Spell it as it is declared, declare it, or `use` the file that does.',
};

export const unknownProperty: Problem = {
  name: 'unknown-property',
  severity: 'error',
  meaning: 'A property is not one of those that this kind of block has.',
  matters: 'What it should have changed would silently stay as it is.',
  remedy: 'Spell it as the table of properties does, or move it to the block it belongs to.',
};

export const repeated: Problem = {
  name: 'repeated',
  severity: 'error',
  meaning: 'One name or one property is stated twice.',
  matters: 'Two values for one thing: the paper can be cut to only one of them.',
  remedy: 'Remove one of the two, or give it a name of its own.',
};

export const missing: Problem = {
  name: 'missing',
  severity: 'error',
  meaning: 'Something that has no default is left out: the card, the units, the unit of a number.',
  matters: 'A number without a unit may be cut twenty-five times too large.',
  remedy: 'State it.',
};

export const wrongKind: Problem = {
  name: 'wrong-kind',
  severity: 'error',
  meaning: 'A value is of another kind than the place wants, or units are mixed within one value.',
  matters: 'A weight is no length, and a bare number beside another unit is easily read wrong.',
  remedy: 'Write a value of the kind that the finding names.',
};

export const conflict: Problem = {
  name: 'conflict',
  severity: 'error',
  meaning: 'One block fixes the same thing in two ways.',
  matters: 'They will not agree to the last graduation, and the envelope can follow only one.',
  remedy: 'Leave one of the two out; it then follows from the other.',
};

export const range: Problem = {
  name: 'range',
  severity: 'error',
  meaning: 'A value is below nothing, is nothing where something is needed, or is beyond any sheet.',
  matters: 'No such paper can be cut.',
  remedy: 'Write a value within the limits that the finding names.',
};

export const cycle: Problem = {
  name: 'cycle',
  severity: 'error',
  meaning: 'Lets, likes or uses lead round in a circle.',
  matters: 'There is no first value to start from.',
  remedy: 'State one of them by itself.',
};

export const outsideRoot: Problem = {
  name: 'outside-root',
  severity: 'error',
  meaning: 'A `use` leads out of the project’s folder.',
  matters: 'A recipe handed on would then depend on a file that stays behind, or read one it should not.',
  remedy: 'Keep what is used inside the project.',
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
