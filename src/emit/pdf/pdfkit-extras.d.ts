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
      readonly _root: { readonly id: number; readonly data: Record<string, unknown> };
      /** The font in use; `font` is its parsed file, absent for the fourteen standard fonts. */
      readonly _font: {
        /** As pages name it. */
        readonly id: string;
        readonly font: { hasGlyphForCodePoint(codePoint: number): boolean };
        /** Glyphs in hexadecimal, as the embedded font numbers them, and how far each moves on, in thousandths of an em. */
        encode(
          text: string,
        ): [readonly string[], readonly { readonly xAdvance: number; readonly advanceWidth: number }[]];
        /** The font's object. */
        ref(): PDFKitReference;
      };
      /** Where each object begins, by its number less 1; null: not written yet. */
      readonly _offsets: (number | null)[];
      /** How many bytes are written. */
      readonly _offset: number;
      readonly _info: PDFKitReference;
      /** The document's identity. */
      readonly _id: Uint8Array;
      _write(data: string | Uint8Array): void;
      /** Writes the table of objects and ends the file; called once nothing is left open. */
      _finalize(): void;
      /** Writes the metadata (XMP); the library does so while the document ends. */
      endMetadata(): void;
    }
    interface PDFKitReference {
      /** Writes the object out; a document with an object left open never ends. */
      end(): void;
    }
    interface PDFKitReference {
      readonly id: number;
      data: Record<string, unknown>;
    }
    interface PDFPage {
      readonly fonts: Record<string, PDFKitReference>;
      /** What the page's operators name (ISO 32000-1, 7.8.3). */
      readonly resources: { readonly data: Record<string, object | undefined> };
    }
  }
}
