import type { CatalogueCommand } from './catalogue/slips.ts';
import type { ChartCommand } from './chart/commands.ts';
import type { CautionCommand } from './caution/slips.ts';
import type { ChargeOwnCommand } from './charge/commands.ts';
import type { DefineEquipment } from './equipment/slips.ts';
import type { CommonCommand, GateCommand } from './gate/commands.ts';
import type { GaugeCommand } from './gauge/commands.ts';
import type { LotOwnCommand } from './lot/commands.ts';
import type { PersonCommand } from './person/slips.ts';
import type { PressCommand } from './press/slips.ts';
import type { PlanCommand } from './plan/commands.ts';
import type { PlantCommand } from './plant/slips.ts';
import type { DefineProgramme } from './programme/slips.ts';
import type { BatchOwnCommand } from './powder-batch/commands.ts';
import type { StudyCommand } from './study/commands.ts';
import type { SwitchingCommand } from './switching-state/commands.ts';
import type { TableCommand } from './table/slips.ts';

/** Everything a person or program can ask for. */
export type Command = GateCommand | CommonCommand | LotOwnCommand | BatchOwnCommand | ChargeOwnCommand | SwitchingCommand | TableCommand | CautionCommand | PlanCommand | CatalogueCommand | DefineEquipment | DefineProgramme | ChartCommand | GaugeCommand | PressCommand | StudyCommand | PersonCommand | PlantCommand;
export type CommandType = Command['type'];
/** Commands that the door takes only with the PIN re-entered. */
export const SIGNED_COMMANDS = ['dispose', 'releaseBatch', 'releaseLot', 'withdrawRelease', 'approvePlan', 'resumeInspection', 'moveLotToPlan', 'holdRecall', 'closeRecall', 'closeStudy', 'setGaugeUncertainty', 'freezeChartLimits', 'unfreezeChartLimits'] as const satisfies readonly CommandType[];
/** True when the command needs a signature. */
export function needsSignature(type: CommandType): boolean {
  return SIGNED_COMMANDS.some((signed) => signed === type);
}
