// What the published types of pdfkit leave out and we use.
export {};

declare global {
  namespace PDFKit.Mixins {
    interface PDFVector {
      /** Dash, gap, dash, gap …, in points. */
      dash(lengths: readonly number[]): this;
    }
    interface PDFColor {
      /** A colour that `strokeColor` and `fillColor` then take by name; its alternative in per cent. */
      addSpotColor(name: string, cyan: number, magenta: number, yellow: number, black: number): this;
    }
  }
  namespace PDFKit {
    interface PDFDocument {
      /** The document's catalogue (ISO 32000-1, 7.7.2). */
      readonly _root: { readonly data: Record<string, unknown> };
      /** The font in use; `font` is its parsed file, absent for the fourteen standard fonts. */
      readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
      /** Writes the metadata (XMP); the library does so while the document ends. */
      endMetadata(): void;
    }
    interface PDFKitReference {
      /** Writes the object out; a document with an object left open never ends. */
      end(): void;
    }
    interface PDFPage {
      /** What the page's operators name (ISO 32000-1, 7.8.3). */
      readonly resources: { readonly data: Record<string, object | undefined> };
    }
  }
}
