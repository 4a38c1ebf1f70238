import { beforeEach, describe, expect, it } from 'vitest';
import type { Command, Decision, Disposition } from '../../../shared/traveller/index.ts';
import { possibleDispositions, remainingPieces } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, labelledBox, passGate, press, releasedLot, standing, verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
/** A lot of 1,000 rejected at final visual for two chipped pieces. */
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  openLot(plant, 'A1');
  passGate(plant, 'A1', 'final-visual', [{ code: 'CH', pieces: 2 }]);
});
const refusalIn = (decision: Decision): unknown => ('refusal' in decision ? decision.refusal : null);
const visual = () => gateRecord(plant, 'lot:A1', 'final-visual');

describe('a rejected lot', () => {
  it('locks itself: no gate is begun and nothing is released until its hold is decided', () => {
    expect([visual().status, standing(plant, 'lot:A1')]).toEqual(['rejected', ['A1-H1']]);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' })).toBe('subjectIsHeld');
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A1' })).toBe('subjectIsHeld');
    expect(plant.refusalOf({ type: 'splitLot', lot: 'A1', into: 'A2', pieces: 10, reason: 'x' })).toBe('subjectIsHeld');
  });

  it('is never simply cleared', () => {
    const decision = plant.ask({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'clear' }, reason: 'looks fine' }, CREW[2]);
    expect(refusalIn(decision)).toEqual({ code: 'dispositionNotForThis', disposition: 'clear', possible: ['sort', 'rework', 'retest', 'concession', 'regrade', 'scrap', 'return'] });
  });

  it('is decided about by an engineer, with a signature and a reason, and by nobody else', () => {
    const sort: Command = { type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'sort' }, reason: 'worth it' };
    for (const person of [CREW[0], CREW[1], CREW[3], CREW[4]]) expect(plant.refusalOf(sort, person)).toBe('notYourRole');
    expect(plant.refusalOf(sort, CREW[2], { signed: false })).toBe('signatureMissing');
    expect(plant.refusalOf({ ...sort, reason: ' ' }, CREW[2])).toBe('reasonMissing');
    expect(plant.refusalOf({ ...sort, hold: 'A1-H2' }, CREW[2])).toBe('notFound');
    expect(plant.must(sort, CREW[2])[0]).toMatchObject({ type: 'disposed', signature: { badge: 'Q-401', role: 'engineer', meaning: 'disposedBy' } });
  });
});

describe('sorting', () => {
  const sorted = (looked: number, removed: readonly { readonly code: string; readonly pieces: number }[]): Command => ({ type: 'recordSort', lot: 'A1', gate: 'final-visual', looked, removed });

  it('looks at every piece, takes the bad ones out of the count, and opens the gate for a second inspection', () => {
    decideHold(plant, 'lot:A1', { kind: 'sort' });
    plant.must(sorted(1000, [{ code: 'CH', pieces: 12 }, { code: 'ST', pieces: 3 }]), CREW[1]);
    expect([remainingPieces(plant.lot('A1').balance), plant.lot('A1').balance.scrapped, visual().status, visual().original]).toEqual([985, 15, 'waiting', false]);
    passGate(plant, 'A1', 'final-visual');
    expect([verdictAt(plant, 'A1', 'final-visual').original, visual().status, visual().attempt]).toEqual([false, 'accepted', 2]);
  });

  it('that left pieces out, or took more out than it looked at, is refused', () => {
    decideHold(plant, 'lot:A1', { kind: 'sort' });
    expect(plant.refusalOf(sorted(999, []))).toBe('sortNotWhole');
    expect(plant.refusalOf(sorted(1000, [{ code: 'CH', pieces: 1001 }]))).toBe('sortNotWhole');
    expect(plant.refusalOf(sorted(1000, [{ code: 'CH', pieces: 0 }]))).toBe('sortNotWhole');
  });

  it('that nobody asked for is refused', () => {
    openLot(plant, 'A2');
    expect(plant.refusalOf({ type: 'recordSort', lot: 'A2', gate: 'final-visual', looked: 1000, removed: [] })).toBe('sortNotAskedFor');
  });

  it('comes before the second inspection: the gate is not opened while it is outstanding', () => {
    decideHold(plant, 'lot:A1', { kind: 'sort' });
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' })).toBe('gateNotOpen');
  });
});

