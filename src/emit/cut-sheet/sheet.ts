import { sameLength } from '../../measure/slack.js';
import type { Job } from '../emitter.js';
import { bench, type Bench } from './bench.js';
import type { CutSheet, Section } from './content.js';
import { both } from './lengths.js';
import { cautions } from './sections/cautions.js';
import { corners } from './sections/corners.js';
import { cut } from './sections/cut.js';
import { dryFold } from './sections/dry-fold.js';
import { findings } from './sections/findings.js';
import { finished } from './sections/finished.js';
import { margins } from './sections/margins.js';
import { marks } from './sections/marks.js';
import { steps } from './sections/steps.js';
import { tape } from './sections/tape.js';
import { zones } from './sections/zones.js';

/** The figures of the work first, then the cautions, the work, and what there is to spare. One that has nothing to say is left out. */
const SECTIONS: readonly ((bench: Bench) => Section | null)[] = [
  findings,
  cut,
  marks,
  corners,
  zones,
  tape,
  dryFold,
  cautions,
  steps,
  margins,
  finished,
];

/** What a person needs to know to make this envelope by hand. */
export function cutSheet(job: Job): CutSheet {
  const { envelope } = job;
  const at = bench(job);
  return {
    name: envelope.name,
    title: envelope.title.value,
    summary: summary(at),
    notes: envelope.note.value,
    sections: SECTIONS.map((section) => section(at)).filter((section) => section !== null),
  };
}

/** `A flat envelope for a card 8 1/2 × 5 1/2 in (…), hinged on a long edge.` */
function summary({ envelope, facts, say }: Bench): string {
  const { width, height } = envelope.card.value;
  const kind = facts.depth > 0 ? `A box envelope ${both(say.exact(facts.depth))} deep` : 'A flat envelope';
  const edge = sameLength(width, height)
    ? 'an edge'
    : envelope.opens.value === 'side'
      ? 'a long edge'
      : 'a short edge';
  return `${kind} for a card ${both(say.readSize({ width, height }))}, hinged on ${edge}.`;
}
