import type { Figure } from '../../drawing/figure.js';
import { lineKindOf } from '../../drawing/line-kinds.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import { addLayers } from './add-layers.js';
import { addMark } from './add-mark.js';
import { addTextStyles } from './add-text-styles.js';
import { groupPoint } from './group-point.js';

/** For readers that do not know the header's units: a comment, before everything else. */
const COMMENT = '999\nAll lengths in mm: one drawing unit is one millimetre.\n';

const MILLIMETRES = 4;

/** What the header says of every drawing, by variable and group. */
const HEADER: Readonly<Record<string, Readonly<Record<number, number | string>>>> = {
  // Text is UTF-8 in this version; some readers believe it only where a code page is named too.
  $DWGCODEPAGE: { 3: 'ANSI_1252' },
  $LASTSAVEDBY: { 1: 'Plica' },
  $INSUNITS: { 70: MILLIMETRES },
  // Metric.
  $MEASUREMENT: { 70: 1 },
  // Dashes are as long as the line types say, and lines are shown as wide as they are.
  $LTSCALE: { 40: 1 },
  $LWDISPLAY: { 290: 1 },
};

/**
 * A drawing as the text of a DXF file, in mm. Each layer of the drawing is a layer of the file, with its line type, line
 * weight and colour; closed outlines are one polyline each, their arcs true arcs. Filled surfaces are left out.
 */
export async function renderDxf(figure: Figure, measure: TextMeasure): Promise<string> {
  const { DxfDocument } = await import('@tarikjabiri/dxf');
  // The library numbers what it writes from one counter, begun anew here: nothing may be awaited from here on.
  const document = new DxfDocument();
  document.modelSpace.blockRecord.insertionUnits = MILLIMETRES;
  for (const [name, groups] of Object.entries(HEADER)) document.header.setVariable(name, groups);
  const [lower, upper] = [groupPoint({ x: 0, y: 0 }), groupPoint({ x: figure.width, y: figure.height })];
  document.header.setVariable('$EXTMIN', { 10: lower.x, 20: lower.y, 30: 0 });
  document.header.setVariable('$EXTMAX', { 10: upper.x, 20: upper.y, 30: 0 });
  // What the file opens on; the library would allow each text 100 mm to all sides.
  document.modelSpace.boundingBox = () => ({ tl: { ...lower, y: upper.y }, br: { ...upper, y: lower.y } });
  const lines = figure.drawing.filter((mark) => lineKindOf(mark).width > 0);
  addLayers(document, lines);
  addTextStyles(document);
  for (const mark of lines) addMark(document.modelSpace, mark, measure);
  return `${COMMENT}${document.stringify()}\n`;
}
