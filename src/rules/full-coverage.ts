import type { Problem } from '../diagnostics/problem.js';
import { bounds } from '../plane/polygon.js';
import { place, type Property } from './place.js';
import { least, leaveOut, mostCut, mostRadius, write } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, readArea } from './words.js';

const problem: Problem = {
  name: 'full-coverage',
  severity: 'error',
  meaning: 'Part of the back stays bare when all four flaps are closed.',
  matters: 'The card shows through the gap, and may slide out of it.',
  remedy: 'Cut less off the tips, or take a larger seam.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  sides: blunt 40
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  sides: blunt 34
}
`,
  },
};

/** Bare patches smaller than this together are noise, in mm². */
const BARE_SLACK = 0.01;

const SHAPED = ['flap', 'bottom', 'sides'] as const;

const BLAME: readonly Property[] = [...SHAPED, 'corners', 'seam', 'blank'];

export const fullCoverage: Rule = {
  problem,
  quietAfter: ['square-blank', 'creases-cross', 'flap-shape', 'seam-holds'],
  check,
};

/** A back that the closed flaps leave bare somewhere. */
function check({ envelope, folding, facts }: Subject): readonly Finding[] {
  const { bareArea } = facts.margins;
  if (bareArea <= BARE_SLACK) return [];
  const { min, max } = bounds(folding.bare.flat());
  const patch = `${exact(envelope, max.x - min.x)} wide and ${exact(envelope, max.y - min.y)} high`;
  return [
    {
      problem,
      about: 'back',
      message: `the back of ${envelope.name} is not covered all over`,
      ...place(envelope, BLAME),
      label: `${readArea(envelope, bareArea)} stay bare`,
      why: `what is bare lies within a stretch ${patch}; nothing may be bare`,
      remedies: [
        ...SHAPED.flatMap((property) => [mostCut(property), mostRadius(property), leaveOut(property)]),
        leaveOut('flap', 'bottom', 'sides'),
        leaveOut('blank'),
        least('seam'),
        write({ corners: { bottom: 'folded', seal: 'notched' } }),
        leaveOut('sideMarks', 'sealMark', 'bottomMark'),
      ],
    },
  ];
}
