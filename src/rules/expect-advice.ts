import type { Envelope } from '../recipe/recipe.js';
import { least, leaveOut, most, type Remedy, write } from './remedy.js';
import type { Subject } from './rule.js';

/** What to say about a figure that does not come out as expected. */
export interface Advice {
  /** Statements that may bring it to the expected value. */
  readonly remedies: (expected: number, envelope: Envelope) => readonly Remedy[];
  /** Why it may be unknown, and what to state then. */
  readonly missing?: (subject: Subject) => { readonly why: string; readonly advice: string };
  /** Rules whose finding says the same. */
  readonly saidBy: readonly string[];
}

type Remedies = Advice['remedies'];

const advice = (
  remedies: Remedies,
  saidBy: readonly string[] = [],
  missing?: NonNullable<Advice['missing']>,
): Advice => ({ remedies, saidBy, ...(missing ? { missing } : {}) });

/** What is said of a figure that nothing here knows how to bring about. */
export const NO_ADVICE: Advice = advice(() => []);

const flat = ({ envelope }: Subject) => ({
  why: `${envelope.name} is flat: only a box has it`,
  advice: 'state a `depth`, or take this `expect` out',
});

const ofBox: Advice = { ...NO_ADVICE, missing: flat };

const MORE_EASE = [least('ease'), most('ease'), leaveOut('face'), leaveOut('ease')];
const OTHER_SEAM = [least('seam'), most('seam'), leaveOut('seam'), leaveOut('blank')];

const ofLining: Advice = advice(
  () => [most('liner'), least('liner')],
  ['liner-fits'],
  ({ envelope }) => ({
    why: `${envelope.name} has no lining`,
    advice: 'state a `liner`, or take this `expect` out',
  }),
);

/** What to say, by the figure's name; figures left out here have no advice. */
export const EXPECT_ADVICE: ReadonlyMap<string, Advice> = new Map<string, Advice>([
  [
    'blank',
    advice((side) => [leaveOut('blank'), write({ blank: { width: side, height: side } })], ['square-blank']),
  ],
  [
    'face-width',
    advice((width, { face }) => [write({ face: { width, height: face.value.height } }), ...MORE_EASE]),
  ],
  [
    'face-height',
    advice((height, { face }) => [write({ face: { width: face.value.width, height } }), ...MORE_EASE]),
  ],
  ['depth', advice((depth) => [write({ depth }), leaveOut('depth')])],
  ['side-mark', advice((at) => [leaveOut('sideMarks'), write({ sideMarks: [at, at] })])],
  ['seal-mark', advice((at) => [leaveOut('sealMark'), write({ sealMark: at })])],
  ['bottom-mark', advice((at) => [leaveOut('bottomMark'), write({ bottomMark: at })])],
  ['second-side-score', ofBox],
  ['second-seal-score', ofBox],
  ['second-bottom-score', ofBox],
  ['second-side-mark', ofBox],
  ['second-seal-mark', ofBox],
  ['second-bottom-mark', ofBox],
  ['seal-flap', advice(() => [least('shift'), ...OTHER_SEAM])],
  ['bottom-flap', advice(() => OTHER_SEAM)],
  ['crossing', advice(() => OTHER_SEAM, ['creases-cross'])],
  ['seam-overlap', advice(() => OTHER_SEAM, ['creases-cross', 'seam-holds'])],
  ['closure', advice(() => [least('seam'), least('shift')], ['creases-cross', 'flap-closes'])],
  ['bare', advice(() => [], ['creases-cross', 'full-coverage'])],
  ['room-width', advice(() => MORE_EASE, ['card-fits'])],
  ['room-height', advice(() => MORE_EASE, ['card-fits'])],
  ['room-depth', advice(() => [least('depth')], ['card-fits'], flat)],
  ['thickness', advice(() => [most('depth')])],
  ['mass', advice(() => [], [], missingWeight)],
  [
    'per-sheet',
    advice(
      () => [most('seam')],
      ['sheet-holds-blank'],
      (subject) => missingOfPaper(subject, 'sheet'),
    ),
  ],
  ['seam-length', advice(() => [least('ease')], ['seam-holds'])],
  ['liner-width', ofLining],
  ['liner-height', ofLining],
]);

/** A mass is not known for want of the paper's weight, or else of its lining's. */
function missingWeight(subject: Subject) {
  const { paper, linerPaper } = subject.envelope;
  const lined = linerPaper.value;
  return paper.value?.weight && lined
    ? {
        why: `paper ${lined.name}, of the lining, states no \`weight\``,
        advice: `state \`weight\` in paper ${lined.name}`,
      }
    : missingOfPaper(subject, 'weight');
}

const missingOfPaper = ({ envelope }: Subject, property: string) => {
  const paper = envelope.paper.value;
  return paper
    ? {
        why: `paper ${paper.name} states no \`${property}\``,
        advice: `state \`${property}\` in paper ${paper.name}`,
      }
    : { why: `${envelope.name} has no paper`, advice: `state a \`paper\` that has a \`${property}\`` };
};
