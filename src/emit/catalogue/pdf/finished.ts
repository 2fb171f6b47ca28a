import { chunks } from './chunks.js';

/** Entries of the table of objects that are handed on together. */
const TOGETHER = 5000;

/**
 * Ends a document and hands on the rest of it. The library would write its table of objects (ISO 32000-1, 7.5.4) at one go, and a
 * long book has more than a million: here it goes out in pieces.
 */
export function* finished(pdf: PDFKit.PDFDocument): Generator<Uint8Array> {
  pdf._finalize = () => {};
  pdf.end();
  yield* chunks(pdf);
  const { _offsets: offsets, _offset: table } = pdf;
  const size = offsets.length + 1;
  pdf._write(`xref\n0 ${size}\n0000000000 65535 f `);
  for (let from = 0; from < offsets.length; from += TOGETHER) {
    const entries = offsets.slice(from, from + TOGETHER);
    pdf._write(entries.map((offset) => `${String(offset).padStart(10, '0')} 00000 n `).join('\n'));
    yield* chunks(pdf);
  }
  const id = Buffer.from(pdf._id).toString('hex');
  pdf._write(
    `trailer\n<</Size ${size}/Root ${pdf._root.id} 0 R/Info ${pdf._info.id} 0 R/ID[<${id}><${id}>]>>`,
  );
  pdf._write(`startxref\n${table}\n%%EOF`);
  yield* chunks(pdf);
}
