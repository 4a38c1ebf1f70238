/** What the document measurements make; bundled for them, since they run without a TypeScript loader. */
export { certificatePdf } from '../../server/documents/certificate/index.ts';
export { labelSheetPdf } from '../../server/documents/label/index.ts';
export { sealCertificate } from '../../server/documents/signing/index.ts';
export { plantKey, sampleContent } from '../server/documents/sample-certificate.ts';
export { sampleLabel } from '../server/documents/sample-label.ts';
