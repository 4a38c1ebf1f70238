export { studyCsv } from './study-csv.ts';
export type { StudySheetData } from './study-sheet-data.ts';
export { studySheetPdf } from './study-sheet-pdf.ts';
