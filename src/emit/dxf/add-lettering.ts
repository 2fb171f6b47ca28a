import type { CommonEntityOptions, DxfBlock, DxfInterface, TextHorizontalAlignment } from '@tarikjabiri/dxf';
import type { Lettering } from '../../drawing/drawing.js';
import { CAP_HEIGHT, type TextMeasure } from '../../drawing/text-measure.js';
import { groupNumber, groupPoint } from './group-point.js';
import { textValue } from './text-value.js';

/** How the format counts where a text is held on its baseline, and how much of the text lies before that. */
const ANCHORS: Readonly<Record<Lettering['anchor'], { alignment: TextHorizontalAlignment; before: number }>> =
  {
    start: { alignment: 0, before: 0 },
    middle: { alignment: 1, before: 0.5 },
    end: { alignment: 2, before: 1 },
  };

/** A line of text. Its left end is stated too, for readers that know no other way to place it. */
export function addLettering(
  space: DxfBlock,
  { text, at, size, anchor, angleDegrees, weight }: Lettering,
  how: CommonEntityOptions,
  measure: TextMeasure,
): DxfInterface {
  const { alignment, before } = ANCHORS[anchor];
  const shift = before * measure(text, size, weight);
  const angle = (angleDegrees * Math.PI) / 180;
  const left = { x: at.x - shift * Math.cos(angle), y: at.y - shift * Math.sin(angle) };
  const entity = space.addText(groupPoint(left), groupNumber(size * CAP_HEIGHT), textValue(text), {
    ...how,
    rotation: groupNumber(angleDegrees),
    horizontalAlignment: alignment,
    ...(before > 0 ? { secondAlignmentPoint: groupPoint(at) } : {}),
  });
  entity.textStyle = weight;
  return entity;
}
