import type { DxfDocument } from '@tarikjabiri/dxf';
import type { Drawing, Layer } from '../../drawing/drawing.js';
import { LINE_KINDS } from '../../drawing/line-kinds.js';
import { groupNumber } from './group-point.js';
import { lookOf } from './look.js';
import { weigh } from './weigh.js';

/** Lays down the layers that a drawing uses, each by its own name, and the line types of all its lines. */
export function addLayers(document: DxfDocument, drawing: Drawing): void {
  // Line types first: the library lets a layer only name one that is there.
  for (const layer of new Set(drawing.map((mark) => mark.like ?? mark.layer))) addLineType(document, layer);
  for (const layer of new Set(drawing.map((mark) => mark.layer))) addLayer(document, layer);
}

/** A line type named like the layer: dashes positive, gaps negative, in mm. */
function addLineType({ tables }: DxfDocument, layer: Layer): void {
  const { iso, dashes } = LINE_KINDS[layer];
  if (dashes.length === 0) return;
  const elements = dashes.map((length, index) => groupNumber(index % 2 === 0 ? length : -length));
  tables.addLType(layer, `ISO 128-2, line ${iso}`, elements);
}

function addLayer({ tables }: DxfDocument, layer: Layer): void {
  const { lineType, weight, colour, trueColour } = lookOf(layer);
  const record = tables.addLayer(layer, colour, lineType);
  if (trueColour !== undefined) record.trueColor = trueColour;
  weigh(record, weight);
}
