export { judgeVariables } from './judge-variables.ts';
export type { VariablesSample, VariablesVerdict } from './judge-variables.ts';
export { percentNonconforming } from './percent-nonconforming.ts';
export { sMethodPlan, VARIABLES_AQLS } from './s-method-plan.ts';
export type { SMethodRequest, VariablesPlan } from './s-method-plan.ts';
export { SMALLEST_VARIABLES_LOT, VARIABLES_LEVELS, variablesLetter } from './variables-letter.ts';
export type { VariablesLetter, VariablesLevel } from './variables-letter.ts';
export { LARGEST_DESIGN, smallestVariablesPlan } from './points-plan.ts';
export type { PointsDesign, VariablesPoints } from './points-plan.ts';
