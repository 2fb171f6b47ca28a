import type { Problem } from '../diagnostics/problem.js';
import { fits, NEARLY } from '../measure/slack.js';
import type { Size } from '../recipe/recipe.js';
import { place } from './place.js';
import { leaveOut, most } from './remedy.js';
import type { Finding, Rule, Subject } from './rule.js';
import { exact, readSize } from './words.js';

const problem: Problem = {
  name: 'sheet-holds-blank',
  severity: 'error',
  meaning:
    'The blank is larger than the paper’s sheet, or takes so much of it that the sheet should be measured first.',
  matters: 'It cannot be cut in one piece.',
  remedy: 'Take a larger sheet, a smaller seam, or fix the blank at what the sheet gives.',
  example: {
    wrong: `units in

paper office { sheet: letter }

envelope tide-table {
  card: 8 1/2 x 5 1/2
  paper: office
}
`,
    mended: `units in

paper kraft { sheet: 12 x 12 }

envelope tide-table {
  card: 8 1/2 x 5 1/2
  paper: kraft
}
`,
  },
  source: 'how far a sheet may be off: ISO 216',
};

export const sheetHoldsBlank: Rule = { problem, quietAfter: [], check };

/** A blank that its sheet cannot hold, or that takes so much of a side that the sheet may have been cut too short. */
function check(subject: Subject): readonly Finding[] {
  const { envelope, facts } = subject;
  const paper = envelope.paper.value;
  const sheet = paper?.sheet;
  if (!paper || !sheet) return [];
  const { at, related } = place(envelope, ['blank', 'paper', 'seam']);
  const told = {
    span: sheet.origin.span,
    text: `the sheet of ${paper.name}, ${readSize(envelope, sheet.value)}`,
  };
  const common = {
    problem,
    at,
    related: [told, ...related],
    remedies: [most('blank'), most('seam'), leaveOut('blank')],
  };
  const blank = readSize(envelope, facts.blank);
  if (!holds(sheet.value, facts.blank)) {
    return [
      {
        ...common,
        about: 'sheet',
        message: `the blank of ${envelope.name} is larger than a sheet of ${paper.name}`,
        label: `needs ${blank}`,
        why: `blank ${blank}, sheet ${readSize(envelope, sheet.value)}`,
        advice: `use a paper with a sheet of at least ${blank}`,
      },
    ];
  }
  const barely = barelyHeld(sheet.value, facts.blank);
  if (!barely) return [];
  return [
    {
      ...common,
      about: 'cutting',
      severity: 'note',
      message: `the blank of ${envelope.name} takes the whole side of a sheet of ${paper.name}: measure the sheet before you cut`,
      label: `leaves ${exact(envelope, barely.spare)} of the side`,
      why: `a sheet's side may be ${exact(envelope, barely.tolerance)} short at this length (ISO 216)`,
    },
  ];
}

/** Whether a sheet holds a blank, either way round. */
const holds = (sheet: Size, blank: Size): boolean =>
  (fits(blank.width, sheet.width) && fits(blank.height, sheet.height)) ||
  (fits(blank.width, sheet.height) && fits(blank.height, sheet.width));

/** The side of a sheet that a blank fills to within what ISO 216 lets the sheet be short. */
function barelyHeld(sheet: Size, blank: Size): { readonly spare: number; readonly tolerance: number } | null {
  const [short, long] = [Math.min(sheet.width, sheet.height), Math.max(sheet.width, sheet.height)];
  const pairs = [
    { side: short, taken: Math.min(blank.width, blank.height) },
    { side: long, taken: Math.max(blank.width, blank.height) },
  ];
  const barely = pairs
    .map(({ side, taken }) => ({ spare: side - taken, tolerance: cuttingTolerance(side) }))
    .filter(({ spare, tolerance }) => spare < tolerance - NEARLY);
  return barely[0] ?? null;
}

/** How much a sheet's side may be off, in mm: ISO 216:2007, tolerances (±1.5 to 150, ±2 to 600, ±3 above). */
const cuttingTolerance = (side: number): number => CUTTING.find(({ upTo }) => side <= upTo)?.off ?? 3;

const CUTTING = [
  { upTo: 150, off: 1.5 },
  { upTo: 600, off: 2 },
];
