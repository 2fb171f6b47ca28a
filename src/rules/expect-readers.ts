import type { Facts } from '../folding/facts.js';
import type { FlapName } from '../folding/folding.js';
import type { Envelope } from '../recipe/recipe.js';
import { least, leaveOut, most, type Remedy, write } from './remedy.js';
import type { Subject } from './rule.js';

/** How one name of an `expect` is read off the facts. */
export interface Reader {
  /** The values it stands for, in the inner unit; more than one where the two side flaps differ. Null is unknown. */
  readonly read: (facts: Facts) => readonly (number | null)[];
  /** Statements that may bring it to the expected value. */
  readonly remedies: (expected: number, envelope: Envelope) => readonly Remedy[];
  /** Why it may be unknown, and what to state then. */
  readonly missing?: (subject: Subject) => { readonly why: string; readonly advice: string };
  /** Rules whose finding says the same. */
  readonly saidBy: readonly string[];
}

type Read = (facts: Facts) => number | null;
type Remedies = Reader['remedies'];

const none: Remedies = () => [];
const length = (read: Read, remedies: Remedies = none, saidBy: readonly string[] = []): Reader => ({
  read: (facts) => [read(facts)],
  remedies,
  saidBy,
});

const flat = ({ envelope }: Subject) => ({
  why: `${envelope.name} is flat: only a box has it`,
  advice: 'state a `depth`, or take this `expect` out',
});

/** First or second score of a flap. */
const score =
  (flap: FlapName, order: 0 | 1): Read =>
  (facts) =>
    facts.scores[flap][order]?.fromCorner ?? null;
const mark =
  (flap: FlapName, order: 0 | 1): Read =>
  (facts) =>
    facts.scores[flap][order]?.alongEdge ?? null;
const second = (read: Read): Reader => ({ ...length(read), missing: flat });
const sides = (one: Read, other: Read, remedies: Remedies = none): Reader => ({
  read: (facts) => [one(facts), other(facts)],
  remedies,
  saidBy: [],
});

const MORE_EASE = [least('ease'), most('ease'), leaveOut('face'), leaveOut('ease')];
const OTHER_SEAM = [least('seam'), most('seam'), leaveOut('seam'), leaveOut('blank')];

const lining = (read: Read): Reader => ({
  ...length(read, () => [most('liner'), least('liner')], ['liner-fits']),
  missing: ({ envelope }) => ({
    why: `${envelope.name} has no lining`,
    advice: 'state a `liner`, or take this `expect` out',
  }),
});

/** The reader of each name in recipe/expect-names.ts. */
export const EXPECT_READERS: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  [
    'blank',
    {
      read: ({ blank }) => [blank.width, blank.height],
      remedies: (side) => [leaveOut('blank'), write({ blank: { width: side, height: side } })],
      saidBy: ['square-blank'],
    },
  ],
  [
    'face-width',
    length(
      ({ face }) => face.width,
      (width, envelope) => [write({ face: { width, height: envelope.face.value.height } }), ...MORE_EASE],
    ),
  ],
  [
    'face-height',
    length(
      ({ face }) => face.height,
      (height, envelope) => [write({ face: { width: envelope.face.value.width, height } }), ...MORE_EASE],
    ),
  ],
  [
    'depth',
    length(
      ({ depth }) => depth,
      (depth) => [write({ depth }), leaveOut('depth')],
    ),
  ],
  ['side-score', sides(score('left', 0), score('right', 0))],
  ['seal-score', length(score('seal', 0))],
  ['bottom-score', length(score('bottom', 0))],
  [
    'side-mark',
    sides(mark('left', 0), mark('right', 0), (at) => [leaveOut('sideMarks'), write({ sideMarks: [at, at] })]),
  ],
  ['seal-mark', length(mark('seal', 0), (at) => [leaveOut('sealMark'), write({ sealMark: at })])],
  ['bottom-mark', length(mark('bottom', 0), (at) => [leaveOut('bottomMark'), write({ bottomMark: at })])],
  ['second-side-score', { ...sides(score('left', 1), score('right', 1)), missing: flat }],
  ['second-seal-score', second(score('seal', 1))],
  ['second-bottom-score', second(score('bottom', 1))],
  ['second-side-mark', { ...sides(mark('left', 1), mark('right', 1)), missing: flat }],
  ['second-seal-mark', second(mark('seal', 1))],
  ['second-bottom-mark', second(mark('bottom', 1))],
  [
    'side-flap',
    sides(
      ({ flaps }) => flaps.left.height,
      ({ flaps }) => flaps.right.height,
    ),
  ],
  [
    'seal-flap',
    length(
      ({ flaps }) => flaps.seal.height,
      () => [least('shift'), ...OTHER_SEAM],
    ),
  ],
  [
    'bottom-flap',
    length(
      ({ flaps }) => flaps.bottom.height,
      () => OTHER_SEAM,
    ),
  ],
  [
    'crossing',
    length(
      ({ margins }) => margins.crossing,
      () => OTHER_SEAM,
      ['creases-cross'],
    ),
  ],
  [
    'seam-overlap',
    length(
      ({ margins }) => margins.seamOverlap,
      () => OTHER_SEAM,
      ['creases-cross', 'seam-holds'],
    ),
  ],
  [
    'closure',
    length(
      ({ margins }) => margins.closure,
      () => [least('seam'), least('shift')],
      ['creases-cross', 'flap-closes'],
    ),
  ],
  ['bare', length(({ margins }) => margins.bareArea, none, ['creases-cross', 'full-coverage'])],
  [
    'room-width',
    length(
      ({ margins }) => margins.roomWidth,
      () => MORE_EASE,
      ['card-fits'],
    ),
  ],
  [
    'room-height',
    length(
      ({ margins }) => margins.roomHeight,
      () => MORE_EASE,
      ['card-fits'],
    ),
  ],
  [
    'room-depth',
    {
      ...length(
        ({ margins }) => margins.roomDepth,
        () => [least('depth')],
        ['card-fits'],
      ),
      missing: flat,
    },
  ],
  [
    'thickness',
    length(
      ({ thickness }) => thickness,
      () => [most('depth')],
    ),
  ],
  ['mass', { ...length(({ mass }) => mass), missing: missingWeight }],
  [
    'per-sheet',
    {
      ...length(
        ({ sheet }) => sheet?.copies ?? null,
        () => [most('seam')],
        ['sheet-holds-blank'],
      ),
      missing: (subject) => missingOfPaper(subject, 'sheet'),
    },
  ],
  ['layers', length(({ layers }) => layers)],
  [
    'seam-length',
    length(
      ({ seamLength }) => seamLength,
      () => [least('ease')],
      ['seam-holds'],
    ),
  ],
  ['diagonal', length(({ diagonal }) => diagonal)],
  ['tape-length', length(({ tapeLength }) => tapeLength)],
  ['liner-width', lining(({ liner }) => liner?.width ?? null)],
  ['liner-height', lining(({ liner }) => liner?.height ?? null)],
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
