import { beforeEach, describe, expect, it } from 'vitest';
import type { Characteristic, Decision, InspectionPlan, ServerCommand, SlipBody } from '../../../shared/traveller/index.ts';
import { normalValues } from '../../property/metrology/normal-values.ts';
import { CREW, littlePlant, MASTER, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { gateRecord, length, routeWith } from '../../property/traveller/on-the-way.ts';

const weight = (rule: Partial<Extract<Characteristic, { kind: 'measured' }>['sampling']> = {}): Characteristic => length({ id: 'weight', name: 'Weight', unit: 'g', gaugeKind: 'balance', lower: 9.95, upper: 10.05, target: 10, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2, ...rule } as Extract<Characteristic, { kind: 'measured' }>['sampling'] });
const looks = (rule: { readonly everyPieces: number; readonly everyMinutes?: number; readonly graceMinutes?: number }): Characteristic => ({ kind: 'counted', id: 'looks', name: 'Look', method: 'lens', destructive: false, kinds: [{ code: 'PC', name: 'Crack', class: 'critical' }], sampling: { rule: 'interval', n: 5, ...rule } });

let plant: LittlePlant;
function atPress(route: InspectionPlan, pieces = 1000): void {
  plant = littlePlant(route);
  releasedBatch(plant);
  openLot(plant, 'A1', pieces);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  plant.must({ type: 'registerPress', press: { id: 'PR-2', name: 'Press 2', bench: 'Bench', balance: 'BAL-21' } });
  plant.must({ type: 'setPress', press: 'PR-2', lot: 'A1' }, CREW[1]);
}
const feed = (fromSeq: number, values: readonly number[], missing = 0): ServerCommand => ({ type: 'takeFeed', press: 'PR-2', fromSeq, missing, values });
const steady = (count: number): number[] => Array.from({ length: count }, (_, at) => 10 + (at % 2 === 0 ? 0.004 : -0.004));
const types = (decision: Decision): string[] => ('slips' in decision ? decision.slips.map(({ body }) => body.type) : [decision.refusal.code]);
const work = (id: string) => gateRecord(plant, 'lot:A1', 'own').work.find(({ demand }) => demand.characteristic.id === id);
const told = <Type extends SlipBody['type']>(type: Type): Extract<SlipBody, { type: Type }>[] => plant.slips.map(({ body }) => body).filter((body): body is Extract<SlipBody, { type: Type }> => body.type === type);

