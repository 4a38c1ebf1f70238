import { CAUTIONS, isOurCaution, ROLES, SUBJECT_KINDS, type GatePlan, type InspectionPlan } from '../../../shared/traveller/index.ts';
import type { WrittenCaution } from '../../../shared/wire/cautions-view.ts';
import { cautions } from '../../../shared/words/cautions.en.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { labels } from '../../desk/words.ts';
import { choiceField, severalField, textField, type EditField } from './edit-field.ts';

const words = planWritingWords.gate;

/** What can be said about a gate besides its characteristics. Only a lot's plan may have gates worked on another subject. */
export function gateFields(gate: GatePlan, { appliesTo }: Pick<InspectionPlan, 'appliesTo'>, written: readonly Pick<WrittenCaution, 'caution' | 'text'>[] = []): readonly EditField<GatePlan>[] {
  const keys = [...new Set([...CAUTIONS, ...written.map(({ caution }) => caution), ...gate.cautions])];
  const said = (key: string): string => written.find(({ caution }) => caution === key)?.text ?? (isOurCaution(key) ? cautions[key] : key);
  return [
    textField('name', words.name, gate.name, (name) => ({ ...gate, name }), { most: 60 }),
    textField('bench', words.bench, gate.bench, (bench) => ({ ...gate, bench }), { most: 60, hint: words.benchHint }),
    ...(appliesTo !== 'lot' ? [] : [choiceField<GatePlan>('workedOn', words.workedOn, 'tiles', gate.workedOn, SUBJECT_KINDS.map((kind) => ({ value: kind, text: labels.subjectKinds[kind] })), (chosen) => {
      const workedOn = SUBJECT_KINDS.find((each) => each === chosen) ?? gate.workedOn;
      return workedOn === gate.workedOn ? gate : { ...gate, workedOn, characteristics: workedOn === appliesTo ? gate.characteristics : [] };
    }, { hint: words.workedOnHint })]),
    severalField('roles', words.roles, gate.roles, ROLES.map((role) => ({ value: role, text: labels.roles[role] })), (chosen) => ({ ...gate, roles: ROLES.filter((role) => chosen.includes(role)) })),
    severalField('cautions', words.cautions, gate.cautions, keys.map((caution) => ({ value: caution, text: said(caution) })), (chosen) => ({ ...gate, cautions: keys.filter((caution) => chosen.includes(caution)) })),
  ];
}
/** What can be said about a plan as a whole. */
export function planFields(plan: InspectionPlan): readonly EditField<InspectionPlan>[] {
  return [textField('name', words.planName, plan.name, (name) => ({ ...plan, name }))];
}
