import type { Command, EquipmentCard, GaugeCard, GradeCard, InspectionPlan, LayerCard, ProductCard, ProgrammeCard } from '../traveller/index.ts';

/** The form of a records file. Another form gets another number. */
export const RECORDS_FORM = 'gatehand-records-1';
const LISTS = ['plans', 'grades', 'layers', 'products', 'gauges'] as const;
/** Lists that came later: a file without them is read as ever. */
const LATER_LISTS = ['equipment', 'programmes'] as const;
export type RecordsList = (typeof LISTS)[number] | (typeof LATER_LISTS)[number];

/** A plant's records as one JSON file: what it inspects, makes and measures with. No people, no lots. */
export interface RecordsFile {
  readonly form: typeof RECORDS_FORM;
  readonly plans: readonly InspectionPlan[];
  readonly grades: readonly GradeCard[];
  readonly layers: readonly LayerCard[];
  readonly products: readonly ProductCard[];
  readonly gauges: readonly GaugeCard[];
  readonly equipment?: readonly EquipmentCard[];
  readonly programmes?: readonly ProgrammeCard[];
}
/** Why a file is none: no JSON, another form, a list that is missing or unknown, or a record without the text it is found by. */
export type RecordsFault =
  | { readonly fault: 'notJson' }
  | { readonly fault: 'otherForm' }
  | { readonly fault: 'missingList' | 'unknownList'; readonly list: string }
  | { readonly fault: 'nameless'; readonly list: RecordsList; /** Its place in the list, from 1. */ readonly place: number };

/** A command that enters one record. */
export type RecordCommand = Extract<Command, { readonly type: 'draftPlan' | 'defineGrade' | 'defineLayer' | 'defineProduct' | 'registerGauge' | 'defineEquipment' | 'defineProgramme' }>;

/**
 * Reads a records file. Only its form, its lists and each record's `id` and `name` are looked at; every other field is checked by the
 * server's door when the record is entered, and refused there by name.
 */
export function readRecordsFile(text: string): RecordsFile | RecordsFault {
  let read: unknown;
  try {
    read = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { fault: 'notJson' };
  }
  const fault = faultOf(read);
  // The edge: what the cards hold is the door's to judge.
  return fault ?? (read as RecordsFile);
}

/** The commands that enter the records, in an order in which each finds what it names: plans, grades, coatings, products, gauges, equipment, programmes. @param why stands on each drafted plan */
export function commandsOf({ plans, grades, layers, products, gauges, equipment = [], programmes = [] }: RecordsFile, why: string): readonly RecordCommand[] {
  return [
    ...plans.map((plan) => ({ type: 'draftPlan', plan, why }) as const),
    ...grades.map((grade) => ({ type: 'defineGrade', grade }) as const),
    ...layers.map((layer) => ({ type: 'defineLayer', layer }) as const),
    ...products.map((product) => ({ type: 'defineProduct', product }) as const),
    ...gauges.map((gauge) => ({ type: 'registerGauge', gauge }) as const),
    ...equipment.map((each) => ({ type: 'defineEquipment', equipment: each }) as const),
    ...programmes.map((programme) => ({ type: 'defineProgramme', programme }) as const),
  ];
}

function faultOf(read: unknown): RecordsFault | null {
  if (typeof read !== 'object' || read === null || !('form' in read) || read.form !== RECORDS_FORM) return { fault: 'otherForm' };
  const held = new Map<string, unknown>(Object.entries(read));
  const unknown = [...held.keys()].find((key) => key !== 'form' && ![...LISTS, ...LATER_LISTS].some((list) => list === key));
  if (unknown !== undefined) return { fault: 'unknownList', list: unknown };
  for (const list of [...LISTS, ...LATER_LISTS]) {
    const records = held.get(list);
    if (records === undefined && LATER_LISTS.some((later) => later === list)) continue;
    if (!Array.isArray(records)) return { fault: 'missingList', list };
    const nameless = records.findIndex((record: unknown) => !isNamed(record));
    if (nameless >= 0) return { fault: 'nameless', list, place: nameless + 1 };
  }
  return null;
}

function isNamed(record: unknown): boolean {
  return typeof record === 'object' && record !== null && 'id' in record && typeof record.id === 'string' && record.id !== '' && 'name' in record && typeof record.name === 'string';
}
