import type { Ink } from '../../drawing/inks.js';
import type { PdfDocument } from './document.js';

/** A colour that a press prints from a plate of its own (Separation, ISO 32000-1, 8.6.6.4), and the ink that shows it elsewhere. */
export interface SpotColour {
  readonly name: string;
  readonly ink: Ink;
}

/** Paints in a spot colour onto the page begun last, over what lies there: nothing beneath is knocked out. */
export type InSpotColour = (name: string, paint: () => void) => void;

/** Declares a document's spot colours. */
export function declareSpotColours({ pdf }: PdfDocument, colours: readonly SpotColour[]): InSpotColour {
  for (const { name, ink } of colours) pdf.addSpotColor(name, ...ink.press);
  const overprint = pdf.ref({ Type: 'ExtGState', OP: true, op: true, OPM: 1 });
  overprint.end();
  return (name, paint) => {
    pdf.save();
    pdf.page.ext_gstates['Overprint'] = overprint;
    pdf.addContent('/Overprint gs');
    pdf.strokeColor(name).fillColor(name);
    paint();
    pdf.restore();
  };
}
