import { FINDING_CLASSES, type Characteristic, type InspectionPlan } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { readNumber, showFigure, typedFigure } from '../desk/show.ts';
import { labels } from '../desk/words.ts';

const words = plansDeskWords.draft;

/** AQLs that the rules of a plan may use, percent nonconforming. Given in by the desk, which loads the tables lazily. */
export interface KnownAqls { readonly attributes: readonly number[]; readonly variables: readonly number[] }
/** One number or rating of a characteristic that a new version may change. */
export interface DraftField { readonly name: string; readonly label: string; readonly text: string; readonly kind: 'number' | 'whole' | 'percent' | 'attributesAql' | 'variablesAql' | 'rating'; readonly scale: readonly string[] }

/** What may be changed about a characteristic. A limit that is not there cannot be added here. */
export function draftFields(characteristic: Characteristic): readonly DraftField[] {
  const field = (name: string, label: string, value: number | string, kind: DraftField['kind'], scale: readonly string[] = []): DraftField => ({ name, label, text: typeof value === 'number' ? typedFigure(value) : value, kind, scale });
  const { sampling } = characteristic;
  const fields: DraftField[] = [];
  if (characteristic.kind === 'measured') {
    for (const limit of ['lower', 'target', 'upper'] as const) {
      const value = characteristic[limit];
      if (value !== null) fields.push(field(limit, words.fields[limit], value, 'number'));
    }
    if (characteristic.pressTolerancePercent !== null) fields.push(field('pressTolerancePercent', words.fields.pressTolerancePercent, characteristic.pressTolerancePercent, 'percent'));
  }
  if (characteristic.kind === 'graded') fields.push(field('worstAccepted', words.fields.worstAccepted, characteristic.worstAccepted, 'rating', characteristic.scale));
  switch (sampling.rule) {
    case 'attributes':
      for (const each of FINDING_CLASSES) if (sampling.aqlPercent[each] !== undefined) fields.push(field(`aql:${each}`, words.fields.aqlClass(labels.findingClasses[each]), sampling.aqlPercent[each] ?? 0, 'attributesAql'));
      break;
    case 'variables': fields.push(field('aql', words.fields.aql, sampling.aqlPercent, 'variablesAql')); break;
    case 'fixed': fields.push(field('n', words.fields.n, sampling.n, 'whole')); break;
    case 'barrels': fields.push(field('barrels', words.fields.barrels, sampling.barrels, 'whole'), field('each', words.fields.each, sampling.each, 'whole')); break;
    case 'positions': fields.push(field('each', words.fields.each, sampling.each, 'whole')); break;
    case 'everyPiece': fields.push(field('ejectAtMostPercent', words.fields.ejectAtMostPercent, sampling.ejectAtMostPercent, 'percent')); break;
    case 'interval': fields.push(field('everyPieces', words.fields.everyPieces, sampling.everyPieces, 'whole'), field('n', words.fields.n, sampling.n, 'whole')); break;
    case 'once': break;
  }
  return fields;
}

/** What is wrong with a text typed into a field; empty where nothing is. */
export function draftFault({ kind, scale }: DraftField, text: string, aqls: KnownAqls): string {
  if (kind === 'rating') return scale.includes(text.trim()) ? '' : words.wrongRating(scale.join(', '));
  const value = readNumber(text);
  if (value === null) return words.wrongNumber;
  if (kind === 'whole') return Number.isInteger(value) && value >= 1 ? '' : words.wrongWhole;
  if (kind === 'percent') return value >= 0 ? '' : words.wrongNegative;
  const known = kind === 'attributesAql' ? aqls.attributes : kind === 'variablesAql' ? aqls.variables : null;
  return known === null || known.includes(value) ? '' : words.wrongAql(known.map(showFigure).join(', '));
}

/** The plan with the changed fields in place. `changes` is keyed gate/characteristic/field and holds sound texts only. */
export function withChanges(plan: InspectionPlan, changes: ReadonlyMap<string, string>): InspectionPlan {
  return {
    ...plan,
    gates: plan.gates.map((gate) => ({
      ...gate,
      characteristics: gate.characteristics.map((characteristic) =>
        draftFields(characteristic).reduce((changed, { name }) => {
          const text = changes.get(draftKey(gate.id, characteristic.id, name));
          return text === undefined ? changed : withField(changed, name, text);
        }, characteristic)),
    })),
  };
}
/** Key of one field of a plan. */
export function draftKey(gate: string, characteristic: string, field: string): string {
  return `${gate}/${characteristic}/${field}`;
}

function withField(characteristic: Characteristic, name: string, text: string): Characteristic {
  if (name === 'worstAccepted') return characteristic.kind === 'graded' ? { ...characteristic, worstAccepted: text.trim() } : characteristic;
  const value = readNumber(text);
  if (value === null) return characteristic;
  switch (characteristic.kind) {
    case 'measured': {
      if (['lower', 'upper', 'target', 'pressTolerancePercent'].includes(name)) return { ...characteristic, [name]: value };
      return { ...characteristic, sampling: withNumber(characteristic.sampling, name === 'aql' ? 'aqlPercent' : name, value) };
    }
    case 'counted': {
      const { sampling } = characteristic;
      const findingClass = FINDING_CLASSES.find((each) => name === `aql:${each}`);
      if (sampling.rule === 'attributes' && findingClass !== undefined) return { ...characteristic, sampling: { ...sampling, aqlPercent: { ...sampling.aqlPercent, [findingClass]: value } } };
      return { ...characteristic, sampling: withNumber(sampling, name, value) };
    }
    case 'graded': return { ...characteristic, sampling: withNumber(characteristic.sampling, name, value) };
    case 'confirmed': return characteristic;
  }
}

/** The rule stays the one it was; one of its numbers is another. */
function withNumber<Rule extends { readonly rule: string }>(sampling: Rule, name: string, value: number): Rule {
  return { ...sampling, [name]: value };
}

/** What differs between two versions of a plan, field by field. */
export function planChanges(before: InspectionPlan, after: InspectionPlan): readonly { readonly where: string; readonly from: string; readonly to: string }[] {
  return after.gates.flatMap((gate) => gate.characteristics.flatMap((characteristic) => {
    const former = before.gates.find(({ id }) => id === gate.id)?.characteristics.find(({ id }) => id === characteristic.id);
    if (former === undefined) return [];
    const texts = new Map(draftFields(former).map(({ name, text }) => [name, text]));
    return draftFields(characteristic).flatMap(({ name, label, text }) => {
      const from = texts.get(name);
      return from === undefined || from === text ? [] : [{ where: `${gate.name}, ${characteristic.name}, ${label}`, from, to: text }];
    });
  }));
}
