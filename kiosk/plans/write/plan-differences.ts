import type { Characteristic, GatePlan, InspectionPlan } from '../../../shared/traveller/index.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { showFigure } from '../../desk/show.ts';
import { ruleText } from '../rule-text.ts';
import { characteristicForms } from './characteristic-fields.ts';
import { fieldWritten, type EditField } from './edit-field.ts';
import { gateFields, planFields } from './gate-fields.ts';
import { placeText, type PlanPlace } from './plan-edits.ts';

const words = planWritingWords;

/** One thing that differs between two versions of a plan, in words. Added and removed things have one side only. */
export interface PlanDifference {
  readonly place: PlanPlace;
  /** `Final visual, Looks, AQL major`. */
  readonly where: string;
  readonly what: 'added' | 'removed' | 'moved' | 'changed';
  readonly from: string;
  readonly to: string;
}

/** Everything that differs, in the order of the newer plan; what was taken out stands at the end of its gate. */
export function planDifferences(before: InspectionPlan, after: InspectionPlan): readonly PlanDifference[] {
  const itself: PlanPlace = { gate: '', characteristic: '' };
  const { appliesTo } = after;
  return [
    ...fieldDifferences(itself, [words.itself], planFields(before), planFields(after)),
    ...listDifferences(before.gates, after.gates, (gate) => ({ gate: gate.id, characteristic: '' }), [], (was, is) => [
      ...fieldDifferences({ gate: is.id, characteristic: '' }, [is.name], gateFields(was, before), gateFields(is, after)),
      ...listDifferences(was.characteristics, is.characteristics, ({ id }) => ({ gate: is.id, characteristic: id }), [is.name], (old, now) => characteristicDifferences({ gate: is.id, characteristic: now.id }, [is.name, now.name], old, now, appliesTo)),
    ]),
  ];
}

function characteristicDifferences(place: PlanPlace, where: readonly string[], before: Characteristic, after: Characteristic, subject: InspectionPlan['appliesTo']): readonly PlanDifference[] {
  const [was, is] = [characteristicForms(before, subject, []), characteristicForms(after, subject, [])];
  const sameRule = before.kind === after.kind && before.sampling.rule === after.sampling.rule;
  const rule: readonly PlanDifference[] = sameRule ? fieldDifferences(place, where, was.rule, is.rule) : [{ place, where: [...where, words.change.rule].join(', '), what: 'changed', from: ruleText(before), to: ruleText(after) }];
  return [...fieldDifferences(place, where, [...was.what, ...was.limits], [...is.what, ...is.limits]), ...rule];
}

function fieldDifferences(place: PlanPlace, where: readonly string[], before: readonly EditField<unknown>[], after: readonly EditField<unknown>[]): readonly PlanDifference[] {
  const [was, is] = [new Map(before.map((field) => [field.key, field])), new Map(after.map((field) => [field.key, field]))];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((key): readonly PlanDifference[] => {
    const [old, now] = [was.get(key), is.get(key)];
    if (old?.text === now?.text) return [];
    const label = now?.label ?? old?.label ?? key;
    return [{ place, where: [...where, label].join(', '), what: 'changed', from: old === undefined ? words.none : fieldWritten(old), to: now === undefined ? words.none : fieldWritten(now) }];
  });
}

function listDifferences<T extends GatePlan | Characteristic>(before: readonly T[], after: readonly T[], place: (each: T) => PlanPlace, where: readonly string[], inside: (was: T, is: T) => readonly PlanDifference[]): readonly PlanDifference[] {
  const keptBefore = before.filter(({ id }) => after.some((each) => each.id === id)).map(({ id }) => id);
  const keptAfter = after.filter(({ id }) => keptBefore.includes(id)).map(({ id }) => id);
  const changes = after.flatMap((is): readonly PlanDifference[] => {
    const was = before.find(({ id }) => id === is.id);
    const named = [...where, is.name].join(', ');
    if (was === undefined) return [{ place: place(is), where: named, what: 'added', from: '', to: 'sampling' in is ? ruleText(is) : is.characteristics.map(({ name }) => name).join(', ') }];
    const [from, to] = [keptBefore.indexOf(is.id), keptAfter.indexOf(is.id)];
    const move: readonly PlanDifference[] = from === to ? [] : [{ place: place(is), where: named, what: 'moved', from: words.change.place(showFigure(before.indexOf(was) + 1)), to: words.change.place(showFigure(after.indexOf(is) + 1)) }];
    return [...move, ...inside(was, is)];
  });
  const gone = before.filter(({ id }) => !after.some((each) => each.id === id));
  return [...changes, ...gone.map((was): PlanDifference => ({ place: place(was), where: [...where, was.name].join(', '), what: 'removed', from: 'sampling' in was ? ruleText(was) : was.characteristics.map(({ name }) => name).join(', '), to: '' }))];
}

/** Places where something differs: those changed, and the gates that hold them. */
export function changedPlaces(differences: readonly PlanDifference[]): ReadonlySet<string> {
  return new Set(differences.map(({ place }) => placeText(place)));
}
