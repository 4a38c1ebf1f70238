import { expect, it } from 'vitest';
import { PLANS } from '../../../demo-data/plans.ts';
import { draftFault, draftFields, draftKey, planChanges, withChanges } from '../../../kiosk/plans/draft-fields.ts';

globalThis.document ??= { documentElement: { lang: 'en' } } as Document;
const found = PLANS.find(({ appliesTo }) => appliesTo === 'lot');
if (found === undefined) throw new Error('the demo plant has a route for lots');
const plan = found;
const aqls = { attributes: [0.65, 1, 1.5, 2.5], variables: [1, 1.5] };

it('changes the one number that was changed and nothing else', () => {
  const gate = plan.gates.find(({ characteristics }) => characteristics.some(({ sampling }) => sampling.rule === 'attributes' && sampling.aqlPercent.minor === 2.5));
  const characteristic = gate?.characteristics.find(({ sampling }) => sampling.rule === 'attributes');
  const changed = withChanges(plan, new Map([[draftKey(gate?.id ?? '', characteristic?.id ?? '', 'aql:minor'), '1,5']]));
  expect(planChanges(plan, changed)).toEqual([{ where: expect.stringContaining('minor'), from: '2.5', to: '1.5' }]);
  expect(withChanges(changed, new Map([[draftKey(gate?.id ?? '', characteristic?.id ?? '', 'aql:minor'), '2.5']]))).toEqual(plan);
});

it('gives back the same plan when every field keeps its text', () => {
  const all = plan.gates.flatMap((gate) => gate.characteristics.flatMap((characteristic) => draftFields(characteristic).map(({ name, text }) => [draftKey(gate.id, characteristic.id, name), text] as const)));
  expect(all.length).toBeGreaterThan(10);
  expect(withChanges(plan, new Map(all))).toEqual(plan);
});

it.each([
  { kind: 'attributesAql' as const, text: '3', sound: false }, { kind: 'attributesAql' as const, text: '2,5', sound: true }, { kind: 'variablesAql' as const, text: '2.5', sound: false },
  { kind: 'whole' as const, text: '0', sound: false }, { kind: 'whole' as const, text: '2.5', sound: false }, { kind: 'whole' as const, text: '5', sound: true },
  { kind: 'number' as const, text: '', sound: false }, { kind: 'number' as const, text: '-4.1', sound: true }, { kind: 'percent' as const, text: '-1', sound: false },
  { kind: 'rating' as const, text: 'A02', sound: true }, { kind: 'rating' as const, text: 'A03', sound: false },
])('takes “$text” as $kind: $sound', ({ kind, text, sound }) => {
  expect(draftFault({ name: '', label: '', text: '', kind, scale: ['A00', 'A02'] }, text, aqls) === '').toBe(sound);
});
