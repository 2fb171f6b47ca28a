import { ceilToStep } from '../measure/ruler.js';
import type { Paper, Size } from '../recipe/recipe.js';
import type { CompiledOrder } from './compiled-batch.js';

/** What is cut for one envelope: its blank, and the box of its lining if it has one, up to the ruler's next graduation. */
export interface Part {
  readonly what: 'blank' | 'lining';
  readonly size: Size;
  readonly paper: Paper | null;
}

export const partsOf = ({
  envelope,
  facts: { blank, liner },
}: Pick<CompiledOrder, 'envelope' | 'facts'>): readonly Part[] => [
  { what: 'blank', size: blank, paper: envelope.paper.value },
  ...(liner
    ? [
        {
          what: 'lining' as const,
          size: {
            width: ceilToStep(liner.width, envelope.step.value),
            height: ceilToStep(liner.height, envelope.step.value),
          },
          paper: envelope.linerPaper.value,
        },
      ]
    : []),
];
