export { smallestVariablesPlan as twoPointVariables } from '../variables/index.ts';
