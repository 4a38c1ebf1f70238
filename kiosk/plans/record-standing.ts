import './read-without-eval.ts';
import type { EquipmentCard, GaugeCard, GradeCard, InspectionPlan, LayerCard, ProductCard, ProgrammeCard } from '../../shared/traveller/index.ts';
import { RECORDS_FORM, type RecordCommand, type RecordsFile } from '../../shared/wire/records-file.ts';

export type RecordKind = 'plan' | 'grade' | 'layer' | 'product' | 'gauge' | 'equipment' | 'programme';
/** One plan as it stands here: what is in force and what waits for approval. */
export interface PlanHere { readonly id: string; readonly inForce: InspectionPlan | null; readonly waiting: readonly InspectionPlan[] }
/** The plant's records as they stand now. */
export interface RecordsHere {
  readonly plans: readonly PlanHere[]; readonly grades: readonly GradeCard[]; readonly layers: readonly LayerCard[]; readonly products: readonly ProductCard[];
  readonly gauges: readonly (GaugeCard & { readonly withdrawn: string | null; readonly outOfTolerance?: string | null; readonly lastGoodAt?: string | null; readonly openRecalls?: number })[];
  readonly equipment: readonly EquipmentCard[]; readonly programmes: readonly ProgrammeCard[];
}
/** What entering a record would do. */
export type RecordStanding =
  | { readonly is: 'new' | 'newVersion' | 'same' }
  | { readonly is: 'barred'; readonly why: 'twice' | 'gaugeIsHere' }
  | { readonly is: 'barred'; readonly why: 'lacks'; readonly what: Exclude<RecordKind, 'gauge' | 'equipment' | 'programme'>; readonly id: string };
export interface FiledRecord { readonly kind: RecordKind; readonly id: string; readonly name: string; readonly command: RecordCommand; readonly standing: RecordStanding }

/** What each record of a file would do here, in the file's order. The server decides again when it is entered. */
export function standingsOf(commands: readonly RecordCommand[], here: RecordsHere): readonly FiledRecord[] {
  const seen = new Set<string>();
  const filed = new Set(commands.map((command) => keyOf(recordOf(command))));
  return commands.map((command): FiledRecord => {
    const { kind, card: { id, name } } = recordOf(command);
    const key = `${kind}:${id}`;
    const standing: RecordStanding = seen.has(key) ? { is: 'barred', why: 'twice' } : standingOf(command, here, filed);
    seen.add(key);
    return { kind, id, name, command, standing };
  });
}

/** The records as a file: plans in force, cards, gauges that are in use. */
export function recordsFileOf({ plans, grades, layers, products, gauges, equipment, programmes }: RecordsHere): RecordsFile {
  return {
    form: RECORDS_FORM, plans: plans.flatMap(({ inForce }) => inForce ?? []), grades, layers, products,
    gauges: gauges.filter(({ withdrawn }) => withdrawn === null).map(cardOf), equipment, programmes,
  };
}

function standingOf(command: RecordCommand, here: RecordsHere, filed: ReadonlySet<string>): RecordStanding {
  switch (command.type) {
    case 'draftPlan': {
      const plan = here.plans.find(({ id }) => id === command.plan.id);
      if (plan === undefined) return { is: 'new' };
      return { is: [plan.inForce, ...plan.waiting].some((version) => sameRecord(version, command.plan)) ? 'same' : 'newVersion' };
    }
    case 'defineGrade': return byCard(command.grade, here.grades);
    case 'defineLayer': return byCard(command.layer, here.layers);
    case 'defineEquipment': return byCard(command.equipment, here.equipment);
    case 'defineProgramme': return byCard(command.programme, here.programmes);
    case 'defineProduct': {
      const { grade, layer, plan } = command.product;
      const named = [['grade', grade, here.grades], ['layer', layer, here.layers], ['plan', plan, here.plans]] as const;
      const lacking = named.find(([kind, id, cards]) => id !== null && !filed.has(`${kind}:${id}`) && !cards.some((card) => card.id === id));
      return lacking === undefined ? byCard(command.product, here.products) : { is: 'barred', why: 'lacks', what: lacking[0], id: lacking[1] ?? '' };
    }
    case 'registerGauge': {
      const gauge = here.gauges.find(({ id }) => id === command.gauge.id);
      if (gauge === undefined) return { is: 'new' };
      return gauge.withdrawn === null && sameRecord(cardOf(gauge), command.gauge) ? { is: 'same' } : { is: 'barred', why: 'gaugeIsHere' };
    }
  }
}

function byCard(card: { readonly id: string }, cards: readonly { readonly id: string }[]): RecordStanding {
  const before = cards.find(({ id }) => id === card.id);
  return { is: before === undefined ? 'new' : sameRecord(before, card) ? 'same' : 'newVersion' };
}

function cardOf({ withdrawn: _, outOfTolerance: _bad, lastGoodAt: _good, openRecalls: _open, ...card }: RecordsHere['gauges'][number]): GaugeCard {
  return card;
}

function recordOf(command: RecordCommand): { readonly kind: RecordKind; readonly card: { readonly id: string; readonly name: string } } {
  switch (command.type) {
    case 'draftPlan': return { kind: 'plan', card: command.plan };
    case 'defineGrade': return { kind: 'grade', card: command.grade };
    case 'defineLayer': return { kind: 'layer', card: command.layer };
    case 'defineProduct': return { kind: 'product', card: command.product };
    case 'registerGauge': return { kind: 'gauge', card: command.gauge };
    case 'defineEquipment': return { kind: 'equipment', card: command.equipment };
    case 'defineProgramme': return { kind: 'programme', card: command.programme };
  }
}
function keyOf({ kind, card: { id } }: ReturnType<typeof recordOf>): string {
  return `${kind}:${id}`;
}

/** True where two records say the same, in whatever order they name their fields. */
function sameRecord(one: unknown, other: unknown): boolean {
  return JSON.stringify(inOrder(one)) === JSON.stringify(inOrder(other));
}
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)).map(([key, held]) => [key, inOrder(held)]));
}
