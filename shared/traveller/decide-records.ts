import { readDesignation } from '../carbide/index.ts';
import { gradeFault, layerFault } from './catalogue/grade-limits.ts';
import type { CardFault } from './catalogue/grade-limits.ts';
import { programmeFault } from '../carbide/furnace-log/index.ts';
import { mapFault } from './equipment/map-fault.ts';
import type { DefineEquipment } from './equipment/slips.ts';
import type { DefineProgramme } from './programme/slips.ts';
import type { CatalogueCommand, ProductCard } from './catalogue/slips.ts';
import { requireCautions } from './caution/decide.ts';
import type { PersonCommand } from './person/slips.ts';
import type { Pen } from './pen.ts';
import { refuse, requireFitId, requireReason } from './pen.ts';
import type { PlanCommand } from './plan/commands.ts';
import { requireOwnTables } from './plan/require-own-tables.ts';
import { requireSound } from './plan/require-sound.ts';
import type { PlantCommand } from './plant/slips.ts';
import { readTableCsv } from '../sampling/attributes/index.ts';
import { streamName } from './stream.ts';
import type { TableCommand } from './table/slips.ts';

/** Decides what is entered into the plant's records: catalogue, plans, gauges, people, the plant itself. */
export function decideCatalogue(pen: Pen, command: CatalogueCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'defineProduct': {
      const { product } = command;
      requireFitId('product', product.id);
      requireFitId('itemCode', product.itemCode);
      requireReadableDesignation(product);
      pen.find(streamName('grade', product.grade), 'grade', 'grade');
      if (product.layer !== null) pen.find(streamName('layer', product.layer), 'layer', 'layer');
      pen.find(streamName('plan', product.plan), 'plan', 'plan');
      return pen.write(streamName('product', product.id), { type: 'productDefined', product });
    }
    case 'defineGrade':
      requireFitId('grade', command.grade.id);
      requireCard(command.grade.id, gradeFault(command.grade));
      return pen.write(streamName('grade', command.grade.id), { type: 'gradeDefined', grade: command.grade });
    case 'defineLayer':
      requireFitId('layer', command.layer.id);
      requireCard(command.layer.id, layerFault(command.layer));
      return pen.write(streamName('layer', command.layer.id), { type: 'layerDefined', layer: command.layer });
  }
}

function requireCard(card: string, fault: CardFault | null): void {
  if (fault !== null) refuse({ code: 'cardUnsound', card, fault });
}

/** A designation that cannot be read stands only on the card of a part made to a drawing. */
function requireReadableDesignation({ designation, byDrawing }: ProductCard): void {
  if (byDrawing === true) return;
  const read = readDesignation(designation);
  if (!read.ok) refuse({ code: 'designationUnreadable', designation, problems: read.problems });
}

/** Puts a furnace or coating plant with its map, or a furnace programme with its limits, on record; charges keep what they were opened or checked with. */
export function decideFurnaceRecords(pen: Pen, command: DefineEquipment | DefineProgramme): void {
  pen.requireRole(command.type);
  if (command.type === 'defineEquipment') {
    const { equipment } = command;
    requireFitId('equipment', equipment.id);
    const fault = mapFault(equipment);
    if (fault !== null) refuse({ code: 'mapUnsound', equipment: equipment.id, why: fault.fault, name: fault.name });
    return pen.write(streamName('equipment', equipment.id), { type: 'equipmentDefined', equipment });
  }
  const { programme } = command;
  requireFitId('programme', programme.id);
  const fault = programmeFault(programme);
  if (fault !== null) refuse({ code: 'programmeUnsound', programme: programme.id, why: fault.fault, segment: fault.segment });
  pen.write(streamName('programme', programme.id), { type: 'programmeDefined', programme });
}

