import type { Figure } from '../../drawing/figure.js';
import { lineKindOf } from '../../drawing/line-kinds.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { addLayers } from './add-layers.js';
import { addMark } from './add-mark.js';
import { addTextStyles } from './add-text-styles.js';
import { groupPoint } from './group-point.js';

/** For readers that do not know the header's units: a comment, before everything else. */
const COMMENT = '999\nAll lengths in mm: one drawing unit is one millimetre.\n';

/** What the header says of units: 4 is millimetres, measurement 1 metric. */
const MILLIMETRES = 4;
const METRIC = 1;

/**
 * A drawing as the text of a DXF file, in mm. Each layer of the drawing is a layer of the file, with its line type, line
 * weight and colour; closed outlines are one polyline each, their arcs true arcs. Filled surfaces are left out.
 */
export async function renderDxf(figure: Figure, measure: TextMeasure): Promise<string> {
  const { DxfDocument } = await import('@tarikjabiri/dxf');
  // The library numbers what it writes from one counter, begun anew here: nothing may be awaited from here on.
  const document = new DxfDocument();
  const [lower, upper] = [groupPoint({ x: 0, y: 0 }), groupPoint({ x: figure.width, y: figure.height })];
  document.setUnits(MILLIMETRES);
  document.modelSpace.blockRecord.insertionUnits = MILLIMETRES;
  document.header.setVariable('$MEASUREMENT', { 70: METRIC });
  document.header.setVariable('$LASTSAVEDBY', { 1: 'Plica' });
  document.header.setVariable('$EXTMIN', { 10: lower.x, 20: lower.y, 30: 0 });
  document.header.setVariable('$EXTMAX', { 10: upper.x, 20: upper.y, 30: 0 });
  // Dashes are as long as the line types say; line weights are shown.
  document.header.setVariable('$LTSCALE', { 40: 1 });
  document.header.setVariable('$LWDISPLAY', { 290: 1 });
  // What the file opens on; the library would allow each text 100 mm to all sides.
  document.modelSpace.boundingBox = () => ({ tl: { ...lower, y: upper.y }, br: { ...upper, y: lower.y } });
  const lines = figure.drawing.filter((mark) => lineKindOf(mark).width > 0);
  addLayers(document, lines);
  addTextStyles(document);
  for (const mark of lines) addMark(document.modelSpace, mark, measure);
  return `${COMMENT}${document.stringify()}\n`;
}
