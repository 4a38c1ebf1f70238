import { expect, it } from 'vitest';
import { PLANS } from '../../../demo-data/plans.ts';
import { characteristicFields, withNewKind, withoutKind } from '../../../kiosk/plans/write/characteristic-fields.ts';
import { gateFields, planFields } from '../../../kiosk/plans/write/gate-fields.ts';
import { freeKey, moved, placeOf, without, withCharacteristic, withGate, withNewCharacteristic, withNewGate } from '../../../kiosk/plans/write/plan-edits.ts';
import { planDifferences } from '../../../kiosk/plans/write/plan-differences.ts';
import { faultOfPlan } from '../../../kiosk/plans/write/plan-fault-place.ts';
import { FIRST_RULES, kindsFor, rulesFor, withRule } from '../../../kiosk/plans/write/rule-choices.ts';
import type { Characteristic, InspectionPlan } from '../../../shared/traveller/index.ts';
import { inspectionPlanSchema } from '../../../shared/wire/plan-schema.ts';

globalThis.document ??= { documentElement: { lang: 'en' } } as Document;
const found = PLANS.find(({ appliesTo }) => appliesTo === 'lot');
if (found === undefined) throw new Error('the demo plant has a route for lots');
const plan = found;
const looks = placeOf('final-visual/looks');

function counted(): Extract<Characteristic, { kind: 'counted' }> {
  const characteristic = plan.gates.find(({ id }) => id === looks.gate)?.characteristics.find(({ id }) => id === looks.characteristic);
  if (characteristic?.kind !== 'counted') throw new Error('the final visual counts');
  return characteristic;
}
/** Types a text into a field of the looks at final visual. */
function typed(key: string, text: string, from: Characteristic = counted()) {
  const put = characteristicFields(from, 'lot', []).find((field) => field.key === key)?.put(text);
  if (put === undefined) throw new Error(`there is no field ${key}`);
  return put;
}
const changedTo = (characteristic: Characteristic): InspectionPlan => withCharacteristic(plan, looks, characteristic);

it('makes the same of every field when its own text is typed again', () => {
  let fields = 0;
  for (const each of PLANS) {
    for (const field of planFields(each)) expect(field.put(field.text)).toEqual({ value: each });
    for (const gate of each.gates) {
      for (const field of gateFields(gate, each)) expect(field.put(field.text), `${each.id} ${gate.id} ${field.key}`).toEqual({ value: gate });
      for (const characteristic of gate.characteristics) {
        for (const field of characteristicFields(characteristic, each.appliesTo, [])) {
          fields += 1;
          expect(field.put(field.text), `${each.id} ${gate.id} ${characteristic.id} ${field.key}`).toEqual({ value: characteristic });
        }
      }
    }
  }
  expect(fields).toBeGreaterThan(300);
});

it('lists the one AQL that was changed and nothing else', () => {
  const put = typed('attributes.aql.minor', '1.5');
  const after = 'value' in put ? changedTo(put.value) : plan;
  expect(planDifferences(plan, after)).toEqual([{ place: looks, where: 'Final visual, Looks, AQL minor', what: 'changed', from: '2.5 %', to: '1.5 %' }]);
  expect(planDifferences(after, plan)).toHaveLength(1);
  expect(planDifferences(plan, plan)).toEqual([]);
});

it('leaves no trace of a choice that goes back to what is usual', () => {
  const double = typed('attributes.samples', 'double');
  if (!('value' in double)) throw new Error('two samples may be chosen');
  expect(double.value.sampling).toHaveProperty('samples', 'double');
  expect(typed('attributes.samples', 'single', double.value)).toEqual({ value: counted() });
});

it.each([
  { key: 'attributes.aql.minor', text: '3', why: 'no preferred value' }, { key: 'attributes.aql.minor', text: '15', why: 'above 10 only nonconformities are counted' }, { key: 'attributes.level', text: 'IV', why: 'no level by attributes' },
  { key: 'name', text: '  ', why: 'nothing written' }, { key: 'kinds.0.name', text: 'two\nlines', why: 'not one line' },
])('takes no “$text” at $key: $why', ({ key, text }) => {
  expect(typed(key, text)).toHaveProperty('fault');
});

it.each([
  { text: '', sound: true }, { text: '0', sound: false }, { text: '-1', sound: false }, { text: '0,02', sound: true }, { text: 'x', sound: false },
])('takes “$text” as a known standard deviation: $sound', ({ text, sound }) => {
  const circle = plan.gates.find(({ id }) => id === 'dimensions')?.characteristics[0];
  if (circle === undefined) throw new Error('the route measures');
  expect('value' in typed('variables.sigma', text, circle)).toBe(sound);
});

