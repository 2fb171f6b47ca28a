/** What has been written and not yet handed on. (Asked once, Node 20 hands out all that a stream holds, Node 26 a part of it.) */
export function* chunks(pdf: Pick<PDFKit.PDFDocument, 'read'>): Generator<Uint8Array> {
  for (let chunk: Uint8Array | null = pdf.read(); chunk !== null; chunk = pdf.read()) yield chunk;
}
