// What the published types of pdfkit leave out and we use.
export {};

declare global {
  namespace PDFKit.Mixins {
    interface PDFVector {
      /** Dash, gap, dash, gap …, in points. */
      dash(lengths: readonly number[]): this;
    }
  }
  namespace PDFKit {
    interface PDFDocument {
      /** The document's catalogue (ISO 32000-1, 7.7.2). */
      readonly _root: { readonly data: Record<string, unknown> };
      /** The font in use; `font` is its parsed file, absent for the fourteen standard fonts. */
      readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
    }
  }
}
