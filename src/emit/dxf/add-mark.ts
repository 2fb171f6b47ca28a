import type { CommonEntityOptions, DxfBlock, DxfInterface, LWPolylineFlags } from '@tarikjabiri/dxf';
import type { Mark, Shape } from '../../drawing/drawing.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { addLettering } from './add-lettering.js';
import { groupPoint } from './group-point.js';
import { type Look, lookOf } from './look.js';
import { vertices } from './vertices.js';
import { weigh } from './weigh.js';

const CLOSED: LWPolylineFlags = 1;

/** Draws a mark on its layer, as the layer is drawn; a sample as what it shows. */
export function addMark(space: DxfBlock, { layer, like, shape }: Mark, measure: TextMeasure): void {
  const entity = addShape(space, shape, { layerName: layer, ...(like && ownLook(lookOf(like))) }, measure);
  if (like) weigh(entity, lookOf(like).weight);
}

const ownLook = ({ lineType, colour, trueColour }: Look): CommonEntityOptions => ({
  lineType,
  colorNumber: colour,
  ...(trueColour !== undefined && { trueColor: `${trueColour}` }),
});

function addShape(
  space: DxfBlock,
  shape: Shape,
  how: CommonEntityOptions,
  measure: TextMeasure,
): DxfInterface {
  switch (shape.kind) {
    case 'line':
      return space.addLine(groupPoint(shape.from), groupPoint(shape.to), how);
    case 'polyline':
      return space.addLWPolyline(
        shape.points.map((point) => ({ point: groupPoint(point) })),
        how,
      );
    case 'path':
      return space.addLWPolyline(vertices(shape.path), { ...how, flags: CLOSED });
    case 'text':
      return addLettering(space, shape, how, measure);
  }
}
