import type { Problem } from '../diagnostics/problem.js';
import type { Facts } from '../folding/facts.js';
import { isShort, type Margin } from './margin.js';
import { place, type Property } from './place.js';
import { least, leaveOut, most, type Remedy, wider } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'card-fits',
  severity: 'error',
  meaning: 'The filled card is larger than the room inside.',
  matters: 'It bends, or splits the folds when it goes in.',
  remedy: 'State a depth for a thick card; otherwise more ease.',
  example: {
    wrong: `units in

envelope keepsake {
  card: quarter letter
  bulk: 3/8
}
`,
    mended: `units in

envelope keepsake {
  card: quarter letter
  bulk: 3/8
  depth: 1/2
}
`,
  },
};

/** A direction in which the card must fit. */
interface Direction {
  readonly margin: Margin;
  /** How it does not fit. */
  readonly message: string;
  /** The sum that gives the room. */
  readonly sum: (subject: Subject) => string;
}

const DIRECTIONS: readonly Direction[] = [
  {
    margin: {
      name: "the room for the card's width",
      made: ({ facts }) => facts.margins.roomWidth,
      worst: ({ facts }) => facts.worst.roomWidth,
      limit: () => 0,
      because: () => 'the room must be 0 or more',
      blame: (subject) => ['sideMarks', ...ofFace(subject)],
      remedies: (subject) => remedies(subject),
    },
    message: 'too wide',
    sum: (subject) => flatSum(subject, 'width'),
  },
  {
    margin: {
      name: "the room for the card's height",
      made: ({ facts }) => facts.margins.roomHeight,
      worst: ({ facts }) => facts.worst.roomHeight,
      limit: () => 0,
      because: () => 'the room must be 0 or more',
      blame: (subject) => ['sealMark', 'bottomMark', ...ofFace(subject)],
      remedies: (subject) => remedies(subject),
    },
    message: 'too high',
    sum: (subject) => flatSum(subject, 'height'),
  },
  {
    margin: {
      name: "the room for the card's thickness",
      made: ({ facts }) => facts.margins.roomDepth,
      worst: ({ facts }) => facts.worst.roomDepth,
      limit: () => 0,
      because: () => 'the room must be 0 or more',
      blame: () => ['depth', 'bulk', 'card'],
      remedies: (subject) => remedies(subject),
    },
    message: 'too thick',
    sum: depthSum,
  },
];

export const roomMargins: readonly Margin[] = DIRECTIONS.map(({ margin }) => margin);

export const cardFits: Rule = { problem, quietAfter: ['square-blank'], check };

/** A card too large in one direction or more: one finding. */
function check(subject: Subject): readonly Finding[] {
  const { envelope } = subject;
  const short = DIRECTIONS.filter(({ margin }) => isShort(margin, subject));
  if (short.length === 0) return [];
  const lacking = Math.min(...short.map(({ margin }) => margin.made(subject) ?? 0));
  return [
    {
      problem,
      about: 'card',
      message: `the card of ${envelope.name} is ${short.map(({ message }) => message).join(' and ')} for its envelope`,
      ...place(envelope, [...new Set(short.flatMap(({ margin }) => margin.blame(subject)))]),
      label: `${exact(envelope, -lacking)} short of room`,
      why: `${short.map(({ sum }) => sum(subject)).join('; ')}; must be 0 or more`,
      remedies: remedies(subject),
    },
  ];
}

/** What gives the face its size, and a bulk that eats into it. */
const ofFace = (subject: Subject): readonly Property[] => [
  'face',
  'ease',
  ...(bulges(subject) ? (['bulk', 'depth'] as const) : []),
  'card',
];

/** Whether the bulk takes more than the 1 mm that the default ease allows for. */
const bulges = ({ envelope, facts }: Subject): boolean => envelope.bulk.value - facts.depth > 1;

/** A depth first where the bulk is at fault, or else more face. */
function remedies(subject: Subject): readonly Remedy[] {
  const deeper = least('depth');
  const stated = subject.envelope.face.origin.kind !== 'default';
  const larger = [
    leaveOut('sideMarks'),
    leaveOut('sealMark', 'bottomMark'),
    leaveOut('sideMarks', 'sealMark', 'bottomMark'),
    ...(stated ? [wider(lacking), leaveOut('face')] : []),
    least('ease'),
    leaveOut('ease'),
    wider(lacking),
    most('sideMarks'),
    most('sealMark'),
    most('bottomMark'),
    leaveOut('blank', 'ease', 'face', 'sideMarks', 'sealMark', 'bottomMark'),
  ];
  const tooThick = subject.facts.depth > 0 && (subject.facts.worst.roomDepth ?? 0) < 0;
  return tooThick || bulges(subject) ? [deeper, ...larger] : larger;
}

/** How much each side of the face lacks in the worst case. */
const lacking = ({ facts }: Subject) => ({
  width: Math.max(0, -facts.worst.roomWidth),
  height: Math.max(0, -facts.worst.roomHeight),
});

function flatSum(subject: Subject, side: 'width' | 'height'): string {
  const { envelope, facts } = subject;
  const over = Math.max(0, envelope.bulk.value + lining(facts) - facts.depth);
  const room = side === 'width' ? facts.margins.roomWidth : facts.margins.roomHeight;
  const length = (mm: number): string => exact(envelope, mm);
  const bulk = over > 0 ? ` - ${length(over)} ${bulkInWords(facts)}` : '';
  return `face ${side} ${length(facts.face[side])} - card ${length(envelope.card.value[side])} - two sheets ${length(2 * facts.caliper.value)}${assumed(subject)}${bulk} = ${length(room)}`;
}

const bulkInWords = (facts: Facts): string =>
  `of bulk${lining(facts) > 0 ? ' and lining' : ''}${facts.depth > 0 ? ' over the depth' : ''}`;

/** A lining lies between front and back with the card, and counts with its bulk. */
const lining = ({ liner }: Facts): number => liner?.thickness ?? 0;

function depthSum(subject: Subject): string {
  const { envelope, facts } = subject;
  const length = (mm: number): string => exact(envelope, mm);
  const lined = facts.liner ? ` - lining ${length(lining(facts))}` : '';
  return `depth ${length(facts.depth)} - bulk ${length(envelope.bulk.value)}${lined} - ${facts.layers} layers ${length(facts.layers * facts.caliper.value)}${assumed(subject)} = ${length(facts.margins.roomDepth ?? 0)}`;
}

const assumed = ({ facts }: Subject): string =>
  facts.caliper.basis === 'stated' ? '' : ` (${facts.caliper.basis})`;
