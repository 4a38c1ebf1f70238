import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { readFurnaceLog } from '../../../shared/carbide/furnace-log/index.ts';
import { NotAtHand, verdictOf } from '../../../shared/traveller/index.ts';
import type { AttachedFile, Command, Stamp } from '../../../shared/traveller/index.ts';
import { demoFurnaceLog } from '../../../demo-data/furnace-log.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { CREW, littlePlant, MASTER } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { checkFurnace, gateRecord, press, standing } from '../../property/traveller/on-the-way.ts';
import { openLot, releasedBatch } from '../../property/traveller/little-plant.ts';

const file = (text: string): AttachedFile => ({ digest: createHash('sha256').update(text).digest('hex'), bytes: text.length, log: readFurnaceLog(text) });
const GOOD = file(demoFurnaceLog('F1'));
const DIP = file(demoFurnaceLog('F1', { dip: true }));
const CONFIRM = { type: 'takeReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'programme', ordinal: 1, value: true } as const;
const attach = (attachment: string): Command => ({ type: 'attachFurnaceLog', charge: 'F1', attachment, fileName: 'F1.csv' });

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
  openLot(plant, 'A1', 100);
  press(plant, 'A1');
  plant.must({ type: 'openCharge', charge: 'F1', kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', equipment: 'Furnace 1', members: [{ lot: 'A1', places: ['Top'] }] });
});
const taken = (attached: AttachedFile, by: Stamp['by'] = MASTER) => plant.must(attach(attached.digest), by, { attached });
const charge = () => {
  const state = plant.state('furnace:F1');
  if (state?.kind !== 'furnace') throw new Error('no charge F1');
  return state;
};

describe('a furnace log is attached', () => {
  it('and held against the programme on record: the invented run of 13 h lies within, the one with a dip does not', () => {
    taken(GOOD);
    expect(charge().logs.map(({ check, rows, lengthMin, programme, programmeVersion }) => [check.within, check.findings, rows, lengthMin, programme.id, programmeVersion])).toEqual([[true, [], 801, 800, 'SINTER-07', 1]]);
    taken(DIP);
    // Seven minutes at 1391 °C, within again at minute 622; the soak of 66 min by the controller is short by the dip.
    expect(charge().logs.at(-1)?.check.findings.map(({ kind, fromMin, toMin, limit }) => [kind, fromMin, toMin, limit])).toEqual([['tooCold', 615, 622, 1402], ['soakShort', expect.any(Number), expect.any(Number), 57]]);
    expect(charge().logs.length).toBe(2);
  });

  it('as digest, findings and a reduced curve: the slip stays small', () => {
    const [slip] = taken(DIP);
    expect(JSON.stringify(slip).length).toBeLessThan(20_000);
    expect(slip).toMatchObject({ type: 'furnaceLogAttached', attachment: DIP.digest, bytes: DIP.bytes });
    expect(charge().logs[0]?.curve.leastC.some((least) => least < 1392 && least > 1390)).toBe(true);
  });

  it('only with the file: a kiosk that has it not waits for the server, and a file nobody handed in is not found', () => {
    expect(() => plant.ask(attach(GOOD.digest))).toThrow(NotAtHand);
    expect(plant.refusalOf(attach(GOOD.digest), MASTER, { attached: null })).toBe('notFound');
    expect(plant.refusalOf(attach(GOOD.digest), MASTER, { attached: DIP })).toBe('notFound');
  });

  it('only where it can be read, by somebody of lab, floor or quality, and once', () => {
    const bad = file('time,temperature\n0,20\n1,n/a');
    expect(plant.ask(attach(bad.digest), MASTER, { attached: bad })).toMatchObject({ refusal: { code: 'logUnreadable', fault: { code: 'notANumber', line: 3, column: 2 } } });
    expect(plant.refusalOf(attach(GOOD.digest), CREW[4], { attached: GOOD })).toBe('notYourRole');
    taken(GOOD, CREW[0]);
    expect(plant.refusalOf(attach(GOOD.digest), MASTER, { attached: GOOD })).toBe('nothingChanged');
  });

  it('only to a charge whose programme is on record', () => {
    openLot(plant, 'A2', 50);
    press(plant, 'A2');
    plant.must({ type: 'openCharge', charge: 'F2', kind: 'furnace', specification: 'DEMO-F8', programme: 'UNKNOWN', equipment: 'Furnace 1', members: [{ lot: 'A2', places: ['Top'] }] });
    expect(plant.ask({ ...attach(GOOD.digest), charge: 'F2' } as Command, MASTER, { attached: GOOD })).toMatchObject({ refusal: { code: 'notFound', what: 'programme', id: 'UNKNOWN' } });
  });

  it('after the verdict, and outside the limits, holds the charge', () => {
    checkFurnace(plant, 'F1');
    taken(GOOD);
    expect(standing(plant, 'furnace:F1')).toEqual([]);
    taken(DIP);
    expect(standing(plant, 'furnace:F1').length).toBe(1);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'dimensions' })).toBe('upstreamIsHeld');
  });
});

