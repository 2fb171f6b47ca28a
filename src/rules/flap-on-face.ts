import type { Problem } from '../diagnostics/problem.js';
import { FLAP_NAMES, type FlapName } from '../folding/folding.js';
import { SHAPED_BY, SHAPED_FLAPS } from './flaps-named.js';
import { isShort, type Margin } from './margin.js';
import { place, type Property } from './place.js';
import { leastCut, leaveOut } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact } from './words.js';
import { NEARLY } from '../measure/slack.js';

const problem: Problem = {
  name: 'flap-on-face',
  severity: 'error',
  meaning: 'A flap reaches past the fold opposite.',
  matters: 'Its tip sticks out beyond the closed envelope, where it catches and tears.',
  remedy: 'Cut the tip, or leave its shape out: then it is cut when it must be.',
  example: {
    wrong: `units mm

envelope tide-strip {
  card: DL
  bottom: blunt 10
}
`,
    mended: `units mm

envelope tide-strip {
  card: DL
  bottom: blunt 18
}
`,
  },
};

/** What is left between the tip of the flap that reaches furthest and the fold opposite. */
export const stopMargin: Margin = {
  name: 'the way from a tip to the fold opposite',
  made: ({ facts }) => facts.flapStop,
  worst: ({ facts }) => facts.worst.flapStop,
  limit: () => 0,
  because: () => 'a tip must stop at the fold opposite, by 0 or more',
  blame: (subject) => blame(furthest(subject)),
  remedies: (subject) => remedies(furthest(subject)),
};

export const flapOnFace: Rule = { problem, quietAfter: ['square-blank'], check };

/** Each shaped flap that reaches past the fold opposite. */
function check(subject: Subject): readonly Finding[] {
  if (!isShort(stopMargin, subject)) return [];
  const { envelope, facts } = subject;
  return SHAPED_FLAPS.flatMap(({ property, flaps, name }): readonly Finding[] => {
    const flap = [...flaps].sort((a, b) => stop(subject, a) - stop(subject, b))[0] as FlapName;
    const past = -stop(subject, flap);
    if (past <= NEARLY) return [];
    const across = acrossFrom(subject, flap);
    return [
      {
        problem,
        about: property,
        message: `the ${name} of ${envelope.name} would reach past the fold opposite`,
        ...place(envelope, blame(flap)),
        label: `${exact(envelope, past)} too long`,
        why: `the flap is ${exact(envelope, facts.flaps[flap].height)} high, and the fold opposite lies ${exact(envelope, across)} away`,
        remedies: remedies(flap),
      },
    ];
  });
}

const acrossFrom = ({ facts }: Subject, flap: FlapName): number =>
  flap === 'left' || flap === 'right' ? facts.face.width : facts.face.height;

const stop = (subject: Subject, flap: FlapName): number =>
  acrossFrom(subject, flap) - subject.facts.flaps[flap].height;

const furthest = (subject: Subject): FlapName =>
  [...FLAP_NAMES].sort((a, b) => stop(subject, a) - stop(subject, b))[0] as FlapName;

const blame = (flap: FlapName): readonly Property[] => [
  SHAPED_BY[flap],
  'shift',
  'sealMark',
  'bottomMark',
  'sideMarks',
];

const remedies = (flap: FlapName) => [
  leaveOut(SHAPED_BY[flap]),
  leastCut(SHAPED_BY[flap]),
  leaveOut('sideMarks', 'sealMark', 'bottomMark', 'shift'),
];
