import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { type Problem, report } from '../diagnostics/problem.js';
import type { Changed, Difference } from './difference.js';
import { type FigureRow, figureRows } from './figure-rows.js';
import { rulerOf } from './report.js';

export const problem: Problem = {
  name: 'figures-changed',
  severity: 'warning',
  meaning: 'A recipe comes out otherwise than it did, though none of its `expect`s was touched.',
  matters: 'Nobody said that it should: what was cut, or set up, for the old figures no longer fits.',
  remedy: 'State in an `expect` what is meant to hold from now on, or put back what changed the figures.',
  example: {
    before: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
}
`,
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seam: 9/16
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  seam: 9/16
  expect blank = 11 3/8
}
`,
  },
};

/** A finding for each recipe that comes out otherwise while what is expected of it stayed. `then`: when it was as before. */
export const figuresChanged = ({ changes }: Difference, then: string): readonly Diagnostic[] =>
  changes.flatMap((change) =>
    change.kind === 'changed' && !isExpected(change) ? finding(change, then) : [],
  );

const isExpected = ({ written }: Changed): boolean =>
  written.some(({ property }) => property.startsWith('expect '));

/** None where all figures read alike, so that nobody would make the envelope otherwise. */
function finding({ name, after, figures, written }: Changed, then: string): readonly Diagnostic[] {
  const rows = figureRows(figures, rulerOf(after));
  if (rows.length === 0) return [];
  return [
    report(problem, {
      message: `${name} comes out otherwise than ${then}, though no \`expect\` of it was touched`,
      at: after.envelope.span,
      related: written
        .filter(({ property }) => !ONLY_WORDS.has(property))
        .flatMap(({ property, after: value }) =>
          value ? [{ span: value.span, text: `${property} is not what it was` }] : [],
        )
        .slice(0, MOST),
      why: toldOf(rows),
      help: `state in an \`expect\` what is meant to hold, or put back what changed it`,
    }),
  ];
}

/** What no figure follows from. */
const ONLY_WORDS: ReadonlySet<string> = new Set(['title', 'note', 'tags', 'post']);

/** How many statements and figures are shown. */
const MOST = 4;

const toldOf = (rows: readonly FigureRow[]): string =>
  [
    ...rows.slice(0, MOST).map(({ words, before, after }) => `${words} ${before} → ${after}`),
    ...(rows.length > MOST ? [`${rows.length - MOST} more`] : []),
  ].join('; ');