describe('the confirmation that a log backs', () => {
  beforeEach(() => plant.must({ type: 'openGate', subject: 'furnace:F1', gate: 'sinter-check' }));
  const result = () => verdictOf(gateRecord(plant, 'furnace:F1', 'sinter-check'))?.verdict.results.find(({ characteristic }) => characteristic === 'programme')?.detail;
  const reading = () => gateRecord(plant, 'furnace:F1', 'sinter-check').work.find(({ demand }) => demand.characteristic.id === 'programme')?.readings[0];

  it('is asked for in the demo plan of a furnace charge', () => {
    expect(PLANS.find(({ id }) => id === 'FURNACE-F8')?.gates[0]?.characteristics[0]).toMatchObject({ id: 'programme', backedBy: 'furnaceLog' });
  });

  it('yes is taken on a log within the limits, and the slip says which log', () => {
    taken(GOOD);
    plant.must(CONFIRM);
    expect([reading()?.log, reading()?.despite]).toEqual([{ attachment: GOOD.digest, within: true, findings: 0 }, undefined]);
  });

  it('yes is refused without a log, and where the log says otherwise; no is always taken', () => {
    expect(plant.ask(CONFIRM)).toMatchObject({ refusal: { code: 'logSaysOtherwise', findings: null } });
    taken(DIP);
    expect(plant.ask(CONFIRM)).toMatchObject({ refusal: { code: 'logSaysOtherwise', findings: 2 } });
    expect(plant.refusalOf({ ...CONFIRM, despite: ' ' })).toBe('logSaysOtherwise');
    plant.must({ ...CONFIRM, value: false });
    expect(reading()).toMatchObject({ value: false, log: { within: false, findings: 2 } });
  });

  it('yes in spite of the log stands with its reason, to the verdict', () => {
    taken(DIP);
    plant.must({ ...CONFIRM, despite: 'Thermocouple 2 slipped; thermocouple 1 within on the strip' });
    expect(reading()?.despite).toBe('Thermocouple 2 slipped; thermocouple 1 within on the strip');
    for (const { demand: { characteristic, n } } of gateRecord(plant, 'furnace:F1', 'sinter-check').work.slice(1)) for (let ordinal = 1; ordinal <= n; ordinal += 1) {
      const value = characteristic.kind === 'measured' ? characteristic.target : characteristic.kind === 'graded' ? characteristic.scale[0] ?? '' : true;
      const gauge = characteristic.kind === 'measured' ? { density: 'DEN-41', coercivity: 'COE-42', hardness: 'HAR-43' }[characteristic.id] : undefined;
      plant.must({ type: 'takeReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: characteristic.id, ordinal, value, ...(gauge === undefined ? {} : { gauge }) });
    }
    expect(result()).toMatchObject({ by: 'once', confirmed: true, despite: 'Thermocouple 2 slipped; thermocouple 1 within on the strip', log: { within: false } });
  });

  it('a reason given where none was needed is not kept', () => {
    taken(GOOD);
    plant.must({ ...CONFIRM, despite: 'just so' });
    expect(reading()?.despite).toBeUndefined();
  });
});
