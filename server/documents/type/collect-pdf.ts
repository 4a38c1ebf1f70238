/** The finished file of a document. Ask before the document ends. */
export function collectPdf(doc: PDFKit.PDFDocument): Promise<Buffer> {
  return new Promise((done, failed) => {
    const parts: Buffer[] = [];
    doc.on('data', (part: Buffer) => parts.push(part));
    doc.on('end', () => done(Buffer.concat(parts)));
    doc.on('error', failed);
  });
}
