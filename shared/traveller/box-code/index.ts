export { buildBoxCode, boxCodeFault } from './build-box-code.ts';
export { readBoxCode, type BoxCodeRead } from './read-box-code.ts';
export type { BoxCodeFault, BoxCodeFields, BoxIdentifier } from './box-code-fields.ts';