describe('the weights a press sends', () => {
  beforeEach(() => atPress(routeWith(weight(), looks({ everyPieces: 250 }))));

  it('belong to the lot it is set on, carry its balance, and make no press a worker', () => {
    expect(types(plant.own(feed(7001, steady(120))))).toEqual(['weightsTaken']);
    expect(work('weight')).toMatchObject({ weights: { running: { n: 120 }, uncertainty: 0.002 }, workers: [] });
    expect(told('weightsTaken')[0]).toMatchObject({ fromPiece: 1, feed: { press: 'PR-2', fromSeq: 7001, missing: 0 }, gauge: { id: 'BAL-21' } });
    expect(plant.slips.at(-1)?.by).toBe('press:PR-2');
  });
  it('follow each other: a repeat or a gap is refused, a gap owned up to is written down', () => {
    plant.own(feed(1, steady(100)));
    expect(plant.own(feed(1, steady(100)))).toEqual({ refusal: { code: 'feedGap', press: 'Press 2', expected: 101, got: 1 } });
    expect(plant.own(feed(111, steady(10)))).toEqual({ refusal: { code: 'feedGap', press: 'Press 2', expected: 101, got: 111 } });
    expect(types(plant.own(feed(111, steady(10), 10)))).toEqual(['weightsTaken']);
    expect(work('weight')?.weights).toMatchObject({ running: { n: 110 }, missing: 10 });
  });
  it('go on counting under the next lot, and a lot taken up again does not take them twice', () => {
    plant.own(feed(1, steady(100)));
    openLot(plant, 'A2', 500);
    plant.must({ type: 'openGate', subject: 'lot:A2', gate: 'own' });
    plant.must({ type: 'setPress', press: 'PR-2', lot: 'A2' });
    expect(types(plant.own(feed(1, steady(100))))).toEqual(['feedGap']);
    plant.own(feed(101, steady(50)));
    plant.must({ type: 'setPress', press: 'PR-2', lot: 'A1' });
    expect(types(plant.own(feed(101, steady(50))))).toEqual(['feedGap']);
    expect(types(plant.own(feed(151, steady(50))))).toEqual(['weightsTaken']);
    expect(plant.lot('A1').feeds).toEqual([expect.objectContaining({ press: 'PR-2', toSeq: 200 })]);
  });
  it('are refused while the press stands, while the lot is on hold, and once the lot is weighed out', () => {
    plant.must({ type: 'hold', subject: 'lot:A1', reason: 'dropped' });
    expect(types(plant.own(feed(1, steady(10))))).toEqual(['subjectIsHeld']);
    plant.must({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'clear' }, reason: 'nothing broken' });
    plant.own(feed(1, steady(1000)));
    expect(types(plant.own(feed(1001, steady(1))))).toEqual(['weightsOutOfOrder']);
    plant.must({ type: 'setPress', press: 'PR-2', lot: null });
    expect(types(plant.own(feed(1001, steady(1))))).toEqual(['pressStands']);
  });
  it('of a balance that is overdue or not known do not count', () => {
    plant.must({ type: 'calibrateGauge', gauge: 'BAL-21', calibrationDue: '2026-11-19', expandedUncertainty: 0.001, certificate: 'K-1' });
    expect(plant.own(feed(1, steady(10)))).toMatchObject({ refusal: { code: 'gaugeCannotCount', gauge: 'BAL-21', why: 'overdue' } });
    expect(plant.refusalOf({ type: 'changePress', press: { id: 'PR-2', name: 'Press 2', bench: 'Bench', balance: 'BAL-99' }, reason: 'new balance' })).toBe('notFound');
  });
  it('of another balance begin a count of their own: its first numbers are no repeats of the one before', () => {
    plant.own(feed(1, steady(100)));
    plant.must({ type: 'changePress', press: { id: 'PR-2', name: 'Press two', bench: 'Bench', balance: 'BAL-21' }, reason: 'name' });
    expect(plant.own(feed(1, steady(10)))).toMatchObject({ refusal: { code: 'feedGap', expected: 101 } });
    plant.must({ type: 'changePress', press: { id: 'PR-2', name: 'Press two', bench: 'Bench', balance: 'BAL-21' }, reason: 'its program was set up again', countsAnew: true });
    expect(types(plant.own(feed(1, steady(50))))).toEqual(['weightsTaken']);
    expect(plant.own(feed(1, steady(50)))).toMatchObject({ refusal: { code: 'feedGap', expected: 51 } });
    expect(told('weightsTaken').map((slip) => slip.feed)).toEqual([{ press: 'PR-2', fromSeq: 1, missing: 0 }, { press: 'PR-2', fromSeq: 1, missing: 0, count: 2 }]);
    openLot(plant, 'A2', 500);
    plant.must({ type: 'openGate', subject: 'lot:A2', gate: 'own' });
    plant.must({ type: 'setPress', press: 'PR-2', lot: 'A2' });
    expect(plant.own(feed(1, steady(50)))).toMatchObject({ refusal: { code: 'feedGap', expected: 51 } });
    plant.must({ type: 'setPress', press: 'PR-2', lot: 'A1' });
    plant.own(feed(51, steady(10)));
    expect(work('weight')?.weights?.running.n).toBe(160);
    expect(plant.refusalOf({ type: 'changePress', press: { id: 'PR-2', name: 'Press two', bench: 'Bench', balance: 'BAL-21' }, reason: 'again' })).toBe('nothingChanged');
  });
  it('of two presses on one lot fill it together, each with its own numbers, and to its last piece alone', () => {
    plant.must({ type: 'registerPress', press: { id: 'PR-3', name: 'Press 3', bench: 'Bench', balance: 'BAL-21' } });
    plant.must({ type: 'setPress', press: 'PR-3', lot: 'A1' }, CREW[1]);
    plant.own(feed(1, steady(600)));
    expect(types(plant.own({ ...feed(1, steady(380)), press: 'PR-3' } as ServerCommand))[0]).toBe('weightsTaken');
    expect(types(plant.own(feed(601, steady(21))))).toEqual(['weightsOutOfOrder']);
    plant.own(feed(601, steady(20)));
    expect(work('weight')?.weights?.running.n).toBe(1000);
    expect(plant.lot('A1').feeds).toEqual([expect.objectContaining({ press: 'PR-3', toSeq: 380 }), expect.objectContaining({ press: 'PR-2', toSeq: 620 })]);
  });
  it('that its balance cannot have shown are refused: nothing, not a number, more than it bears', () => {
    for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e9, 9.98765]) expect(plant.own(feed(1, [10, value])), String(value)).toMatchObject({ refusal: { code: 'valueImpossible' } });
    expect(work('weight')?.weights ?? null).toBeNull();
  });
  it('no press is set on a lot whose gate weighs nothing, or is not open', () => {
    openLot(plant, 'A2', 500);
    expect(plant.refusalOf({ type: 'setPress', press: 'PR-2', lot: 'A2' })).toBe('gateNotOpen');
    expect(plant.refusalOf({ type: 'setPress', press: 'PR-2', lot: 'A1' })).toBe('nothingChanged');
    expect(plant.refusalOf({ type: 'setPress', press: 'PR-2', lot: null }, CREW[0])).toBe('notYourRole');
  });
  it('need no more room in the lot’s state however many blocks come', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 100_000 })), 100_000);
    const next = normalValues(2);
    const block = (): number[] => Array.from({ length: 120 }, () => Number((10 + 0.008 * next()).toFixed(3)));
    const size = (): number => JSON.stringify(plant.lot('A1')).length;
    for (let nth = 0; nth < 20; nth += 1) plant.own(feed(1 + nth * 120, block()));
    const early = size();
    for (let nth = 20; nth < 400; nth += 1) plant.own(feed(1 + nth * 120, block()));
    expect(work('weight')?.weights?.running.n).toBe(48_000);
    expect(size()).toBeLessThan(early + 120);
  });
});

