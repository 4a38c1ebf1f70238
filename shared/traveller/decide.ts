import { neverReached } from '../ground/never-reached.ts';
import { decideCaution } from './caution/decide.ts';
import { decideCharge } from './charge/decide.ts';
import { decideChart } from './chart/decide.ts';
import type { Command } from './command.ts';
import { decideCatalogue, decideFurnaceRecords, decidePerson, decidePlan, decidePlant, decideTable } from './decide-records.ts';
import { decideCommon } from './gate/decide-common.ts';
import { decideGate } from './gate/decide-gate.ts';
import { decideGauge } from './gauge/decide.ts';
import type { AnyState, Known } from './known.ts';
import { decideLot } from './lot/decide.ts';
import { Pen } from './pen.ts';
import { decidePress } from './press/decide.ts';
import { decideBatch } from './powder-batch/decide.ts';
import type { Refusal } from './refusal.ts';
import { Refused } from './refusal.ts';
import { decideForServer } from './server-command.ts';
import type { ServerCommand } from './server-command.ts';
import type { NewSlip } from './slip.ts';
import type { Stamp } from './stamp.ts';
import { streamName } from './stream.ts';
import { decideStudy } from './study/decide.ts';
import { decideSwitching } from './switching-state/decide.ts';

/** Slips to be written in one commit, or a refusal a person can act on. Never both, never neither. */
export type Decision =
  | { readonly slips: readonly NewSlip[]; /** Every stream written to, as it stands after these slips: what folding them would give. */ readonly after: ReadonlyMap<string, AnyState> }
  | { readonly refusal: Refusal };

/**
 * What a command leads to: the slips to write, or the refusal to tell; never both, never neither. Pure: the clock and the dice come in with the stamp.
 * @throws NotAtHand when `known` cannot answer for a stream the decision needs; fetch it and decide anew
 */
export function decide(known: Known, command: Command, stamp: Stamp): Decision {
  return decided(known, stamp, (pen) => answer(pen, command));
}

/** The same for what the server itself gives, which no wire can bring. The stamp's person is `machineOf(command)`. @throws NotAtHand likewise */
export function decideOwn(known: Known, command: ServerCommand, stamp: Stamp): Decision {
  return decided(known, stamp, (pen) => decideForServer(pen, command));
}

function decided(known: Known, stamp: Stamp, write: (pen: Pen) => void): Decision {
  const pen = new Pen(known, stamp);
  try {
    write(pen);
    return { slips: pen.slips, after: pen.after };
  } catch (error) {
    if (error instanceof Refused) return { refusal: error.refusal };
    throw error;
  }
}

function answer(pen: Pen, command: Command): void {
  switch (command.type) {
    case 'openGate': case 'takeReading': case 'takeWeights': case 'recordFinding': case 'withdrawFinding': case 'takeLook': case 'completeSample': case 'correctReading':
      return decideGate(pen, command);
    case 'hold': case 'dispose': case 'addNote':
      return decideCommon(pen, command);
    case 'openLot': case 'recordSort': case 'destroyPieces': case 'scrapPieces': case 'splitLot': case 'releaseLot': case 'withdrawRelease': case 'packBox': case 'printLabel': case 'readLabel': case 'voidBox': case 'shipBox': case 'moveLotToPlan':
      return decideLot(pen, command);
    case 'openBatch': case 'blendBatches': case 'releaseBatch': return decideBatch(pen, command);
    case 'openCharge': case 'attachFurnaceLog': return decideCharge(pen, command);
    case 'defineChart': case 'freezeChartLimits': case 'unfreezeChartLimits': case 'restartChart': case 'withdrawChart': return decideChart(pen, command);
    case 'setSwitching': case 'resumeInspection': return decideSwitching(pen, command);
    case 'draftPlan': case 'approvePlan': return decidePlan(pen, command);
    case 'loadTable': return decideTable(pen, command);
    case 'writeCaution': return decideCaution(pen, command);
    case 'defineProduct': case 'defineGrade': case 'defineLayer': return decideCatalogue(pen, command);
    case 'defineEquipment': case 'defineProgramme': return decideFurnaceRecords(pen, command);
    case 'registerGauge': case 'calibrateGauge': case 'checkGauge': case 'setGaugeLine': case 'holdRecall': case 'closeRecall': case 'withdrawGauge': case 'setGaugeUncertainty': return decideGauge(pen, command);
    case 'registerPress': case 'changePress': case 'setPress': return decidePress(pen, command);
    case 'openStudy': case 'takeStudyReading': case 'correctStudyReading': case 'withdrawStudyReading': case 'closeStudy': case 'abandonStudy': return decideStudy(pen, command);
    case 'enrolPerson': case 'changePerson': case 'changePin': return decidePerson(pen, command);
    case 'openPlant': return decidePlant(pen, command);
    default: return neverReached(command);
  }
}

/** The stream a command is about: where its first slip goes and whose version a caller may have seen. */
export function streamOf(command: Command): string {
  switch (command.type) {
    case 'openGate': case 'takeReading': case 'takeWeights': case 'recordFinding': case 'withdrawFinding': case 'takeLook': case 'completeSample': case 'correctReading': case 'hold': case 'dispose': case 'addNote':
      return command.subject;
    case 'openLot': case 'recordSort': case 'destroyPieces': case 'scrapPieces': case 'splitLot': case 'releaseLot': case 'withdrawRelease': case 'packBox': case 'printLabel': case 'readLabel': case 'voidBox': case 'shipBox': case 'moveLotToPlan':
      return streamName('lot', command.lot);
    case 'openBatch': case 'blendBatches': case 'releaseBatch': return streamName('batch', command.batch);
    case 'openCharge': return streamName(command.kind, command.charge);
    case 'attachFurnaceLog': return streamName('furnace', command.charge);
    case 'setSwitching': case 'resumeInspection': return command.switching;
    case 'defineChart': case 'freezeChartLimits': case 'unfreezeChartLimits': case 'restartChart': case 'withdrawChart': return command.chart;
    case 'draftPlan': return streamName('plan', command.plan.id);
    case 'approvePlan': return streamName('plan', command.plan);
    case 'loadTable': return streamName('table', command.table);
    case 'writeCaution': return streamName('caution', command.caution);
    case 'defineProduct': return streamName('product', command.product.id);
    case 'defineGrade': return streamName('grade', command.grade.id);
    case 'defineLayer': return streamName('layer', command.layer.id);
    case 'defineEquipment': return streamName('equipment', command.equipment.id);
    case 'defineProgramme': return streamName('programme', command.programme.id);
    case 'registerGauge': return streamName('gauge', command.gauge.id);
    case 'calibrateGauge': case 'checkGauge': case 'setGaugeLine': case 'holdRecall': case 'closeRecall': case 'withdrawGauge': case 'setGaugeUncertainty': return streamName('gauge', command.gauge);
    case 'registerPress': case 'changePress': return streamName('press', command.press.id);
    case 'setPress': return streamName('press', command.press);
    case 'openStudy': case 'takeStudyReading': case 'correctStudyReading': case 'withdrawStudyReading': case 'closeStudy': case 'abandonStudy': return streamName('study', command.study);
    case 'enrolPerson': case 'changePerson': case 'changePin': return streamName('person', command.badge);
    case 'openPlant': return 'plant:plant';
    default: return neverReached(command);
  }
}