it('makes a plan of every rule that can be chosen anywhere that can be worked and sent', () => {
  let tried = 0;
  for (const appliesTo of ['lot', 'batch', 'furnace', 'coating'] as const) {
    for (const kind of kindsFor(appliesTo)) {
      for (const rule of rulesFor({ kind, subject: appliesTo })) {
        const begun = withNewGate({ id: 'NEW', name: 'New', appliesTo, gates: [] }, 'Check');
        const { plan: made, place } = withNewCharacteristic(begun.plan, 'check', 'Something', kind);
        const first = made.gates[0]?.characteristics[0];
        const under = first === undefined ? null : withRule(first, rule);
        if (under === null) throw new Error(`${kind} on ${appliesTo} offers ${rule} and cannot have it`);
        const sound = withCharacteristic(made, place, under.kind === 'measured' ? { ...under, lower: 1, upper: 2 } : under);
        expect(faultOfPlan(sound), `${appliesTo} ${kind} ${rule}`).toBeNull();
        expect(inspectionPlanSchema.safeParse(sound).success).toBe(true);
        for (const field of characteristicFields(under, appliesTo, [])) expect(field.put(field.text), `${rule} ${field.key}`).toEqual({ value: under });
        tried += 1;
      }
    }
  }
  expect(tried).toBeGreaterThan(Object.keys(FIRST_RULES).length);
});

it('says of a fault which place and field it belongs to', () => {
  const uncounted = typed('attributes.aql.major', '');
  const after = 'value' in uncounted ? changedTo(uncounted.value) : plan;
  expect(faultOfPlan(after)).toMatchObject({ place: looks, why: 'classWithoutAql' });
  expect(faultOfPlan(after)?.fields).toContain('attributes.aql.');
  expect(faultOfPlan({ ...plan, gates: [] })).toMatchObject({ place: { gate: '', characteristic: '' }, why: 'noGate' });
  expect(faultOfPlan(withNewGate(plan, 'Another look').plan)).toMatchObject({ place: { gate: 'another-look', characteristic: '' }, why: 'noCharacteristic' });
  expect(faultOfPlan(plan)).toBeNull();
});

it('tells what was added, taken out and moved', () => {
  const added = withNewCharacteristic(plan, 'edge', 'Colour', 'confirmed').plan;
  expect(planDifferences(plan, added)).toMatchObject([{ what: 'added', where: 'Edge preparation, Colour' }]);
  expect(planDifferences(added, plan)).toMatchObject([{ what: 'removed', where: 'Edge preparation, Colour' }]);
  expect(planDifferences(plan, moved(plan, placeOf('marking'), -1)).map(({ what, where, from, to }) => `${where}: ${what} ${from} ${to}`)).toEqual(['Marking: moved place 8 place 7', 'Final visual: moved place 7 place 8']);
  expect(planDifferences(plan, without(plan, placeOf('edge')))).toMatchObject([{ what: 'removed', where: 'Edge preparation' }]);
  expect(moved(plan, placeOf('powder'), -1)).toEqual(plan);
});

it('tells another rule as a sentence against a sentence', () => {
  const limiting = withRule(counted(), 'limitingQuality');
  const [difference] = limiting === null ? [] : planDifferences(plan, changedTo(limiting));
  expect(difference?.from).toMatch(/^Single sampling by attributes, level II, AQL critical 0\.15 %/);
  expect(difference?.to).toMatch(/^For lots on their own: limiting quality critical 5 %/);
});

it('drops the characteristics of a gate that is worked elsewhere, and says so', () => {
  const gate = plan.gates.find(({ id }) => id === 'edge');
  const put = gate === undefined ? undefined : gateFields(gate, plan).find(({ key }) => key === 'workedOn')?.put('coating');
  if (put === undefined || 'fault' in put) throw new Error('a gate may be worked on a charge');
  expect(put.value.characteristics).toEqual([]);
  expect(planDifferences(plan, withGate(plan, 'edge', put.value)).map(({ what }) => what)).toEqual(['changed', 'removed', 'removed']);
});

it('gives every new thing a key that no other has', () => {
  expect(freeKey('Große Fläche', [])).toBe('gro-e-flache');
  expect(freeKey('Looks', ['looks', 'looks-2'])).toBe('looks-3');
  expect(freeKey('…', [])).toBe('gate');
  const more = withNewKind(withNewKind(counted()));
  expect(new Set(more.kinds.map(({ code }) => code)).size).toBe(counted().kinds.length + 2);
  expect(withoutKind(withoutKind(more, more.kinds.length - 1), more.kinds.length - 2)).toEqual(counted());
});
