import type { Offcut, Plan, PlannedLayout, PlannedPaper } from '../../plan/plan.js';
import type { Outcome, Step as Cut } from '../../plan/layout/cutting-order.js';
import { printShort } from '../../measure/number.js';
import { sameLength } from '../../measure/slack.js';
import type { Size } from '../../recipe/recipe.js';
import { counted } from '../../text/counted.js';
import type { Block, Section, Sheet, Step, Term } from '../cut-sheet/content.js';
import { both, type Lengths } from '../cut-sheet/lengths.js';
import { CUTTING_CAUTIONS } from '../cut-sheet/sections/cautions.js';
import { lengthsOf, money, named, piecesIn, sheetsOf, titleOf } from './plan-words.js';

/** What a section is about: a layout has a picture. */
export type PlanSection = 'envelopes' | 'paper' | 'layout' | 'all' | 'cautions';

/** A batch as a sheet for the bench: what is made, what is taken of each paper, every cut in its order, what it comes to. */
export function planSheet(plan: Plan): Sheet<PlanSection> {
  const say = lengthsOf(plan);
  return {
    name: plan.batch.name,
    title: plan.batch.title,
    summary: summary(plan),
    notes: [],
    sections: [
      envelopes(plan, say),
      ...plan.papers.flatMap((paper) => [
        ofPaper(paper, say),
        ...paper.layouts.map((layout, index) => ofLayout(layout, index, paper, say)),
      ]),
      inAll(plan, say),
      { name: 'cautions', heading: 'Take care', blocks: [{ kind: 'terms', terms: CUTTING_CAUTIONS }] },
    ],
  };
}

function summary({ batch, orders, papers }: Plan): string {
  const asked = orders.reduce((sum, { order }) => sum + order.count, 0);
  const spare = orders.reduce((sum, { cut }) => sum + cut, 0) - asked;
  const more =
    spare > 0 ? `, ${spare} more in case some go wrong (${printShort(batch.spoilage * 100, 2)} %)` : '';
  return `${counted(asked, 'envelope')}${more}, from ${papers.map(sheetsOf).join(' and ')}.`;
}

const envelopes = ({ orders }: Plan, say: Lengths): Section<PlanSection> => ({
  name: 'envelopes',
  heading: 'What is made',
  blocks: [
    {
      kind: 'table',
      headings: ['Envelope', 'Asked', 'Cut', 'Blank', 'Paper'],
      rows: orders.map(({ order: { envelope, facts, count }, cut }) => [
        titleOf(envelope),
        String(count),
        String(cut),
        say.readSize(facts.blank),
        envelope.paper.value?.name ?? '',
      ]),
    },
  ],
});

function ofPaper(planned: PlannedPaper, say: Lengths): Section<PlanSection> {
  const { paper, sheet, sheets, bound, rows, used, cost, short } = planned;
  const terms: readonly (Term | null)[] = [
    {
      label: 'Sheet',
      text: `${both(say.readSize(sheet))}${paper.title === paper.name ? '' : `, ${paper.title}`}`,
    },
    {
      label: 'Take',
      text: `${counted(sheets, 'sheet')}, cut in ${counted(planned.layouts.length, 'way')}; ${printShort(used * 100, 0)} % of the paper becomes envelopes and linings`,
    },
    {
      label: 'Least',
      text:
        bound.sheets === sheets
          ? `no way of cutting takes fewer than ${sheets} (by area alone: ${bound.area})`
          : `no way of cutting takes fewer than ${bound.sheets} (by area alone: ${bound.area}); whether ${sheets - 1} would do is not known`,
    },
    { label: 'Plain rows', text: `each size by itself would take ${rows}` },
    paper.stock === null
      ? null
      : {
          label: 'In stock',
          text: short ? `${paper.stock}: ${short} too few` : `${paper.stock}: enough`,
        },
    cost === null ? null : { label: 'Cost', text: money(cost) },
  ];
  return {
    name: 'paper',
    heading: `From ${paper.name}`,
    blocks: [{ kind: 'terms', terms: terms.filter((term) => term !== null) }],
  };
}

