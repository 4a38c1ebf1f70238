import { BrokenThread } from './broken-thread.ts';
import type { CautionSlip, CautionState } from './caution/slips.ts';
import type { CatalogueSlip } from './catalogue/slips.ts';
import type { EquipmentSlip, EquipmentState } from './equipment/slips.ts';
import type { ProgrammeSlip, ProgrammeState } from './programme/slips.ts';
import type { GradeState, LayerState, PersonState, PlanState, PlantState, ProductState } from './known.ts';
import type { TableSlip, TableState } from './table/slips.ts';
import type { PersonSlip } from './person/slips.ts';
import type { PlanSlip } from './plan/slips.ts';
import type { PlantSlip } from './plant/slips.ts';
import type { Slip } from './slip.ts';

/** Folds of the records that have a thread but no route: catalogue, plans, gauges, people, the plant itself. */
export function evolveCatalogue({ body, stream, version }: Slip<CatalogueSlip>): ProductState | GradeState | LayerState {
  switch (body.type) {
    case 'productDefined': return { kind: 'product', stream, version, card: body.product };
    case 'gradeDefined': return { kind: 'grade', stream, version, card: body.grade };
    case 'layerDefined': return { kind: 'layer', stream, version, card: body.layer };
  }
}

/** A plant's own copy of a table. */
export function evolveTable({ body, stream, version, at, by }: Slip<TableSlip>): TableState {
  return { kind: 'table', stream, version, table: body.table, loadedBy: by, at, reason: body.reason };
}

/** A caution as it was last written. */
export function evolveCaution({ body: { caution, text, shown, reason }, stream, version, at, by }: Slip<CautionSlip>): CautionState {
  return { kind: 'caution', stream, version, caution, text, shown, reason, by, at };
}

/** A furnace or coating plant as it is on record now. */
export function evolveEquipment({ body, stream, version }: Slip<EquipmentSlip>): EquipmentState {
  return { kind: 'equipment', stream, version, card: body.equipment };
}

/** A furnace programme's limits as they are on record now. */
export function evolveProgramme({ body, stream, version }: Slip<ProgrammeSlip>): ProgrammeState {
  return { kind: 'programme', stream, version, card: body.programme };
}

/** A plan with all its versions after one more slip. @throws BrokenThread on an approval of what was never drafted */
export function evolvePlan(plan: PlanState | null, { body, stream, version, at, by }: Slip<PlanSlip>): PlanState {
  switch (body.type) {
    case 'planDrafted':
      return { kind: 'plan', stream, version, id: body.plan.id, versions: [...(plan?.versions ?? []), { planVersion: body.planVersion, plan: body.plan, why: body.why, draftedBy: by, at, approvals: [], inForce: false }] };
    case 'planApproved': {
      if (plan === null) throw new BrokenThread(`${stream} was approved before it was drafted`);
      return {
        ...plan, version,
        versions: plan.versions.map((each) => (each.planVersion === body.planVersion ? { ...each, approvals: [...each.approvals, body.signature], inForce: body.inForce } : body.inForce ? { ...each, inForce: false } : each)),
      };
    }
  }
}

/** A person after one more slip. @throws BrokenThread on a thread that does not begin with the enrolment */
export function evolvePerson(person: PersonState | null, { body, stream, version }: Slip<PersonSlip>): PersonState {
  if (body.type === 'personEnrolled') return { kind: 'person', stream, version, badge: body.badge, name: body.name, roles: body.roles, active: true };
  if (person === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  return body.type === 'personChanged' ? { ...person, version, name: body.name, roles: body.roles, active: body.active } : { ...person, version };
}

/** The plant as it was opened. @throws BrokenThread on a checkpoint before that */
export function evolvePlant(plant: PlantState | null, { body, stream, version }: Slip<PlantSlip>): PlantState {
  if (body.type === 'plantOpened') return { kind: 'plant', stream, version, card: body.plant, keepers: [body.keeper] };
  if (plant === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  return { ...plant, version };
}