describe('a drift of the weights', () => {
  const drifting = (from: number, count: number): number[] => {
    const next = normalValues(9);
    for (let skipped = 1; skipped < from; skipped += 1) next();
    return Array.from({ length: count }, (_, at) => Number((10 + 0.008 * next() + Math.max(0, from + at - 300) * 0.00005).toFixed(3)));
  };
  const run = (blocks: number): void => {
    for (let nth = 0; nth < blocks; nth += 1) plant.own(feed(1 + nth * 60, drifting(1 + nth * 60, 60)));
  };

  it('is told before a piece lies outside, with the piece it leads to as soon as that can be foretold', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 5000 })), 5000);
    run(12);
    expect(work('weight')?.weights?.outside).toBe(0);
    const [first, ...again] = told('driftAnnounced');
    expect(first).toMatchObject({ alarm: 1, side: 'above', target: 10, limit: 10.05 });
    expect([first, ...again].length).toBeLessThanOrEqual(2);
    const foretold = [first, ...again].find((slip) => slip?.predicted != null)?.predicted;
    // The mean is 3 σ from 10.05 at piece 300 + (0.05 − 0.024) / 0.00005 = 820.
    expect(foretold?.from).toBeLessThanOrEqual(820);
    expect(foretold?.to ?? Infinity).toBeGreaterThanOrEqual(820);
    expect(told('held')).toEqual([]);
  });
  it('holds the lot where the plan says so, once an alarm', () => {
    atPress(routeWith(weight({ drift: { holds: true } }), looks({ everyPieces: 5000 })), 5000);
    run(12);
    expect(told('held')).toEqual([expect.objectContaining({ cause: { by: 'drift', gate: 'own', characteristic: 'weight' } })]);
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'clear' }, reason: 'press set again' })).toBe('none');
  });
  it('ends when the mean is back', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 5000 })), 5000);
    run(10);
    plant.own(feed(601, steady(400)));
    expect(told('driftEnded')).toEqual([expect.objectContaining({ alarm: 1 })]);
    expect(work('weight')?.weights?.told).toEqual({ alarm: 1, foretold: expect.any(Boolean) as boolean, ended: true });
  });
  it('a plan may name another λ, and a σ of its own', () => {
    atPress(routeWith(weight({ drift: { lambda: 0.2, sigma: 0.01 } }), looks({ everyPieces: 250 })));
    expect(work('weight')?.demand.basis).toMatchObject({ drift: { lambda: 0.2, limitFactor: 5.22, sigma: 0.01, target: 10, resolution: 0.001, holds: false } });
  });
});

