export { AQLS, aqlColumn, isAql } from './aqls.ts';
export { codeLetter, INSPECTION_LEVELS } from './code-letter.ts';
export type { CodeLetter, InspectionLevel } from './code-letter.ts';
export { judgeSingle, tighterWouldAccept } from './judge-single.ts';
export type { SingleVerdict } from './judge-single.ts';
export { masterRows, tableName } from './master-table.ts';
export type { Cell, MasterRow, Severity, TableName } from './master-table.ts';
export { reducedTableNote, singlePlan } from './single-plan.ts';
export type { AttributesPlan, SinglePlanRequest } from './single-plan.ts';
