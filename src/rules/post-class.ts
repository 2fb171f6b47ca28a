import type { Problem } from '../diagnostics/problem.js';
import { closedPiece } from '../folding/closed-piece.js';
import { readMass } from '../measure/mass.js';
import { OPERATOR_DECIDES, type Readings, reasonWords, unknownWords } from '../post/reason-words.js';
import { type PostStanding, postStanding } from '../post/standing.js';
import type { Envelope, NamedPost, PostExpectation } from '../recipe/recipe.js';
import { POST_CLASSES, type PostClass, postClassNamed } from '../stock/post-classes.js';
import { type Place, place } from './place.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'post-class',
  severity: 'error',
  meaning:
    'A class of post named by `post` does not take the closed envelope, takes it only for more, or cannot be told for want of a figure.',
  matters: 'It comes back, or whoever receives it pays the difference.',
  remedy: 'Make it smaller, thinner or lighter, or name a class that takes it.',
  example: {
    wrong: `units mm

paper kraft { weight: 118 gsm }

envelope tide-table {
  card: A5
  paper: kraft
  post: de-standard
}
`,
    mended: `units mm

paper kraft { weight: 118 gsm }

envelope tide-table {
  card: A5
  paper: kraft
  post: de-gross
}
`,
  },
  source: 'the operators’ published limits, with their editions: src/stock/post-classes.ts',
};

export const postClass: Rule = { problem, quietAfter: ['square-blank', 'creases-cross'], check };

/** Each class that the recipe names and that does not simply take it. */
function check(subject: Subject): readonly Finding[] {
  const { post, expectsPost } = subject.envelope;
  if (post.value.length + expectsPost.length === 0) return [];
  const expected = expectsPost.map((each) => [each.post, expectedAt(subject, each)] as const);
  const named = post.value.map((each) => [each.post, namedAt(subject, each)] as const);
  const piece = closedPiece(subject.facts);
  return [...new Map([...expected, ...named])].flatMap(([name, placed]) => {
    const known = postClassNamed(name);
    return known ? toldOf(placed, postStanding(piece, known)) : [];
  });
}

/** Where a class that `post` names is told: at its own name, or at the envelope with the name in its style beside. */
function namedAt(subject: Subject, { post, span }: NamedPost): Placed {
  const { at, related } = place(subject.envelope, ['post']);
  const listed = subject.envelope.post.value.map((each) => each.post);
  const placed =
    related.length === 0
      ? { at: span, related }
      : { at, related: related.map((label) => ({ ...label, span })) };
  const written = (other: string): string =>
    `post: ${[...new Set(listed.map((name) => (name === post ? other : name)))].join(', ')}`;
  return { ...subject, at: placed, written, amongOthers: listed.length > 1 };
}

/** Where an `expect post` is told: at itself, or at the envelope with the style that states it beside. */
const expectedAt = (subject: Subject, { from, span }: PostExpectation): Placed =>
  from === null
    ? {
        ...subject,
        at: { at: span, related: [] },
        written: (other) => `expect post ${other}`,
        amongOthers: false,
      }
    : {
        ...subject,
        at: { at: subject.envelope.span, related: [{ span, text: `style ${from} expects it` }] },
        written: null,
        amongOthers: false,
      };

interface Placed extends Subject {
  readonly at: Place;
  /** How another class would be named in its place, the others of its list kept; null where the envelope itself cannot. */
  readonly written: ((other: string) => string) | null;
  readonly amongOthers: boolean;
}

function toldOf(subject: Placed, standing: PostStanding): readonly Finding[] {
  const { accepted, surcharges } = standing;
  if (accepted === false) return [refused(subject, standing)];
  return [
    ...(accepted === null ? [notKnown(subject, standing)] : []),
    ...(surcharges.length > 0 ? [forMore(subject, standing)] : []),
  ];
}

const common = ({ at }: Placed, { class: post }: PostStanding, about: string) => ({
  problem,
  about: `${about} ${post.name}`,
  ...at,
  remedies: [],
});

function refused(subject: Placed, standing: PostStanding): Finding {
  const { envelope } = subject;
  const reasons = standing.reasons.map((reason) => reasonWords(reason, readings(envelope)));
  const others = takenBy(subject, standing.class);
  return {
    ...common(subject, standing, 'refused'),
    message: `${standing.class.title} does not take ${envelope.name}`,
    label: `\`${standing.class.name}\` does not take it`,
    why: `${reasons.join('; ')} (${table(standing.class)})`,
    advice: `${insteadOf(subject, others) ?? 'make it smaller, thinner or lighter'}; ${OPERATOR_DECIDES}`,
  };
}

/** What can be written where another class takes it. */
function insteadOf({ written, amongOthers }: Placed, others: readonly string[]): string | null {
  if (written === null || others.length === 0) return null;
  const edits = others.map((other) => `\`${written(other)}\``).join(' or ');
  const who = amongOthers ? `; ${others.map((other) => `\`${other}\``).join(' and ')}` : ', which';
  return `write ${edits}${who} ${others.length > 1 ? 'take' : 'takes'} it as far as is known`;
}

/** The classes of the same country that do not refuse it, the first few. */
const takenBy = ({ facts }: Subject, { name }: PostClass): readonly string[] =>
  POST_CLASSES.filter(
    (other) =>
      countryOf(other.name) === countryOf(name) && postStanding(closedPiece(facts), other).accepted !== false,
  )
    .map((other) => other.name)
    .slice(0, OFFERED);

const OFFERED = 2;

const countryOf = (name: string): string => name.replace(/-.*$/, '');

function notKnown(subject: Placed, standing: PostStanding): Finding {
  const { envelope } = subject;
  return {
    ...common(subject, standing, 'unknown'),
    message: `whether ${standing.class.title} takes ${envelope.name} cannot be known`,
    why: `${standing.unknown.map(unknownWords).join('; ')} (${table(standing.class)})`,
    advice: weightMissing(envelope),
  };
}

const weightMissing = ({ paper, linerPaper }: Envelope): string =>
  paper.value === null
    ? 'name a `paper` that states its `weight`'
    : `state the \`weight\` of ${paper.value.weight ? (linerPaper.value?.name ?? 'the lining’s paper') : paper.value.name}`;

function forMore(subject: Placed, standing: PostStanding): Finding {
  const reasons = standing.surcharges.map((reason) =>
    reasonWords(reason, readings(subject.envelope), 'costs no more'),
  );
  return {
    ...common(subject, standing, 'surcharge'),
    severity: 'note',
    message: `${standing.class.title} takes ${subject.envelope.name} for more`,
    why: `${reasons.join('; ')} (${table(standing.class)})`,
    advice: `ask what it costs: ${OPERATOR_DECIDES}`,
  };
}

const readings = (envelope: Envelope): Readings => ({
  length: (mm) => exact(envelope, mm),
  mass: (g) => readMass(g, envelope.units).read,
});

/** Which edition of the table was read, what no page confirms, and where pages disagree. */
const table = ({ edition, fromMemory, disputed }: PostClass): string =>
  [
    `by the table’s edition: ${edition}`,
    ...(fromMemory === null ? [] : [`from memory: ${fromMemory}`]),
    ...(disputed === null ? [] : [disputed]),
  ].join('; ');