/** Drafts a plan that can be worked, or approves a version: two different engineers, signed, bring it into force. */
export function decidePlan(pen: Pen, command: PlanCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'draftPlan': {
      requireReason(command.type, command.why);
      requireSound(command.plan);
      requireOwnTables(pen, command.plan);
      requireCautions(pen, command.plan);
      const stream = streamName('plan', command.plan.id);
      const state = pen.state(stream);
      return pen.write(stream, { type: 'planDrafted', planVersion: (state?.kind === 'plan' ? state.versions.length : 0) + 1, plan: command.plan, why: command.why });
    }
    case 'approvePlan': {
      const plan = pen.find(streamName('plan', command.plan), 'plan', 'plan');
      const version = plan.versions.find(({ planVersion }) => planVersion === command.planVersion) ?? refuse({ code: 'notFound', what: 'planVersion', id: String(command.planVersion) });
      if (version.approvals.some(({ badge }) => badge === pen.stamp.by.badge)) refuse({ code: 'approvedByYou', plan: command.plan, planVersion: command.planVersion });
      if (version.approvals.length >= 2) refuse({ code: 'planIsInForce', plan: command.plan, planVersion: command.planVersion });
      const signature = pen.signature(command.type, 'planApprovedBy');
      return pen.write(plan.stream, { type: 'planApproved', planVersion: command.planVersion, signature, inForce: version.approvals.length === 1 });
    }
  }
}

/**
 * Takes the plant's own copy of a master table in once its structure holds. It counts only where a plan names it, and a plan is approved by
 * two engineers; so it needs no signature of its own. For the same reason it never changes under its number: a corrected copy takes a new one,
 * and a new version of the plan names it.
 */
export function decideTable(pen: Pen, command: TableCommand): void {
  pen.requireRole(command.type);
  requireReason(command.type, command.reason);
  requireFitId('table', command.table);
  if (pen.state(streamName('table', command.table)) !== null) refuse({ code: 'alreadyThere', what: 'table', id: command.table });
  const read = readTableCsv(command.csv, { id: command.table, name: command.name, severity: command.severity });
  if ('problems' in read) return refuse({ code: 'tableUnsound', table: command.table, problems: read.problems });
  pen.write(streamName('table', command.table), { type: 'tableLoaded', table: read.table, reason: command.reason });
}

/** Enrols and changes people, and their PINs; no keeper takes that role from themselves. */
export function decidePerson(pen: Pen, command: PersonCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'enrolPerson': {
      requireFitId('badge', command.badge);
      const stream = streamName('person', command.badge);
      if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'person', id: command.badge });
      return pen.write(stream, { type: 'personEnrolled', badge: command.badge, name: command.name, roles: command.roles });
    }
    case 'changePerson': {
      requireReason(command.type, command.reason);
      const person = pen.find(streamName('person', command.badge), 'person', 'person');
      if (person.badge === pen.stamp.by.badge && person.roles.includes('keeper') && (!command.active || !command.roles.includes('keeper'))) refuse({ code: 'lastKeeper', badge: person.badge });
      return pen.write(person.stream, { type: 'personChanged', name: command.name, roles: command.roles, active: command.active, reason: command.reason });
    }
    case 'changePin': {
      const own = command.badge === pen.stamp.by.badge;
      if (!own) pen.requireOneOf(command.type, ['keeper']);
      // Whoever finds a kiosk signed on must not be able to take the badge over: one's own PIN changes only with the PIN so far.
      else if (!pen.stamp.signed) refuse({ code: 'signatureMissing', command: command.type });
      return pen.write(pen.find(streamName('person', command.badge), 'person', 'person').stream, { type: 'pinChanged', own });
    }
  }
}

/** The first command of all: it names the plant and enrols its keeper; afterwards it is refused for ever. */
export function decidePlant(pen: Pen, { plant, keeper }: PlantCommand): void {
  if (pen.state('plant:plant') !== null) refuse({ code: 'alreadyThere', what: 'plant', id: plant.name });
  requireFitId('badge', keeper.badge);
  pen.write('plant:plant', { type: 'plantOpened', plant, keeper: keeper.badge });
  pen.write(streamName('person', keeper.badge), { type: 'personEnrolled', badge: keeper.badge, name: keeper.name, roles: ['keeper'] });
}
