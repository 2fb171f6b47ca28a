/*
 * sections/: the parts of a cut sheet, one function each.
 * In: the bench (a job, and its lengths in its own units). Out: a section, or null where it has nothing to say.
 * Refuses to know: how a section is set, and in what order sections stand.
 */
import type { Bench } from '../bench.js';
import type { Section, Term } from '../content.js';

/** The usual cautions; the rules of the place come before them. */
export const cautions = ({ envelope }: Bench): Section => ({
  name: 'cautions',
  heading: 'Take care',
  blocks: [
    {
      kind: 'terms',
      terms: [KNIFE, GUILLOTINE, envelope.fasten.value === 'seal' ? HOT_WAX : HOT_TOOLS, LOCAL_RULES],
    },
  ],
});

const KNIFE: Term = {
  label: 'Knife',
  text:
    'A sharp blade, a cutting mat, a safety ruler or steel straightedge. Several light strokes, no hand in line with ' +
    'the blade. Cap it or draw it in at once; worn blades go into a sharps tin.',
};

const GUILLOTINE: Term = {
  label: 'Guillotine',
  text: 'Guard fitted, few sheets at a time, blade latched down when idle. For adults.',
};

const BURNS =
  'Stand hot tools on a heat-proof sheet, air the room, and cool a burn in running water at once.';

const HOT_TOOLS: Term = {
  label: 'Hot tools',
  text: `Should you use hot glue or emboss with heat, keep fingers out of it. ${BURNS}`,
};

const HOT_WAX: Term = {
  label: 'Hot wax',
  text: `Melted wax burns and clings, and its vapour can catch fire: never leave it on the heat. ${BURNS}`,
};

const LOCAL_RULES: Term = {
  label: 'Rules',
  text: 'Those of your own workshop, school or country come before these.',
};

/** For those who only cut. */
export const CUTTING_CAUTIONS: readonly Term[] = [KNIFE, GUILLOTINE, LOCAL_RULES];

/** All of them, for a book of many envelopes. */
export const ALL_CAUTIONS: readonly Term[] = [KNIFE, GUILLOTINE, HOT_TOOLS, HOT_WAX, LOCAL_RULES];
