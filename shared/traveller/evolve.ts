import { neverReached } from '../ground/never-reached.ts';
import { BrokenThread } from './broken-thread.ts';
import type { CautionSlip } from './caution/slips.ts';
import type { CatalogueSlip } from './catalogue/slips.ts';
import { evolveCharge } from './charge/evolve.ts';
import type { ChargeSlip } from './charge/slips.ts';
import type { EquipmentSlip } from './equipment/slips.ts';
import { evolveChart } from './chart/evolve.ts';
import type { ChartSlip } from './chart/slips.ts';
import { evolveCatalogue, evolveCaution, evolveEquipment, evolvePerson, evolvePlan, evolvePlant, evolveProgramme, evolveTable } from './evolve-records.ts';
import { evolveGauge } from './gauge/evolve.ts';
import type { GaugeSlip } from './gauge/slips.ts';
import type { AnyState } from './known.ts';
import { evolveLot } from './lot/evolve.ts';
import type { LotSlip } from './lot/slips.ts';
import type { PersonSlip } from './person/slips.ts';
import type { PlanSlip } from './plan/slips.ts';
import type { PlantSlip } from './plant/slips.ts';
import type { ProgrammeSlip } from './programme/slips.ts';
import { evolveBatch } from './powder-batch/evolve.ts';
import type { BatchSlip } from './powder-batch/slips.ts';
import { evolvePress } from './press/evolve.ts';
import type { PressSlip } from './press/slips.ts';
import type { Slip, SlipBody } from './slip.ts';
import { streamParts } from './stream.ts';
import { evolveSkip } from './skip-lot/evolve.ts';
import type { SkipSlip } from './skip-lot/slips.ts';
import { evolveStudy } from './study/evolve.ts';
import type { StudySlip } from './study/slips.ts';
import { evolveSwitching } from './switching-state/evolve.ts';
import type { SwitchingSlip } from './switching-state/slips.ts';
import type { TableSlip } from './table/slips.ts';

/** Picks the state when it is of the kind wanted; an alien state is loud. */
function of<K extends AnyState['kind']>(state: AnyState | null, ...kinds: readonly K[]): Extract<AnyState, { kind: K }> | null {
  if (state === null) return null;
  if (!kinds.some((kind) => kind === state.kind)) throw new BrokenThread(`${state.stream} is a ${state.kind}`);
  return state as Extract<AnyState, { kind: K }>;
}

/**
 * Folds one slip into the state of its stream; the stream's name says which fold. The same on the server and on every kiosk.
 * @throws BrokenThread when the thread cannot have happened
 */
export function evolve(state: AnyState | null, slip: Slip<SlipBody>): AnyState {
  const kind = streamParts(slip.stream)?.kind;
  if (kind === undefined) throw new BrokenThread(`no fold for the stream ${slip.stream}`);
  switch (kind) {
    case 'lot': return evolveLot(of(state, 'lot'), slip as Slip<LotSlip>);
    case 'batch': return evolveBatch(of(state, 'batch'), slip as Slip<BatchSlip>);
    case 'furnace': case 'coating': return evolveCharge(of(state, 'furnace', 'coating'), slip as Slip<ChargeSlip>);
    case 'switching': return evolveSwitching(of(state, 'switching'), slip as Slip<SwitchingSlip>);
    case 'skip': return evolveSkip(of(state, 'skip'), slip as Slip<SkipSlip>);
    case 'table': return evolveTable(slip as Slip<TableSlip>);
    case 'caution': return evolveCaution(slip as Slip<CautionSlip>);
    case 'chart': return evolveChart(of(state, 'chart'), slip as Slip<ChartSlip>);
    case 'plan': return evolvePlan(of(state, 'plan'), slip as Slip<PlanSlip>);
    case 'product': case 'grade': case 'layer': return evolveCatalogue(slip as Slip<CatalogueSlip>);
    case 'equipment': return evolveEquipment(slip as Slip<EquipmentSlip>);
    case 'programme': return evolveProgramme(slip as Slip<ProgrammeSlip>);
    case 'gauge': return evolveGauge(of(state, 'gauge'), slip as Slip<GaugeSlip>);
    case 'press': return evolvePress(of(state, 'press'), slip as Slip<PressSlip>);
    case 'study': return evolveStudy(of(state, 'study'), slip as Slip<StudySlip>);
    case 'person': return evolvePerson(of(state, 'person'), slip as Slip<PersonSlip>);
    case 'plant': return evolvePlant(of(state, 'plant'), slip as Slip<PlantSlip>);
    default: return neverReached(kind);
  }
}
