import type { Problem } from '../diagnostics/problem.js';
import { pointedHeight } from '../folding/flaps.js';
import type { FlapName } from '../folding/folding.js';
import { fits } from '../measure/slack.js';
import { largestRadius } from '../plane/largest-radius.js';
import type { FlapShape } from '../recipe/recipe.js';
import { restate } from '../recipe/restate.js';
import { closureMargin } from './flap-closes.js';
import { SHAPED_FLAPS } from './flaps-named.js';
import { folded } from './folded.js';
import { isShort } from './margin.js';
import { place } from './place.js';
import { leaveOut, mostCut, mostRadius, type ShapedFlap } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { lengthMargin } from './seam-holds.js';
import { exact } from './words.js';

const problem: Problem = {
  name: 'flap-shape',
  severity: 'error',
  meaning: 'A flap is given a tip that it cannot have, or cut so short that it no longer closes or holds.',
  matters: 'The tip would be drawn otherwise than stated, or the envelope would not close.',
  remedy: 'Take a smaller radius, or cut less off the tip.',
  example: {
    wrong: `units mm

envelope tide-card {
  card: A6
  flap: rounded 150
}
`,
    mended: `units mm

envelope tide-card {
  card: A6
  flap: rounded 30
}
`,
  },
};

export const flapShape: Rule = { problem, quietAfter: ['square-blank'], check };

/** Each stated tip that does not fit its flap, or that alone costs the closure or the length of the seams. */
function check(subject: Subject): readonly Finding[] {
  const { envelope } = subject;
  return SHAPED_FLAPS.flatMap(({ property, flaps, name }): readonly Finding[] => {
    const shape = envelope[property].value;
    if (!shape || shape.kind === 'pointed') return [];
    const wrong = tooMuch(subject, flaps, shape) ?? cost(subject, property);
    if (!wrong) return [];
    return [
      {
        problem,
        about: property,
        message: `the ${name} of ${envelope.name} ${flaps.length > 1 ? 'are' : 'is'} ${wrong.message}`,
        ...place(envelope, [property]),
        label: wrong.label,
        why: wrong.why,
        remedies: [mostRadius(property), mostCut(property), leaveOut(property)],
      },
    ];
  });
}

interface Wrong {
  readonly message: string;
  readonly label: string;
  readonly why: string;
}

/** A cut that leaves no flap, or a radius larger than its edges allow. */
function tooMuch({ envelope, folding }: Subject, flaps: readonly FlapName[], shape: FlapShape): Wrong | null {
  const height = Math.min(...flaps.map((flap) => pointedHeight(folding.made, flap)));
  if (shape.kind === 'blunt' && fits(height, shape.cut)) {
    return {
      message: 'cut away altogether',
      label: `${exact(envelope, shape.cut)} off a flap ${exact(envelope, height)} high`,
      why: `a cut takes less than the flap's height of ${exact(envelope, height)}`,
    };
  }
  if (shape.kind === 'pointed' || shape.radius === 0) return null;
  const largest = Math.min(...flaps.map((flap) => largestRadius(folding.flapRegions[flap])));
  if (fits(shape.radius, largest)) return null;
  return {
    message: 'rounded more than its edges allow',
    label: `radius ${exact(envelope, shape.radius)}`,
    why: `the edges beside the tip take a radius of at most ${exact(envelope, largest)}`,
  };
}

/** What the cut alone costs: the margin is short with it, and would not be without. */
function cost(subject: Subject, property: ShapedFlap): Wrong | null {
  const { envelope } = subject;
  const lost = [closureMargin, lengthMargin].filter((margin) => isShort(margin, subject));
  if (lost.length === 0) return null;
  const without = folded(restate(envelope, { [property]: null }));
  const margin = lost.find((margin) => !isShort(margin, without));
  if (!margin) return null;
  const [left, whole] = [margin.made(subject) ?? 0, margin.made(without) ?? 0];
  return {
    message: `cut so short that ${margin === closureMargin ? 'the envelope does not close' : 'the seams do not hold'}`,
    label: `leaves ${margin.name} ${exact(envelope, left)}`,
    why: `${margin.name} is ${exact(envelope, left)}, without this shape ${exact(envelope, whole)}; ${margin.because(subject)}`,
  };
}
