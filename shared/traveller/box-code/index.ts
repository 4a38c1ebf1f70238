export { boxCodeFault, buildBoxCode, readBoxCode } from '../../wire/box-code/index.ts';