function ofLayout(
  layout: PlannedLayout,
  index: number,
  planned: PlannedPaper,
  say: Lengths,
): Section<PlanSection> {
  const { sheets, steps, offcuts } = layout;
  const which = planned.layouts.length > 1 ? `, layout ${index + 1}` : '';
  const kept: readonly Block[] =
    offcuts.length === 0
      ? []
      : [
          {
            kind: 'terms',
            terms: [{ label: 'Keep', text: offcuts.map((offcut) => keep(offcut, say)).join('; ') }],
          },
        ];
  return {
    name: 'layout',
    heading: `${planned.paper.name}${which}: ${counted(sheets, 'sheet')} of ${piecesIn(layout, planned)}`,
    blocks: [
      steps.length === 0
        ? { kind: 'paragraph', text: 'The sheet is the piece: nothing is cut.' }
        : { kind: 'steps', steps: steps.map((cut) => step(cut, planned, say)) },
      ...kept,
    ],
  };
}

/** One setting of ruler or gauge: what is cut, how often, and what that leaves. */
function step(
  { number, part, parts, divides, at, cuts, leaves }: Cut,
  planned: PlannedPaper,
  say: Lengths,
): Step {
  const what = number === 1 ? 'the sheet' : parts === 1 ? 'the part' : `each of ${parts} parts`;
  const side = sameLength(part.width, part.height)
    ? 'either side'
    : `its side of ${both(say.read(part[divides]))}`;
  const often = cuts === 1 ? 'one cut' : `${cuts} cuts, each from the last`;
  return {
    title: `Set ${say.read(at).read} (${say.read(at).other})`,
    text: `Cut ${what}, ${say.readSize(part).read.replaceAll(' ', ' ')}, along ${side}: ${often}. ${leaves
      .map((outcome) => left(outcome, planned, say))
      .join('; ')}.`,
  };
}

const left = ({ size, count, is }: Outcome, { pieces }: PlannedPaper, say: Lengths): string =>
  `${count} of ${both(say.readSize(size))}: ${
    is.kind === 'part'
      ? `go on with step ${is.step}`
      : is.kind === 'piece'
        ? named(pieces[is.of]?.names ?? [])
        : 'left over'
  }`;

const keep = ({ width, height, count, serves }: Offcut, say: Lengths): string =>
  `${count} of ${both(say.readSize({ width, height } satisfies Size))}${
    serves.length === 0 ? '' : `, enough for ${listed(serves)}`
  }`;

/** At most so many envelopes are named that an offcut would serve. */
const MOST_NAMED = 4;

const listed = (names: readonly string[]): string =>
  names.length <= MOST_NAMED
    ? names.join(', ')
    : `${names.slice(0, MOST_NAMED).join(', ')} and ${names.length - MOST_NAMED} more`;

function inAll({ tape, cost, mass, papers }: Plan, say: Lengths): Section<PlanSection> {
  const terms: readonly (Term | null)[] = [
    { label: 'Sheets', text: papers.map(sheetsOf).join(', ') },
    tape.length === 0
      ? null
      : {
          label: 'Tape or glue',
          text: tape
            .map(({ width, length }) => `${printShort(length / 1000, 2)} m, ${both(say.exact(width))} wide`)
            .join('; '),
        },
    { label: 'Cost', text: cost === null ? 'not known: a paper has no price' : money(cost) },
    {
      label: 'Mass',
      text:
        mass === null
          ? 'not known: a paper has no weight'
          : `${printShort(mass, 0)} g of envelopes, without what goes in`,
    },
  ];
  return {
    name: 'all',
    heading: 'In all',
    blocks: [{ kind: 'terms', terms: terms.filter((term) => term !== null) }],
  };
}
