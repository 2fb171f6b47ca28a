import type { Problem } from '../diagnostics/problem.js';
import { ceilToStep } from '../measure/ruler.js';
import { fits } from '../measure/slack.js';
import type { Size } from '../recipe/recipe.js';
import { place } from './place.js';
import { least, leaveOut, most } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { becauseOfTape, tapeNeeds } from './tape.js';
import { exact, readSize } from './words.js';

const problem: Problem = {
  name: 'liner-fits',
  severity: 'error',
  meaning:
    'The inset leaves no lining, or too little of it on the seal flap to be glued there, or its paper’s sheet cannot hold it.',
  matters: 'A lining is held by the flap alone: one that hardly reaches it comes out with the card.',
  remedy: 'Take a smaller inset, or a paper with a larger sheet for the lining.',
  example: {
    wrong: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  liner: inset 4
}
`,
    mended: `units in

envelope tide-table {
  card: 8 1/2 x 5 1/2
  liner: inset 1/8
}
`,
  },
};

export const linerFits: Rule = {
  problem,
  quietAfter: ['square-blank', 'creases-cross', 'flap-on-face', 'flap-shape'],
  check,
};

/** A lining of which too little is left to glue, or that is too large for its paper. */
function check(subject: Subject): readonly Finding[] {
  const { envelope, facts } = subject;
  if (envelope.liner.value === null) return [];
  if (facts.liner && fits(tapeNeeds(subject), facts.liner.reach)) return tooLarge(subject);
  const reach = facts.liner?.reach ?? null;
  const inset = exact(envelope, envelope.liner.value);
  return [
    {
      problem,
      about: 'reach',
      message: `the lining of ${envelope.name} ${shortcoming(reach)}`,
      ...place(envelope, ['liner', 'flap', 'tape']),
      label: `an inset of ${inset}${reach !== null && reach > 0 ? ` leaves ${exact(envelope, reach)} of it on the flap` : ''}`,
      why:
        reach === null
          ? `the face is ${readSize(envelope, facts.face)}, and the lining lies ${inset} inside each of its edges`
          : `it is glued to the flap only, above the score; ${becauseOfTape(subject)}`,
      remedies: [most('liner'), most('tape'), leaveOut('flap'), leaveOut('liner')],
    },
  ];
}

const shortcoming = (reach: number | null): string =>
  reach === null
    ? 'has no paper left'
    : reach > 0
      ? 'reaches too little up its seal flap to be glued there'
      : 'does not reach its seal flap';

/** A lining that no sheet of its paper yields; where the same paper is too small for the blank, that is said of the blank. */
function tooLarge({ envelope, facts }: Subject): readonly Finding[] {
  const paper = envelope.linerPaper.value;
  const sheet = paper?.sheet;
  if (!paper || !sheet || facts.liner?.copies !== 0) return [];
  if (paper === envelope.paper.value && facts.sheet?.copies === 0) return [];
  const { at, related } = place(envelope, ['linerPaper', 'paper', 'liner']);
  const needs = readSize(envelope, upToStep(facts.liner, envelope.step.value));
  const holds = readSize(envelope, sheet.value);
  return [
    {
      problem,
      about: 'sheet',
      message: `the lining of ${envelope.name} is larger than a sheet of ${paper.name}`,
      at,
      label: `needs ${needs}`,
      related: [{ span: sheet.origin.span, text: `the sheet of ${paper.name}, ${holds}` }, ...related],
      why: `lining ${needs}, sheet ${holds}`,
      remedies: [least('liner')],
      advice: `use a paper with a sheet of at least ${needs} for it`,
    },
  ];
}

/** The least size on the ruler that holds a piece. */
const upToStep = ({ width, height }: Size, step: number): Size => ({
  width: ceilToStep(width, step),
  height: ceilToStep(height, step),
});
