/** What has been written and not yet handed on. */
export function* chunks(pdf: PDFKit.PDFDocument): Generator<Uint8Array> {
  const chunk: Uint8Array | null = pdf.read();
  if (chunk !== null) yield chunk;
}
