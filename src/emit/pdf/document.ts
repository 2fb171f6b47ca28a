/*
 * emit/pdf/: drawings to PDF pages, true to size.
 * In: Drawings in mm on a page (y up), fonts as bytes. Out: the bytes of a file, the same for the same input.
 * Refuses to know: envelopes. The PDF library is imported here alone, and only once a file is wanted.
 */
import type { Box } from '../../drawing/box.js';
import type { Weight } from '../../drawing/drawing.js';
import type { TextMeasure } from '../../drawing/text-measure.js';
import type { Size } from '../../recipe/recipe.js';
import type { EmitOptions } from '../emitter.js';
import { text } from '../xml.js';
import { measuredByWords } from './measured-by-words.js';
import { printable } from './printable.js';

/** Points (1/72 in, the unit of PDF) in a mm. */
export const POINTS_PER_MM = 72 / 25.4;

/** The longest page side that common viewers open, 200 in, in mm. */
export const LONGEST_PAGE = 200 * 25.4;

/** A document being written, page after page. */
export interface PdfDocument {
  /** The library's document, drawing in points with y down; its fonts are named by weight. */
  readonly pdf: PDFKit.PDFDocument;
  readonly measure: TextMeasure;
  /** A line of text with every character that the font lacks replaced: what is measured is what is painted. */
  readonly printable: (text: string, weight: Weight) => string;
  /** Begins a page of a size in mm; `trim` is what remains of it once it is cut, where that is less. */
  readonly addPage: (size: Size, trim?: Box) => void;
  /** Ends the document; nothing can be added after. */
  readonly finish: () => Promise<Uint8Array>;
}

export interface About {
  readonly title: string;
  readonly author?: string | null;
  /** On unless said otherwise; off, the operators can be read in the file. */
  readonly compress?: boolean;
  /** Whether viewers are asked to print at true size. On unless said otherwise. */
  readonly trueSize?: boolean;
}

/** A document that nobody has begun to read: the library's own, and its fonts. */
export type Begun = Pick<PdfDocument, 'pdf' | 'measure' | 'printable'>;

/** Begins a document whose fonts are embedded and whose dates are fixed. The library keeps no widths: they would grow with the text. */
export async function beginDocument(
  options: Pick<EmitOptions, 'date' | 'fonts'>,
  { title, author = null, compress = true, trueSize = true }: About,
): Promise<Begun> {
  const { default: Document } = await import('pdfkit');
  const pdf = new Document({
    pdfVersion: '1.7',
    autoFirstPage: false,
    compress,
    lang: 'en',
    fontLayoutCache: false,
    // No standard font: only the embedded ones are ever used.
    font: '',
    info: {
      Title: title,
      ...(author === null ? {} : { Author: author }),
      Creator: 'Plica',
      CreationDate: options.date,
      ModDate: options.date,
    },
  });
  pdf._root.data['ViewerPreferences'] = pdf.ref({
    ...(trueSize ? { PrintScaling: 'None' } : {}),
    DisplayDocTitle: true,
  });
  pdf.registerFont('regular', options.fonts.regular);
  pdf.registerFont('bold', options.fonts.bold);
  spellOutTitle(pdf, title, author);
  const shown = (text: string, weight: Weight): string => {
    pdf.font(weight);
    return printable(text, (codePoint) => pdf._font.font.hasGlyphForCodePoint(codePoint));
  };
  return {
    pdf,
    printable: shown,
    measure: measuredByWords((text, weight) =>
      pdf.font(weight).fontSize(1).widthOfString(shown(text, weight)),
    ),
  };
}

/** Opens a document that is kept whole until it is finished. */
export async function openDocument(
  options: Pick<EmitOptions, 'date' | 'fonts'>,
  about: About,
): Promise<PdfDocument> {
  const begun = await beginDocument(options, about);
  const { pdf } = begun;
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const written = new Promise<Uint8Array>((resolve, reject) => {
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on('error', reject);
  });
  return {
    ...begun,
    addPage: ({ width, height }, trim) => {
      pdf.addPage({ size: [width * POINTS_PER_MM, height * POINTS_PER_MM], margin: 0 });
      if (trim) {
        const corners = [trim.x, trim.y, trim.x + trim.width, trim.y + trim.height];
        Object.assign(pdf.page.dictionary.data, { TrimBox: corners.map((length) => length * POINTS_PER_MM) });
      }
    },
    finish: () => {
      pdf.end();
      return written;
    },
  };
}

/**
 * The library sets the title into its XML metadata as it stands, where `&` would end the reading of it. It does so after it
 * has written the title elsewhere.
 */
function spellOutTitle(pdf: PDFKit.PDFDocument, title: string, author: string | null): void {
  const { endMetadata } = pdf;
  pdf.endMetadata = () => {
    pdf.info.Title = text(title);
    if (author !== null) pdf.info.Author = text(author);
    endMetadata.call(pdf);
  };
}
