// What came of a room's mutants, in words.

/** The share noticed (in 100), a line that sums it up, and those that no test noticed, each with its place and change. */
export function told(mutants, { loads, reaches, notices, late }) {
  const tried = mutants.filter(({ id }) => reaches.has(id) || !loads.has(id));
  const left = tried.filter(({ id }) => !notices.has(id) && !late.has(id));
  const score = 100 * (1 - left.length / tried.length);
  const unmet = left.filter(({ id }) => !reaches.has(id)).length;
  return {
    score,
    summary:
      `${score.toFixed(1)} % of ${tried.length} mutants noticed (${late.size} of them ran out of time), ` +
      `${left.length} not noticed (${unmet} of them met by no test), ${mutants.length - tried.length} passed over`,
    survivors: left.map((mutant) => line(mutant, reaches)).join(''),
  };
}

const line = ({ id, fileName, location, mutatorName, original, replacement }, reaches) =>
  `${fileName}:${location.start.line + 1}:${location.start.column + 1} ${mutatorName}` +
  `${reaches.has(id) ? '' : ' (met by no test)'}\n  - ${indented(original)}\n  + ${indented(replacement)}\n`;

const indented = (text) => text.replaceAll('\n', '\n    ');