describe('looks under a press’s feed', () => {
  it('fall due with the pieces, are told, and are missed when the next falls due; the verdict names them', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 100 })), 300);
    expect(types(plant.own(feed(1, steady(100))))).toEqual(['weightsTaken', 'lookFellDue']);
    expect(types(plant.own(feed(101, steady(99))))).toEqual(['weightsTaken']);
    expect(types(plant.own(feed(200, steady(1))))).toEqual(['weightsTaken', 'lookMissed', 'lookFellDue']);
    const look = { type: 'takeLook', subject: 'lot:A1', gate: 'own', characteristic: 'looks', found: 0 } as const;
    expect(plant.refusalOf({ ...look, look: 1 })).toBe('lookOutOfOrder');
    plant.must({ ...look, look: 2 });
    plant.own(feed(201, steady(100)));
    // The last look waits however long: nothing follows it.
    plant.wait(600);
    expect(types(plant.own({ type: 'callLooks', subject: 'lot:A1', gate: 'own' }))).toEqual([]);
    plant.must({ ...look, look: 3 });
    expect(told('verdictGiven').at(-1)?.verdict).toMatchObject({ accepted: true, workers: [MASTER.badge], results: [{}, { detail: { by: 'interval', looks: 2, found: 0, missed: [{ look: 1, piece: 100 }] } }] });
  });
  it('a block typed by a person misses none: the kiosk asks for each look in turn', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 100 })), 300);
    plant.must({ type: 'takeWeights', subject: 'lot:A1', gate: 'own', characteristic: 'weight', fromPiece: 1, values: steady(300), gauge: 'BAL-21' });
    expect(told('lookMissed')).toEqual([]);
  });
  it('by minutes: due so long after the first piece, only when pieces were made since, and missed when the next is', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 10_000, everyMinutes: 30 })), 10_000);
    const clock = (): string[] => types(plant.own({ type: 'callLooks', subject: 'lot:A1', gate: 'own' }));
    plant.wait(60);
    expect(clock()).toEqual([]);
    plant.own(feed(1, steady(50)));
    plant.wait(29);
    expect(clock()).toEqual([]);
    plant.wait(2);
    expect(clock()).toEqual(['lookFellDue']);
    expect(told('lookFellDue')[0]).toMatchObject({ look: 1, by: 'minutes', piece: 50 });
    plant.wait(31);
    // The press stood: no other look falls due, so this one is only late.
    expect(clock()).toEqual([]);
    expect(types(plant.own(feed(51, steady(10))))).toEqual(['weightsTaken', 'lookMissed', 'lookFellDue']);
    plant.must({ type: 'takeLook', subject: 'lot:A1', gate: 'own', characteristic: 'looks', look: 2, found: 0 });
    plant.wait(31);
    expect(clock()).toEqual([]);
  });
  it('with a grace: taken to its last second, missed from the next, and due on the very minute', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 10_000, everyMinutes: 30, graceMinutes: 10 })), 10_000);
    plant.own(feed(1, steady(50)));
    const since = Date.parse(plant.lot('A1').lastAt);
    const clock = (): string[] => types(plant.own({ type: 'callLooks', subject: 'lot:A1', gate: 'own' }));
    plant.wait(30);
    expect(clock()).toEqual(['lookFellDue']);
    const due = Date.parse(plant.lot('A1').lastAt);
    expect(due - since).toBeGreaterThanOrEqual(30 * 60_000);
    plant.wait(9);
    expect(clock()).toEqual([]);
    plant.wait(1);
    expect(clock()).toEqual(['lookMissed']);
    // Once only, however often the clock looks.
    expect(clock()).toEqual([]);
    expect(plant.refusalOf({ type: 'takeLook', subject: 'lot:A1', gate: 'own', characteristic: 'looks', look: 1, found: 0 })).toBe('lookOutOfOrder');
  });
  it('with a grace: missed when it is over, and with the last one the verdict falls; where nobody looked at all it is no acceptance', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 100, graceMinutes: 10 })), 100);
    plant.own(feed(1, steady(100)));
    plant.wait(11);
    expect(types(plant.own({ type: 'callLooks', subject: 'lot:A1', gate: 'own' }))).toEqual(['lookMissed', 'verdictGiven', 'held']);
    expect(told('verdictGiven').at(-1)?.verdict).toMatchObject({ accepted: false, workers: [], results: [{ accepted: true }, { accepted: false, detail: { looks: 0, found: 0, missed: [{ look: 1, piece: 100 }] } }] });
  });
  it('with one look taken and found clean the lot is accepted, and the one that was missed is named', () => {
    atPress(routeWith(weight(), looks({ everyPieces: 100, graceMinutes: 10 })), 200);
    plant.own(feed(1, steady(100)));
    plant.must({ type: 'takeLook', subject: 'lot:A1', gate: 'own', characteristic: 'looks', look: 1, found: 0 }, CREW[1]);
    plant.own(feed(101, steady(100)));
    plant.wait(11);
    plant.own({ type: 'callLooks', subject: 'lot:A1', gate: 'own' });
    expect(told('verdictGiven').at(-1)?.verdict).toMatchObject({ accepted: true, results: [{}, { detail: { looks: 1, missed: [{ look: 2, piece: 200 }] } }] });
  });
});