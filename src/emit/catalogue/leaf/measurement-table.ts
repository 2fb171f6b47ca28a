import { type Block, paragraph } from '../../../drawing/block.js';
import type { TextMeasure } from '../../../drawing/text-measure.js';
import { typeset } from '../../cut-sheet/page/type.js';
import type { Item } from '../page.js';
import type { Measurement } from './measurements.js';
import { SMALL } from '../sizes.js';
import { runsOf, type Strip } from '../strip.js';

/** Between rows, and between columns, in mm. */
const ROW_GAP = 0.9;
const GUTTER = 1.5;
const LABEL = 16;

/** Measurements below each other: what it is, in the recipe's units, in the other system. */
export function measurementTable(all: readonly Measurement[], width: number, measure: TextMeasure): Strip {
  const column = (width - LABEL - 2 * GUTTER) / 2;
  const [first, second] = [LABEL + GUTTER, LABEL + 2 * GUTTER + column];
  const set = (text: string, room: number, weight: 'regular' | 'bold' = 'regular'): Block =>
    paragraph(typeset(text), room, SMALL, measure, weight);
  const rows = all.map(({ label, value }) => {
    const one = typeof value === 'string';
    const cells = {
      label: set(label, LABEL),
      read: set(one ? value : value.read, one ? width - first : column, 'bold'),
      other: one ? null : set(value.other, column),
    };
    return {
      ...cells,
      height: Math.max(...[cells.label, cells.read, cells.other].map((cell) => cell?.height ?? 0)),
    };
  });
  return {
    height: rows.reduce((sum, { height }) => sum + height + ROW_GAP, -ROW_GAP),
    items: ({ x, y }) => {
      let down = y;
      const set = rows.map(({ label, read, other, height }) => {
        const at = (left: number) => ({ x: x + left, y: down });
        const cells = [
          { heading: 'row' as const, runs: runsOf(label, at(0), measure, 'quiet') },
          { heading: null, runs: runsOf(read, at(first), measure) },
          ...(other ? [{ heading: null, runs: runsOf(other, at(second), measure, 'quiet') }] : []),
        ];
        down -= height + ROW_GAP;
        return cells;
      });
      return [{ role: 'Table', rows: set }] satisfies readonly Item[];
    },
  };
}
