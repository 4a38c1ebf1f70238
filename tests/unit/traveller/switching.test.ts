import { beforeEach, describe, expect, it } from 'vitest';
import type { Switching } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, lookAtAll, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, passGate, verdictAt } from '../../property/traveller/on-the-way.ts';

const MAJOR = 'switching:CNMG-D1/final-visual/looks/major';
const MINOR = 'switching:CNMG-D1/final-visual/looks/minor';
let plant: LittlePlant;
let serial = 0;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  serial = 0;
});
const state = (stream: string): Switching => {
  const found = plant.state(stream);
  if (found?.kind !== 'switching') throw new Error(stream);
  return found;
};
/** A new lot of 1,000 at final visual with so many major pieces among the first of the draw: two or more are not accepted on normal, one or more on tightened. */
function judge(major: number): string {
  serial += 1;
  const lot = `L${String(serial).padStart(2, '0')}`;
  openLot(plant, lot);
  passGate(plant, lot, 'final-visual', major === 0 ? [] : [{ code: 'CH', pieces: major, ordinals: Array.from({ length: major }, (_, at) => at + 1) }]);
  return lot;
}
const judgeAll = (...majors: readonly number[]): readonly string[] => majors.map(judge);

describe('tightened inspection', () => {
  it('begins after two of five lots not accepted, and the thread names the two', () => {
    const lots = judgeAll(0, 2, 0, 0, 2);
    expect([state(MAJOR).state.severity, state(MAJOR).lastMove?.why, state(MAJOR).lastMove?.lots]).toEqual(['tightened', 'twoOfFiveNotAccepted', [lots[1], lots[4]]]);
  });

  it('does not begin when five accepted lots lie between the two', () => {
    judgeAll(2, 0, 0, 0, 0, 2);
    expect(state(MAJOR).state.severity).toBe('normal');
  });

  it('holds for the next lot opened, in the class concerned and in no other', () => {
    judgeAll(2, 2);
    openLot(plant, 'N1');
    plant.must({ type: 'openGate', subject: 'lot:N1', gate: 'final-visual' });
    const { basis } = gateRecord(plant, 'lot:N1', 'final-visual').work[0]?.demand ?? {};
    const severities = basis?.by === 'attributes' ? basis.classes.map(({ class: each, plan }) => [each, 'severity' in plan ? plan.severity : null]) : [];
    expect(severities).toEqual([['critical', 'normal'], ['major', 'tightened'], ['minor', 'normal']]);
  });

  it('ends after five lots accepted one after another', () => {
    judgeAll(2, 2, 0, 0, 0, 0);
    expect(state(MAJOR).state.severity).toBe('tightened');
    judge(0);
    expect([state(MAJOR).state.severity, state(MAJOR).lastMove?.why]).toEqual(['normal', 'fiveAcceptedOnTightened']);
  });

  it('is discontinued after five lots not accepted on it: no original inspection is opened until an engineer resumes it with a signature', () => {
    const lots = judgeAll(2, 2, 2, 2, 2, 2, 2);
    expect(state(MAJOR).state.severity).toBe('discontinued');
    openLot(plant, 'N1');
    expect(plant.ask({ type: 'openGate', subject: 'lot:N1', gate: 'final-visual' })).toEqual({ refusal: { code: 'inspectionDiscontinued', switching: MAJOR, lots: lots.slice(2) } });
    const resume = { type: 'resumeInspection', switching: MAJOR, reason: 'die replaced' } as const;
    expect(plant.refusalOf(resume, CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(resume, CREW[2], { signed: false })).toBe('signatureMissing');
    expect(plant.refusalOf({ ...resume, reason: ' ' }, CREW[2])).toBe('reasonMissing');
    plant.must(resume, CREW[2]);
    expect([state(MAJOR).state.severity, state(MAJOR).lastMove?.why]).toEqual(['tightened', 'resumedByAuthority']);
    plant.must({ type: 'openGate', subject: 'lot:N1', gate: 'final-visual' });
  });

  it('cannot be resumed where it is not discontinued', () => {
    judge(0);
    expect(plant.refusalOf({ type: 'resumeInspection', switching: MAJOR, reason: 'why not' }, CREW[2])).toBe('notDiscontinued');
  });
});

describe('a lot that counts for nothing', () => {
  it('is one inspected again: neither its acceptance nor its rejection moves anything', () => {
    const lot = judge(2);
    const before = state(MAJOR).events.length;
    decideHold(plant, `lot:${lot}`, { kind: 'rework', instruction: 'hone again' });
    passGate(plant, lot, 'final-visual', [{ code: 'CH', pieces: 9 }]);
    expect([verdictAt(plant, lot, 'final-visual').original, verdictAt(plant, lot, 'final-visual').accepted, state(MAJOR).events.length, state(MAJOR).state.severity]).toEqual([false, false, before, 'normal']);
  });

  it('is one whose gate was opened under an earlier severity; it is kept on the thread', () => {
    openLot(plant, 'EARLY');
    plant.must({ type: 'openGate', subject: 'lot:EARLY', gate: 'final-visual' });
    judgeAll(2, 2);
    const before = state(MAJOR).state;
    lookAtAll(plant, 'EARLY', 'final-visual', 'looks');
    expect(state(MAJOR).state).toEqual(before);
    expect(plant.slips.filter(({ stream, body }) => stream === MAJOR && body.type === 'lotCounted').map(({ body }) => body.type === 'lotCounted' && [body.event.lot, body.counts]).at(-1)).toEqual(['EARLY', false]);
  });
});

describe('reduced inspection', () => {
  /** Ten clean lots on a plan with Ac 5 score three each (ISO 2859-1 9.3.3.2, from memory). */
  function reduce(): void {
    judge(0);
    plant.must({ type: 'setSwitching', switching: MINOR, steady: true, reducedAllowed: true, reason: 'steady for months' }, CREW[2]);
    judgeAll(...Array.from({ length: 9 }, () => 0));
  }

  it('begins at a score of 30, where production is steady and an engineer allows it', () => {
    reduce();
    expect([state(MINOR).state.severity, state(MINOR).lastMove?.why]).toEqual(['reduced', 'scoreReached30']);
  });

  it('does not begin at any score where nobody has said that production is steady', () => {
    judgeAll(...Array.from({ length: 12 }, () => 0));
    expect([state(MINOR).state.severity, state(MINOR).state.score]).toEqual(['normal', 36]);
  });

  it('accepts a lot in the gap between Ac and Re, and goes back to normal with it', () => {
    reduce();
    openLot(plant, 'GAP');
    // MIL-STD-105E Table II-C, letter J, AQL 2.5: n 32, Ac 2, Re 5.
    passGate(plant, 'GAP', 'final-visual', [{ code: 'ST', pieces: 3, ordinals: [1, 2, 3] }]);
    const detail = verdictAt(plant, 'GAP', 'final-visual').results[0]?.detail;
    const minor = detail?.by === 'attributes' ? detail.classes.find((each) => each.class === 'minor') : undefined;
    expect([minor?.plan.sampleSize, minor?.decided?.ac, minor?.decided?.re, minor?.outcome]).toEqual([32, 2, 5, 'acceptedInGap']);
    expect([verdictAt(plant, 'GAP', 'final-visual').accepted, state(MINOR).state.severity, state(MINOR).lastMove?.why]).toEqual([true, 'normal', 'endedInGap']);
  });

  it('is not for a lot inspected again: that is on normal (or tightened), whatever the stream has come to (ISO 2859-1 7.4, from memory)', () => {
    const back = judge(30);
    judgeAll(0, 0, 0, 0, 0);
    reduce();
    expect(state(MINOR).state.severity).toBe('reduced');
    decideHold(plant, `lot:${back}`, { kind: 'retest' });
    plant.must({ type: 'openGate', subject: `lot:${back}`, gate: 'final-visual' });
    const { basis } = gateRecord(plant, `lot:${back}`, 'final-visual').work[0]?.demand ?? {};
    expect(basis?.by === 'attributes' && basis.classes.map(({ class: each, plan }) => [each, 'severity' in plan ? plan.severity : null])).toEqual([['critical', 'normal'], ['major', 'normal'], ['minor', 'normal']]);
  });

  it('ends at once when production is no longer steady', () => {
    reduce();
    plant.must({ type: 'setSwitching', switching: MINOR, steady: false, reducedAllowed: null, reason: 'furnace rebuilt' }, CREW[2]);
    expect([state(MINOR).state.severity, state(MINOR).lastMove?.why]).toEqual(['normal', 'notSteady']);
  });

  it('is an engineer’s to allow, with a reason', () => {
    judge(0);
    const set = { type: 'setSwitching', switching: MINOR, steady: true, reducedAllowed: true, reason: 'steady' } as const;
    for (const person of [CREW[0], CREW[1], CREW[3], CREW[4]]) expect(plant.refusalOf(set, person)).toBe('notYourRole');
    expect(plant.refusalOf({ ...set, reason: '' }, CREW[2])).toBe('reasonMissing');
    expect(plant.refusalOf({ ...set, steady: null, reducedAllowed: null }, CREW[2])).toBe('nothingChanged');
  });
});

describe('a correction that turns a first verdict', () => {
  const withdraw = (lot: string) => plant.must({ type: 'withdrawFinding', subject: `lot:${lot}`, gate: 'final-visual', characteristic: 'looks', finding: gateRecord(plant, `lot:${lot}`, 'final-visual').work[0]?.findings[0]?.slip ?? 0, reason: 'dust, not chips' });

  it('is counted anew in its own place among the lots', () => {
    judgeAll(2, 0, 0);
    withdraw('L01');
    expect(state(MAJOR).events.flatMap((event) => (event.type === 'lotJudged' ? [[event.lot, event.accepted]] : []))).toEqual([['L01', true], ['L02', true], ['L03', true]]);
  });

  it('takes a tightening back that rested on it', () => {
    judgeAll(2, 2);
    expect(state(MAJOR).state.severity).toBe('tightened');
    withdraw('L02');
    expect([state(MAJOR).state.severity, state(MAJOR).lastMove]).toEqual(['normal', null]);
  });

  it('stays that of the first inspection, and is counted anew, where the lot already waits to be inspected again', () => {
    judgeAll(2, 2);
    decideHold(plant, 'lot:L02', { kind: 'retest' });
    withdraw('L02');
    expect([verdictAt(plant, 'L02', 'final-visual').original, state(MAJOR).state.severity]).toEqual([true, 'normal']);
  });

  it('is counted anew with the product it was inspected as, though the lot is another product by then', () => {
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('the demo plant has no CNMG-D1');
    plant.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D9', itemCode: 'CNMG-D9' } });
    judgeAll(2, 2);
    decideHold(plant, 'lot:L02', { kind: 'regrade', toProduct: 'CNMG-D9' });
    withdraw('L02');
    expect(state(MAJOR).events.flatMap((event) => (event.type === 'lotJudged' ? [[event.lot, event.accepted]] : []))).toEqual([['L01', false], ['L02', true]]);
    expect([state(MAJOR).state.severity, plant.state(MAJOR.replace('D1', 'D9'))]).toEqual(['normal', null]);
  });
});
