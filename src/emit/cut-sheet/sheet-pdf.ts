import { place } from '../../drawing/place.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import type { Units } from '../../measure/unit.js';
import type { Size } from '../../recipe/recipe.js';
import type { EmitOptions } from '../emitter.js';
import { paperSize, WIDEST_MARGIN } from '../paper-size.js';
import { openDocument, type PdfDocument, POINTS_PER_MM } from '../pdf/document.js';
import { paint } from '../pdf/paint.js';
import type { Sheet } from './content.js';
import { type Arrange, setSheet } from './page/set-sheet.js';
import type { Item } from './page/strip.js';
import type { Measure, Style } from './page/type.js';

/** Margins in mm; a printer that needs more gets more. */
const MARGIN = 15;

/** A sheet as pages to print and lay on the bench. `arranged` is handed the measure of lettering in drawings (mm). */
export async function sheetPdf(
  sheet: Sheet,
  { title, units }: { readonly title: string; readonly units: Units },
  options: EmitOptions,
  arranged: (drawn: TextMeasure) => Arrange,
): Promise<Uint8Array> {
  const document = await openDocument(options, { title });
  const measure = remembering(
    (text, { size, font }) => document.measure(text, size / POINTS_PER_MM, font) * POINTS_PER_MM,
  );
  const { page: wanted } = options;
  const size = paperSize(wanted === 'fit' ? null : wanted, units);
  const page = {
    width: size.width * POINTS_PER_MM,
    height: size.height * POINTS_PER_MM,
    margin: Math.min(Math.max(MARGIN, options.margin), WIDEST_MARGIN) * POINTS_PER_MM,
  };
  for (const items of setSheet(sheet, page, arranged(document.measure), measure)) {
    document.addPage(size);
    for (const item of items) paintItem(document, item, size);
  }
  return document.finish();
}

/** The same measure, each text measured once: words come back often. */
function remembering(measure: Measure): Measure {
  const known = new Map<Style, Map<string, number>>();
  return (text, style) => {
    const widths = known.get(style) ?? new Map<string, number>();
    known.set(style, widths);
    const width = widths.get(text) ?? measure(text, style);
    widths.set(text, width);
    return width;
  };
}

const INKS: Readonly<Record<Style['ink'], string>> = { full: '#000000', quiet: '#595959' };

/** Width of a hairline, in points. */
const HAIRLINE = 0.3;

function paintItem(document: PdfDocument, item: Item, page: Size): void {
  const { pdf } = document;
  if (item.kind === 'words') {
    pdf.font(item.style.font).fontSize(item.style.size).fillColor(INKS[item.style.ink]);
    pdf.text(document.printable(item.text, item.style.font), item.x, item.y, {
      lineBreak: false,
      baseline: 'alphabetic',
    });
  } else if (item.kind === 'hairline') {
    pdf.undash().lineWidth(HAIRLINE);
    pdf
      .moveTo(item.x, item.y)
      .lineTo(item.x + item.width, item.y)
      .stroke();
  } else {
    pdf.fillColor(INKS.full);
    const [x, y] = [item.x / POINTS_PER_MM, page.height - (item.y + item.height) / POINTS_PER_MM];
    paint(document, place(item.drawing, { x, y }));
  }
}
