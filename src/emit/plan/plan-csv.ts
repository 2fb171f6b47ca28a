import type { Plan } from '../../plan/plan.js';
import { BYTE_ORDER_MARK, csvLine, type Field } from '../csv-line.js';
import { lengthsOf } from './plan-words.js';

const HEADINGS = [
  'batch',
  'paper',
  'layout',
  'sheets',
  'step',
  'part_width_mm',
  'part_height_mm',
  'parts',
  'setting',
  'setting_mm',
  'cuts',
  'leaves',
  'leaves_width_mm',
  'leaves_height_mm',
  'leaves_count',
] as const;

/** A line for each thing that a cut leaves, in the order of the cuts; figures are of one sheet of its layout. */
export function planCsv(plans: readonly Plan[]): string {
  const rows = plans.flatMap((plan) => {
    const say = lengthsOf(plan);
    return plan.papers.flatMap(({ paper, layouts, pieces }) =>
      layouts.flatMap(({ sheets, steps }, index) =>
        steps.flatMap(({ number, part, parts, at, cuts, leaves }) =>
          leaves.map(({ size, count, is }): readonly Field[] => [
            plan.batch.name,
            paper.name,
            index + 1,
            sheets,
            number,
            part.width,
            part.height,
            parts,
            say.read(at).read,
            at,
            cuts,
            is.kind === 'part'
              ? `step ${is.step}`
              : is.kind === 'piece'
                ? (pieces[is.of]?.names.join(' or ') ?? '')
                : 'left over',
            size.width,
            size.height,
            count,
          ]),
        ),
      ),
    );
  });
  return BYTE_ORDER_MARK + [HEADINGS, ...rows].map(csvLine).join('');
}
