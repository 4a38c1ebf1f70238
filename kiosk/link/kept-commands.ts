import type { Command, CommandType } from '../../shared/traveller/index.ts';

/**
 * What a bench enters while it works: these wait in the outbox when the network is gone. Signed commands are never among them (a PIN is
 * never stored), nor is opening a gate: the server draws the sample.
 */
const KEPT_COMMANDS = [
  'takeReading', 'takeWeights', 'recordFinding', 'withdrawFinding', 'takeLook', 'completeSample', 'correctReading', 'recordSort', 'hold', 'addNote',
  'takeStudyReading', 'correctStudyReading', 'withdrawStudyReading',
] as const satisfies readonly CommandType[];
export type KeptCommand = Extract<Command, { type: (typeof KEPT_COMMANDS)[number] }>;

/** True for an entry that may wait on this kiosk. */
export function mayWait(command: Command): command is KeptCommand {
  return KEPT_COMMANDS.some((type) => type === command.type);
}
