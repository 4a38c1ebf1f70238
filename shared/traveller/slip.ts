import type { CatalogueSlip } from './catalogue/slips.ts';
import type { CautionSlip } from './caution/slips.ts';
import type { ChargeSlip } from './charge/slips.ts';
import type { ChartSlip } from './chart/slips.ts';
import type { EquipmentSlip } from './equipment/slips.ts';
import type { GaugeSlip } from './gauge/slips.ts';
import type { LotSlip } from './lot/slips.ts';
import type { PersonSlip } from './person/slips.ts';
import type { PressSlip } from './press/slips.ts';
import type { PlanSlip } from './plan/slips.ts';
import type { PlantSlip } from './plant/slips.ts';
import type { ProgrammeSlip } from './programme/slips.ts';
import type { BatchSlip } from './powder-batch/slips.ts';
import type { SkipSlip } from './skip-lot/slips.ts';
import type { StudySlip } from './study/slips.ts';
import type { SwitchingSlip } from './switching-state/slips.ts';
import type { TableSlip } from './table/slips.ts';

/** Every kind of slip there is. A new one without words, a fold and a schema does not compile. */
export type SlipBody = LotSlip | BatchSlip | ChargeSlip | ChartSlip | SwitchingSlip | SkipSlip | TableSlip | CautionSlip | PlanSlip | CatalogueSlip | EquipmentSlip | ProgrammeSlip | GaugeSlip | StudySlip | PressSlip | PersonSlip | PlantSlip;

/** What the fold sees of a slip: its body and who, when, where. `version` counts from 1 within its stream. */
export interface Slip<Body = SlipBody> {
  readonly stream: string;
  readonly version: number;
  /** ISO 8601, UTC, from the server's clock. */
  readonly at: string;
  /** Badge of the person. */
  readonly by: string;
  readonly bench: string;
  readonly body: Body;
}

/** A slip that a decision wants written, before the door stamps it. */
export interface NewSlip {
  readonly stream: string;
  readonly body: SlipBody;
}
