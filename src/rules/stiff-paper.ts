import type { Problem } from '../diagnostics/problem.js';
import { FLAP_NAMES } from '../folding/folding.js';
import { fits } from '../measure/slack.js';
import { place } from './place.js';
import { least } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact } from './words.js';

/** From this caliper in mm on, paper cracks along a fold that was not scored first (common practice, no source). */
const CRACKS = 0.25;

/** A flap lower than so many calipers springs open: there is too little of it to bend flat (our judgement). */
const CALIPERS = 60;

const problem: Problem = {
  name: 'stiff-paper',
  severity: 'warning',
  meaning:
    'The paper is so thick that a small flap of it springs open, or that no fold may be made before it is scored.',
  matters: 'A stiff flap pulls its glue apart; unscored, a thick sheet cracks along the fold.',
  remedy: 'Take a thinner paper, or a larger seam, which makes the flaps larger.',
  example: {
    wrong: `units mm

paper board {
  weight: 380 gsm
  caliper: 0.5 mm
}

envelope tag {
  card: 50 x 35
  paper: board
}
`,
    mended: `units mm

paper chart {
  weight: 100 gsm
  caliper: 0.13 mm
}

envelope tag {
  card: 50 x 35
  paper: chart
}
`,
  },
  source: 'common practice, no source; the least height of a flap is our judgement',
};

export const stiffPaper: Rule = { problem, quietAfter: ['square-blank', 'creases-cross'], check };

/** Judges a paper whose caliper is stated, or estimated from its weight; an assumed one says nothing. */
function check(subject: Subject): readonly Finding[] {
  const { envelope, facts } = subject;
  const { value: caliper, basis } = envelope.caliper;
  const paper = envelope.paper.value;
  if (paper === null || basis === 'assumed') return [];
  const qualified = basis === 'estimated' ? ' (estimated from its weight)' : '';
  const thickness = `${paper.name} is ${exact(envelope, caliper)} thick${qualified}`;
  const common = { problem, ...place(envelope, ['paper', 'seam', 'blank']) };
  const height = Math.min(...FLAP_NAMES.map((flap) => facts.flaps[flap].height));
  const wanted = CALIPERS * caliper;
  if (!fits(wanted, height))
    return [
      {
        ...common,
        about: 'flap',
        message: `the paper of ${envelope.name} is too stiff for its smallest flap`,
        label: `a flap of ${exact(envelope, height)}`,
        why: `${thickness}, and a flap of it lies flat from about ${CALIPERS} thicknesses on, ${exact(envelope, wanted)}`,
        remedies: [least('seam')],
        advice: 'take a thinner paper',
      },
    ];
  if (!fits(CRACKS, caliper)) return [];
  return [
    {
      ...common,
      about: 'scoring',
      severity: 'note',
      message: `the paper of ${envelope.name} is too thick to fold without scoring`,
      why: `${thickness}; from about ${exact(envelope, CRACKS)} on a fold cracks that was not scored first`,
      remedies: [],
      advice: 'score every line in two light passes before any is folded, as the cut sheet says',
    },
  ];
}
