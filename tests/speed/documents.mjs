import { createRequire } from 'node:module';
import bwipjs from 'bwip-js/node';
import PDFDocument from 'pdfkit';

const require = createRequire(import.meta.url);
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const timed = async (work, runs) => {
  const times = [];
  await work();
  for (let run = 0; run < runs; run += 1) {
    const begun = performance.now();
    await work();
    times.push(performance.now() - begun);
  }
  return median(times);
};
const finished = (pdf) => new Promise((resolve) => {
  const parts = [];
  pdf.on('data', (part) => parts.push(part));
  pdf.on('end', () => resolve(Buffer.concat(parts)));
  pdf.end();
});

/** A bare pdfkit document with as many pages and words as the certificate, embedded font, no tags, no tables, no seal. */
async function barePages(pages, words) {
  const pdf = new PDFDocument({ size: 'A4' });
  pdf.registerFont('body', require.resolve('@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf'));
  pdf.font('body').fontSize(8);
  const perPage = Math.ceil(words / pages);
  for (let page = 0; page < pages; page += 1) {
    if (page > 0) pdf.addPage();
    for (let word = 0; word < perPage; word += 1) pdf.text(`${(word * 7919) % 1000}.${word % 10}`, 40 + (word % 8) * 64, 40 + Math.floor(word / 8) * 11, { lineBreak: false });
  }
  return finished(pdf);
}

/** 1,000 bare labels: five lines of text and the code drawn by bwip-js as a picture, the plain way to do it. */
async function bareLabels(count) {
  const pdf = new PDFDocument({ size: [283, 142], margin: 10, autoFirstPage: false });
  for (let label = 0; label < count; label += 1) {
    pdf.addPage();
    for (let line = 0; line < 5; line += 1) pdf.fontSize(10).text(`Line ${line} of label ${label}`, 10, 10 + line * 14, { lineBreak: false });
    pdf.image(await bwipjs.toBuffer({ bcid: 'datamatrix', text: `LOT L26-0001 BOX ${label}`, scale: 3 }), 200, 20, { width: 60 });
  }
  return finished(pdf);
}

/** Documents beside bare pages of the same size and bare labels. */
export async function measureDocuments() {
  const { certificatePdf, labelSheetPdf, sealCertificate, plantKey, sampleContent, sampleLabel } = await import('../../dist/bench/document-makers.mjs');
  const data = sealCertificate(sampleContent, plantKey);
  const ours = await timed(() => certificatePdf(data), 15);
  const bare = await timed(() => barePages(2, 420), 15);
  const labels = Array.from({ length: 1000 }, (_, at) => ({ ...sampleLabel, boxSerial: `B26004217-${String(at).padStart(4, '0')}` }));
  const sheet = await timed(() => labelSheetPdf(labels), 3);
  const bareSheet = await timed(() => bareLabels(1000), 1);
  return [
    ['certificate of two pages, tagged, sealed, data attached', `${ours.toFixed(0)} ms`, `${bare.toFixed(0)} ms`, (ours / bare).toFixed(2), null, null],
    ['1,000 labels', `${sheet.toFixed(0)} ms`, `${bareSheet.toFixed(0)} ms`, (sheet / bareSheet).toFixed(2), null, null],
  ];
}
