import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commandExamples } from '../../../shared/wire/command-examples.ts';
import { readCommand } from '../../../shared/wire/read-command.ts';
import { refusalStatus } from '../../../shared/wire/refusal-status.ts';

const examples = Object.values(commandExamples);
const envelopeOf = (command: unknown, more: Record<string, unknown> = {}): unknown => ({ clientId: 'kiosk-3-0417', bench: 'Dimensions 1', command, ...more });
const problemsOf = (input: unknown) => { const read = readCommand(input); return read.ok ? [] : read.problems; };
const placesOf = (input: unknown) => problemsOf(input).map(({ where }) => where);

describe('reading a command', () => {
  it.each(examples.map((command) => [command.type, command] as const))('%s is read back as it was sent', (_, command) => {
    expect(readCommand(JSON.parse(JSON.stringify(envelopeOf(command, { seen: 3, pin: '1234', coSigner: { badge: 'P-02', pin: '5678' } }))))).toEqual({
      ok: true, envelope: envelopeOf(command, { seen: 3, pin: '1234', coSigner: { badge: 'P-02', pin: '5678' } }),
    });
  });

  it.each(examples.map((command) => [command.type, command] as const))('%s refuses a field nobody reads and names it', (_, command) => {
    expect(problemsOf(envelopeOf({ ...command, colour: 'red' }))).toEqual([{ where: 'command.colour', what: 'is not known here' }]);
  });

  it.each(examples.flatMap((command) => Object.keys(command).map((field) => [command.type, field, command] as const)))('%s refuses another kind of thing as %s and names the place', (_, field, command) => {
    const where = placesOf(envelopeOf({ ...command, [field]: { surprise: 1 } }));
    expect(where.length).toBeGreaterThan(0);
    expect(where.every((place) => place === `command.${field}` || place.startsWith(`command.${field}.`))).toBe(true);
  });

  it.each([
    ['a number that is none', { ...commandExamples.takeReading, value: Number.NaN }, 'command.value'],
    ['a number without end', { ...commandExamples.takeReading, value: Number.POSITIVE_INFINITY }, 'command.value'],
    ['a weight without end', { ...commandExamples.takeWeights, values: [9.8, Number.POSITIVE_INFINITY] }, 'command.values[1]'],
    ['a block of no weights', { ...commandExamples.takeWeights, values: [] }, 'command.values'],
    ['a block of 5001 weights', { ...commandExamples.takeWeights, values: Array.from({ length: 5001 }, () => 9.8) }, 'command.values'],
    ['half a piece', { ...commandExamples.packBox, pieces: 9.5 }, 'command.pieces'],
    ['a tray of no places', { ...commandExamples.openLot, trayCapacity: 0 }, 'command.trayCapacity'],
    ['a day that is not in the calendar', { ...commandExamples.calibrateGauge, calibrationDue: '2027-02-29' }, 'command.calibrationDue'],
    ['a country in small letters', { ...commandExamples.openPlant, plant: { ...commandExamples.openPlant.plant, country: 'se' } }, 'command.plant.country'],
    ['a PIN of three digits', { ...commandExamples.changePin, pin: '123' }, 'command.pin'],
    ['a PIN with a letter', { ...commandExamples.changePin, pin: '12a4' }, 'command.pin'],
    ['a role that is none', { ...commandExamples.enrolPerson, roles: ['inspector', 'chief'] }, 'command.roles[1]'],
    ['a disposition that is none', { ...commandExamples.dispose, disposition: { kind: 'forget' } }, 'command.disposition.kind'],
    ['a reason of 501 characters', { ...commandExamples.hold, reason: 'x'.repeat(501) }, 'command.reason'],
    ['a control character in a reason', { ...commandExamples.hold, reason: 'a\u0000b' }, 'command.reason'],
    ['an id of 65 characters', { ...commandExamples.releaseLot, lot: 'L'.repeat(65) }, 'command.lot'],
    ['an optional field that says undefined', { ...commandExamples.openLot, order: undefined }, 'command.order'],
    ['a type that is none', { type: 'closeGate' }, 'command.type'],
    ['a gauge whose range is empty', { ...commandExamples.registerGauge, gauge: { ...commandExamples.registerGauge.gauge, most: 0 } }, 'command.gauge.most'],
  ])('refuses %s at its place', (_, command, where) => expect(placesOf(envelopeOf(command))).toEqual([where]));

  it('names a place deep in a plan', () => {
    const { plan } = commandExamples.draftPlan;
    const gates = plan.gates.map((gate, index) => (index === 1 ? { ...gate, characteristics: gate.characteristics.map((each) => ({ ...each, sampling: { rule: 'variables', level: 'VI', aqlPercent: 1 } })) } : gate));
    expect(problemsOf(envelopeOf({ ...commandExamples.draftPlan, plan: { ...plan, gates } }))).toEqual([{ where: 'command.plan.gates[1].characteristics[0].sampling.level', what: 'must be one of: I, II, III, IV, V' }]);
  });

  it('a key of a plan holds no colon and no slash, for it becomes part of a stream’s name', () => {
    for (const id of ['a/b', 'a:b', '', ' a', 'a b']) expect(placesOf(envelopeOf({ ...commandExamples.draftPlan, plan: { ...commandExamples.draftPlan.plan, id } }))).toEqual(['command.plan.id']);
  });

  it.each([
    [{ clientId: 'short' }, 'clientId'], [{ clientId: 'x'.repeat(65) }, 'clientId'], [{ clientId: 'kiosk 3 0417' }, 'clientId'], [{ bench: 'x'.repeat(61) }, 'bench'], [{ bench: '' }, 'bench'],
    [{ seen: -1 }, 'seen'], [{ seen: 1.5 }, 'seen'], [{ pin: '' }, 'pin'], [{ coSigner: { badge: 'P-02' } }, 'coSigner.pin'], [{ extra: 1 }, 'extra'],
  ])('the envelope %j is refused at its place', (more, where) => expect(placesOf(envelopeOf(commandExamples.releaseLot, more))).toEqual([where]));

  it('a scanned label keeps the separators that belong to it', () => {
    expect(readCommand(envelopeOf(commandExamples.readLabel)).ok).toBe(true);
  });

  it('an empty reason passes on to the rule that asks for it', () => {
    expect(readCommand(envelopeOf({ ...commandExamples.scrapPieces, reason: '' })).ok).toBe(true);
  });

  it('no garbage makes it throw, and what is refused is refused with a place', () => {
    fc.assert(fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, withSet: true, withNullPrototype: true, withObjectString: true, withSparseArray: true, withTypedArray: true }), (garbage) => {
      for (const input of [garbage, envelopeOf(garbage), { ...commandExamples.openGate, clientId: garbage }]) {
        const read = readCommand(input);
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.problems.length).toBeGreaterThan(0);
      }
    }), { seed: 41, numRuns: 500 });
  });

  it('garbage in any one field of any command never throws, and never brings in a number that is none', () => {
    fc.assert(fc.property(fc.constantFrom(...examples), fc.nat(), fc.anything(), (command, nth, garbage) => {
      const fields = Object.keys(command);
      const read = readCommand(envelopeOf({ ...command, [fields[nth % fields.length] ?? 'type']: garbage }));
      if (read.ok) expect(JSON.parse(JSON.stringify(read.envelope))).toEqual(read.envelope);
    }), { seed: 42, numRuns: 2000 });
  });

  it('a field called __proto__ is a field nobody reads', () => {
    expect(placesOf(JSON.parse('{"clientId":"kiosk-3-0417","bench":"b","command":{"type":"releaseLot","lot":"L1","__proto__":{"x":1}}}'))).toEqual(['command.__proto__']);
  });

  it('names no more than 20 places', () => {
    expect(problemsOf(envelopeOf({ ...commandExamples.takeWeights, values: Array.from({ length: 60 }, () => 'x') }))).toHaveLength(20);
  });

  it('answers a malformed message with 400', () => expect(refusalStatus('malformed')).toBe(400));
});
