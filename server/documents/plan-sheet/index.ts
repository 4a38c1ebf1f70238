export { planCsv, PLAN_CSV_COLUMNS } from './plan-csv.ts';
export { planSheetPdf } from './plan-sheet-pdf.ts';
export { standingOf } from './plan-sheet-data.ts';
export type { PlanSheetData } from './plan-sheet-data.ts';