describe('the other dispositions', () => {
  it.each<Disposition>([{ kind: 'rework', instruction: 'hone again' }, { kind: 'retest' }])('$kind opens the gate again as no first inspection', (disposition) => {
    decideHold(plant, 'lot:A1', disposition);
    expect([visual().status, visual().original, standing(plant, 'lot:A1')]).toEqual(['waiting', false, []]);
  });

  it('a rework says what is to be done', () => {
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'rework', instruction: ' ' }, reason: 'x' })).toBe('reasonMissing');
  });

  it('a concession lets the lot pass, limited as it states, and is signed as granted', () => {
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'concession', statement: '' }, reason: 'x' })).toBe('reasonMissing');
    decideHold(plant, 'lot:A1', { kind: 'concession', statement: 'for roughing only' });
    expect([visual().status, plant.lot('A1').concessions.map(({ gate, statement, signature: { meaning } }) => [gate, statement, meaning])]).toEqual(['conceded', [['final-visual', 'for roughing only', 'concessionGrantedBy']]]);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'marking' })).toBe('none');
  });

  it.each<readonly [Disposition, string, 'scrapped' | 'returned']>([[{ kind: 'scrap' }, 'scrapped', 'scrapped'], [{ kind: 'return', to: 'the maker' }, 'returned', 'returned']])('%o ends the lot with every piece accounted for', (disposition, how, where) => {
    decideHold(plant, 'lot:A1', disposition);
    const { ended, balance } = plant.lot('A1');
    expect([ended?.how, balance[where], remainingPieces(balance)]).toEqual([how, 1000, 0]);
    for (const command of [{ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' }, { type: 'releaseLot', lot: 'A1' }, { type: 'hold', subject: 'lot:A1', reason: 'x' }, { type: 'scrapPieces', lot: 'A1', pieces: 1, reason: 'x' }] as const) expect(plant.refusalOf(command)).toBe('subjectHasEnded');
  });

  it('a regrade goes on by the plan of the other product, on the same route and of the same grade', () => {
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'regrade', toProduct: 'TNMG-D2' }, reason: 'x' })).toBe('gradeDiffers');
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'regrade', toProduct: 'NONE' }, reason: 'x' })).toBe('notFound');
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('no CNMG-D1');
    plant.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D3', itemCode: 'CNMG120408-D3' } }, CREW[2]);
    decideHold(plant, 'lot:A1', { kind: 'regrade', toProduct: 'CNMG-D3' });
    expect([plant.lot('A1').product.itemCode, visual().status, visual().original]).toEqual(['CNMG120408-D3', 'waiting', false]);
  });

  it('a regrade to a route with other gates is refused: the lot would skip them', () => {
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('no CNMG-D1');
    plant.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D3', plan: 'ROUTE-TNMG' } }, CREW[2]);
    expect(refusalIn(plant.ask({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'regrade', toProduct: 'CNMG-D3' }, reason: 'x' }))).toEqual({ code: 'notFound', what: 'gate', id: 'pressing' });
  });
});

describe('a hold by a person', () => {
  beforeEach(() => openLot(plant, 'B1'));

  it('is anybody’s to set, with a reason, and an engineer’s to clear', () => {
    expect(plant.refusalOf({ type: 'hold', subject: 'lot:B1', reason: '' }, CREW[4])).toBe('reasonMissing');
    plant.must({ type: 'hold', subject: 'lot:B1', reason: 'tray 3 was dropped' }, CREW[4]);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:B1', gate: 'final-visual' })).toBe('subjectIsHeld');
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:B1', hold: 'B1-H1', disposition: { kind: 'clear' }, reason: 'looked at' }, CREW[4])).toBe('notYourRole');
    decideHold(plant, 'lot:B1', { kind: 'clear' });
    plant.must({ type: 'openGate', subject: 'lot:B1', gate: 'final-visual' });
  });

  it('stops the gate that is open in the middle of its sample', () => {
    plant.must({ type: 'openGate', subject: 'lot:B1', gate: 'final-visual' });
    plant.must({ type: 'hold', subject: 'lot:B1', reason: 'a doubt' });
    expect(plant.refusalOf({ type: 'completeSample', subject: 'lot:B1', gate: 'final-visual', characteristic: 'looks', looked: 80 })).toBe('subjectIsHeld');
  });

  it('is lifted each by itself: a second one stands', () => {
    for (const reason of ['one', 'two']) plant.must({ type: 'hold', subject: 'lot:B1', reason });
    decideHold(plant, 'lot:B1', { kind: 'clear' });
    expect(standing(plant, 'lot:B1')).toEqual(['B1-H2']);
  });

  it('on a lot that has ended can only be cleared', () => {
    for (const reason of ['one', 'two']) plant.must({ type: 'hold', subject: 'lot:B1', reason });
    decideHold(plant, 'lot:B1', { kind: 'scrap' });
    const lot = plant.lot('B1');
    const [, second] = lot.holds;
    expect(second === undefined ? null : possibleDispositions(lot, second)).toEqual(['clear']);
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:B1', hold: 'B1-H2', disposition: { kind: 'return', to: 'x' }, reason: 'x' })).toBe('dispositionNotForThis');
  });
});

it('pieces must lie loose to be scrapped: packed boxes are voided first', () => {
  releasedLot(plant, 'B2', 40);
  const box = labelledBox(plant, 'B2');
  plant.must({ type: 'hold', subject: 'lot:B2', reason: 'contaminated' });
  const scrap: Command = { type: 'dispose', subject: 'lot:B2', hold: 'B2-H1', disposition: { kind: 'scrap' }, reason: 'contaminated' };
  expect(refusalIn(plant.ask(scrap, CREW[2]))).toEqual({ code: 'boxesToVoid', lot: 'B2', boxes: 1 });
  plant.must({ type: 'voidBox', lot: 'B2', box, reason: 'lot is scrapped' }, CREW[4]);
  plant.must(scrap, CREW[2]);
  expect([plant.lot('B2').balance.scrapped, plant.lot('B2').balance.boxed]).toEqual([40, 0]);
});

it('a coated lot is not regraded to another coating', () => {
  const full = littlePlant();
  releasedBatch(full);
  openLot(full, 'C1', 10);
  press(full, 'C1', [12, 12]);
  const product = full.state('product:CNMG-D1');
  if (product?.kind !== 'product') throw new Error('no CNMG-D1');
  full.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D3', layer: 'DEMO-PVD' } }, CREW[2]);
  // Rejected at the press, not coated yet: the other coating is still to choose.
  expect(full.refusalOf({ type: 'dispose', subject: 'lot:C1', hold: 'C1-H1', disposition: { kind: 'regrade', toProduct: 'CNMG-D3' }, reason: 'x' })).toBe('none');
});
