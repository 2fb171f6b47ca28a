import { ceilToStep, floorToStep } from '../measure/ruler.js';
import type { Size } from '../recipe/recipe.js';
import type { Statements } from '../recipe/restate.js';
import { type Offer, offer } from './offer.js';
import type { Subject } from './rule.js';

/** A recipe that wants mending, and a way to try. */
export interface Trial {
  readonly subject: Subject;
  /** The envelope folded with these statements, if the finding would be gone and nothing new come; otherwise null. */
  readonly attempt: (statements: Statements) => Subject | null;
}

/** Looks for statements that mend a finding. */
export type Remedy = (trial: Trial) => Offer | null;

/** These statements, if they serve. */
export const write =
  (statements: Statements): Remedy =>
  (trial) => {
    const after = trial.attempt(statements);
    return after && offer(trial.subject, statements, after);
  };

/** Puts back to their defaults those of the properties that are stated. */
export const leaveOut =
  (...properties: readonly (keyof Statements)[]): Remedy =>
  (trial) => {
    const stated = properties.filter((name) => trial.subject.envelope[name].origin.kind !== 'default');
    if (stated.length === 0) return null;
    return write(Object.fromEntries(stated.map((name) => [name, null])))(trial);
  };

/** The least of a length above what it is now that serves, on the ruler; nothing below 0, which no recipe may state. */
export const least = (property: LengthProperty): Remedy =>
  fewest((subject, steps) => {
    const { current, state } = LENGTHS[property];
    const step = subject.envelope.step.value;
    return state(Math.max(floorToStep(current(subject), step), -step) + steps * step);
  });

/** The most of a length below what it is now that serves, on the ruler. */
export const most = (property: LengthProperty): Remedy =>
  fewest((subject, steps) => {
    const { current, state } = LENGTHS[property];
    const step = subject.envelope.step.value;
    const length = ceilToStep(current(subject), step) - steps * step;
    return length > 0 ? state(length) : null;
  });

export type ShapedFlap = 'flap' | 'bottom' | 'sides';

/** A flap cut as little as serves. */
export const leastCut = (property: ShapedFlap): Remedy =>
  fewest(({ envelope }, steps) => {
    const step = envelope.step.value;
    const shape = envelope[property].value;
    const cut = shape?.kind === 'blunt' ? shape.cut : 0;
    const radius = shape?.kind === 'blunt' ? shape.radius : 0;
    return { [property]: { kind: 'blunt', cut: floorToStep(cut, step) + steps * step, radius } };
  });

/** A blunt tip, cut as much as still serves. */
export const mostCut = (property: ShapedFlap): Remedy => smaller(property, 'cut');

/** A rounded tip, or one whose cut is rounded, with as large a radius as still serves. */
export const mostRadius = (property: ShapedFlap): Remedy => smaller(property, 'radius');

/** The face made larger where it is short, each side on the ruler, by as little as serves. */
export const wider = (lacking: (subject: Subject) => Size): Remedy =>
  fewest((subject, steps) => {
    const { face, step } = subject.envelope;
    const { width, height } = lacking(subject);
    const grown = (side: number, lack: number): number =>
      lack > 0 ? ceilToStep(side, step.value) + (steps - 1) * step.value : side;
    return { face: { width: grown(face.value.width, width), height: grown(face.value.height, height) } };
  });

type LengthProperty =
  | 'seam'
  | 'depth'
  | 'shift'
  | 'tape'
  | 'liner'
  | 'blank'
  | 'ease'
  | 'sealMark'
  | 'bottomMark'
  | 'sideMarks';

/** Properties that are one length: what it is now, and how another is stated. */
const LENGTHS: {
  readonly [Name in LengthProperty]: {
    readonly current: (subject: Subject) => number;
    readonly state: (length: number) => Statements;
  };
} = {
  seam: { current: ({ envelope }) => envelope.seam.value, state: (seam) => ({ seam }) },
  depth: { current: ({ envelope }) => envelope.depth.value, state: (depth) => ({ depth }) },
  shift: { current: ({ envelope }) => envelope.shift.value, state: (shift) => ({ shift }) },
  tape: { current: ({ envelope }) => envelope.tape.value, state: (tape) => ({ tape }) },
  liner: { current: ({ envelope }) => envelope.liner.value ?? 0, state: (liner) => ({ liner }) },
  blank: {
    current: ({ folding }) => Math.min(folding.made.blank.width, folding.made.blank.height),
    state: (side) => ({ blank: { width: side, height: side } }),
  },
  ease: {
    current: ({ envelope }) => Math.min(envelope.ease.value.width, envelope.ease.value.height),
    state: (ease) => ({ ease: { width: ease, height: ease } }),
  },
  sealMark: {
    current: ({ folding }) => folding.made.first.seal.alongEdge,
    state: (sealMark) => ({ sealMark }),
  },
  bottomMark: {
    current: ({ folding }) => folding.made.first.bottom.alongEdge,
    state: (bottomMark) => ({ bottomMark }),
  },
  sideMarks: {
    current: ({ folding }) => Math.min(folding.made.first.left.alongEdge, folding.made.first.right.alongEdge),
    state: (mark) => ({ sideMarks: [mark, mark] }),
  },
};

/** How many steps of the ruler are tried, at most; the first few one by one, then ever larger strides. */
const MOST_STEPS = 600;
const ONE_BY_ONE = 4;
const STRIDE = 1.5;

/** The statements with the fewest steps that serve: found by striding out, then halving back. */
function fewest(at: (subject: Subject, steps: number) => Statements | null): Remedy {
  return (trial) => {
    const attempt = (steps: number): Subject | null => {
      const statements = at(trial.subject, steps);
      return statements && trial.attempt(statements);
    };
    let short = 0;
    let enough = 1;
    while (!attempt(enough)) {
      if (enough > MOST_STEPS || !at(trial.subject, enough)) return null;
      short = enough;
      enough = enough < ONE_BY_ONE ? enough + 1 : Math.ceil(enough * STRIDE);
    }
    while (enough - short > 1) {
      const middle = Math.floor((short + enough) / 2);
      if (attempt(middle)) enough = middle;
      else short = middle;
    }
    const statements = at(trial.subject, enough);
    return statements && write(statements)(trial);
  };
}

/** A stated shape with one of its lengths made smaller, on the ruler, by as little as serves. */
const smaller = (property: ShapedFlap, which: 'cut' | 'radius'): Remedy =>
  fewest(({ envelope }, steps) => {
    const step = envelope.step.value;
    const shape = envelope[property].value;
    const now = shape && which in shape ? (shape as { readonly [key in typeof which]: number })[which] : 0;
    const length = ceilToStep(now, step) - steps * step;
    return length > 0 ? { [property]: { ...shape, [which]: length } } : null;
  });
