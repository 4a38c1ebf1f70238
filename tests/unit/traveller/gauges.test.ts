import { describe, expect, it } from 'vitest';
import { errorFound, isWholeSteps, isWithinAllowed, judgedWithError } from '../../../shared/traveller/index.ts';
import type { Command, Decision, GaugeState, Measured } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { length, routeWith } from '../../property/traveller/on-the-way.ts';

function lotAt(change: Partial<Measured> = {}): LittlePlant {
  const plant = littlePlant(routeWith(length(change)));
  releasedBatch(plant);
  openLot(plant, 'A1', 500);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  return plant;
}
const at = { subject: 'lot:A1', gate: 'own', characteristic: 'length' } as const;
const reading = (ordinal: number, value = 10.5, gauge = 'MIC-11'): Command => ({ ...at, type: 'takeReading', ordinal, value, gauge });
const correction = (value: number, more: { readonly gauge?: string } = {}): Command => ({ ...at, type: 'correctReading', ordinal: 1, value, reason: 'typed wrong', ...more });
const check = (found: number, allowedError = 0.002): Command => ({ type: 'checkGauge', gauge: 'MIC-11', master: 'Block 10 mm', nominal: 10, found, allowedError });
const calibration = { type: 'calibrateGauge', gauge: 'MIC-11', calibrationDue: '2028-01-31', expandedUncertainty: 0.003, certificate: 'K-9' } as const;
const refusalIn = (decision: Decision): unknown => ('refusal' in decision ? decision.refusal : null);
function gaugeOf(plant: LittlePlant): GaugeState {
  const state = plant.state('gauge:MIC-11');
  if (state?.kind !== 'gauge') throw new Error('no gauge');
  return state;
}

describe('the steps of a gauge', () => {
  it('are what it can show: nothing between two of them is taken', () => {
    expect([isWholeSteps(4.763, 0.001), isWholeSteps(0.3, 0.1), isWholeSteps(12.7005, 0.001), isWholeSteps(12.7005, 0.0005), isWholeSteps(1500, 1), isWholeSteps(-0.07, 0.01), isWholeSteps(0, 0.5)]).toEqual([true, true, false, true, true, true, true]);
  });

  it('refuse a reading, a weight and a correction between them, whatever the plan allows', () => {
    const plant = lotAt({ decimals: 4 });
    expect(refusalIn(plant.ask(reading(1, 10.5005)))).toMatchObject({ code: 'valueImpossible', value: 10.5005, why: 'finerThanGauge', detail: '0.001 mm' });
    plant.must(reading(1));
    expect(refusalIn(plant.ask(correction(10.5005)))).toMatchObject({ why: 'finerThanGauge' });
    const weighing = lotAt({ decimals: 4, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 } });
    expect(refusalIn(weighing.ask({ ...at, type: 'takeWeights', fromPiece: 1, values: [10.5, 10.5005], gauge: 'MIC-11' }))).toMatchObject({ value: 10.5005, why: 'finerThanGauge' });
  });
});

describe('a check against a master', () => {
  it('is good with the error on the limit, and then the last good one', () => {
    const plant = lotAt();
    expect(plant.must(check(10.002), CREW[1])).toEqual([{ type: 'gaugeChecked', master: 'Block 10 mm', nominal: 10, found: 10.002, allowedError: 0.002, passed: true }]);
    expect(gaugeOf(plant).lastGood?.by).toBe('check');
    expect([errorFound(10.002, 10), isWithinAllowed(errorFound(10.002, 10), 0.002), errorFound(0, 0), errorFound(-9.998, -10)]).toEqual([0.002, true, 0, 0.002]);
  });

  it('takes the allowed error from the card where it says none, and refuses where neither does', () => {
    const plant = lotAt();
    const without: Command = { type: 'checkGauge', gauge: 'MIC-11', master: 'Block', nominal: 10, found: 10 };
    expect(plant.refusalOf(without)).toBe('allowedErrorMissing');
    plant.must({ type: 'registerGauge', gauge: { ...gaugeOf(plant).card, id: 'MIC-19', allowedError: 0.004 } });
    expect(plant.must({ ...without, gauge: 'MIC-19', found: 10.004 })[0]).toMatchObject({ passed: true, allowedError: 0.004 });
  });

  it('refuses what the gauge cannot have shown', () => {
    const plant = lotAt();
    expect(refusalIn(plant.ask(check(10.0005)))).toMatchObject({ why: 'finerThanGauge' });
    expect(refusalIn(plant.ask({ ...check(30), nominal: 30 } as Command))).toMatchObject({ why: 'outsideGauge' });
  });

  it('that fails opens a recall from the last good one, and the gauge counts nowhere any more', () => {
    const plant = lotAt();
    plant.must(reading(1));
    plant.must(check(10.001));
    const since = gaugeOf(plant).lastGood?.at ?? '';
    expect(plant.must(check(9.993)).map(({ type }) => type)).toEqual(['gaugeChecked', 'recallOpened']);
    expect(gaugeOf(plant)).toMatchObject({ outOfTolerance: 'MIC-11-R1', recalls: [{ id: 'MIC-11-R1', found: 'check', since, error: -0.007, allowedError: 0.002, held: [], closed: null }] });
    for (const command of [reading(2), correction(10.6)]) expect(refusalIn(plant.ask(command))).toMatchObject({ code: 'gaugeCannotCount', why: 'outOfTolerance', detail: 'MIC-11-R1' });
    // A second bad check adds no second recall.
    expect(plant.must(check(9.992)).map(({ type }) => type)).toEqual(['gaugeChecked']);
  });

  it('before any good one puts every reading in doubt', () => {
    const plant = lotAt();
    plant.must(check(9.993));
    expect(gaugeOf(plant).recalls[0]?.since).toBeNull();
  });
});

describe('a calibration', () => {
  it('that found the gauge bad opens a recall, and one that ends well makes it count again', () => {
    const plant = lotAt();
    expect(plant.must({ ...calibration, asFound: { error: 0.0031, allowedError: 0.003 } }).map(({ type }) => type)).toEqual(['gaugeCalibrated', 'recallOpened']);
    expect(plant.refusalOf(reading(1))).toBe('gaugeCannotCount');
    plant.must({ ...calibration, asFound: { error: -0.003, allowedError: 0.003 } });
    plant.must(reading(1));
    expect(gaugeOf(plant)).toMatchObject({ outOfTolerance: null, lastGood: { by: 'calibration' }, card: { certificate: 'K-9', calibrationDue: '2028-01-31' } });
    // A good calibration does not undo what was read before: the recall stays open until it is worked off.
    expect(gaugeOf(plant).recalls[0]?.closed).toBeNull();
  });

  it('changes the coverage factor of U, which stands beside each reading', () => {
    const plant = lotAt();
    plant.must({ ...calibration, coverageFactor: 2.13 });
    expect(plant.must(reading(1))[0]).toMatchObject({ gauge: { id: 'MIC-11', expandedUncertainty: 0.003, coverageFactor: 2.13, calibrationDue: '2028-01-31' } });
  });
});

describe('a reading that waited for the network', () => {
  const due = (plant: LittlePlant): string => gaugeOf(plant).card.calibrationDue;
  const dayAfter = (day: string): string => new Date(Date.parse(`${day}T06:00:00Z`) + 86_400_000).toISOString();

  it('taken on the last day of the calibration counts, though it arrives after', () => {
    const plant = lotAt();
    const arrives = dayAfter(due(plant));
    const takenAt = `${due(plant)}T22:00:00.000Z`;
    expect(refusalIn(plant.ask(reading(1), CREW[1], { at: arrives }))).toMatchObject({ why: 'overdue' });
    expect(plant.must(reading(1), CREW[1], { at: arrives, takenAt })[0]).toMatchObject({ type: 'readingTaken', takenAt, gauge: { calibrationDue: due(plant) } });
  });

  it('taken when the gauge was overdue does not count, though it was calibrated before the reading arrived', () => {
    const plant = lotAt();
    plant.must({ ...calibration, calibrationDue: '2026-11-19' });
    plant.must(calibration);
    expect(plant.refusalOf(reading(1))).toBe('none');
    expect(refusalIn(plant.ask(reading(1), CREW[1], { takenAt: '2026-11-20T06:00:00.000Z' }))).toBeNull();
    // The first calibration was in force for a second only; then the second.
    const [first, second] = gaugeOf(plant).dueDays.slice(-2);
    expect(refusalIn(plant.ask(reading(1), CREW[1], { takenAt: first?.from ?? '' }))).toMatchObject({ why: 'overdue', detail: '2026-11-19' });
    expect(refusalIn(plant.ask(reading(1), CREW[1], { takenAt: second?.from ?? '' }))).toBeNull();
  });

  it('taken while the gauge was in doubt does not count, though it was found good again before the reading arrived', () => {
    const plant = lotAt();
    const lastSlipAt = (): string => plant.slips.at(-1)?.at ?? '';
    const later = (at: string, minutes: number): string => new Date(Date.parse(at) + minutes * 60_000).toISOString();
    plant.must(check(10.001), CREW[1]);
    const good = lastSlipAt();
    plant.wait(60);
    plant.must(reading(1), CREW[1]);
    plant.wait(60);
    plant.must(check(10.01), CREW[1]);
    const bad = lastSlipAt();
    plant.wait(60);
    plant.must(calibration);
    const again = lastSlipAt();
    const outcome = (takenAt: string): unknown => refusalIn(plant.ask(reading(2), CREW[1], { takenAt }));
    const doubted = { code: 'gaugeCannotCount', gauge: 'MIC-11', why: 'outOfTolerance', detail: 'MIC-11-R1' };
    expect([later(good, -1), later(good, 1), later(bad, 1), later(again, 1)].map(outcome)).toEqual([null, doubted, doubted, null]);
    expect(refusalIn(plant.ask(correction(10.6)))).toEqual(doubted);
    expect(refusalIn(plant.ask(correction(10.6, { gauge: 'MIC-11' })))).toBeNull();
  });

  it('by a gauge that was found bad or withdrawn in between does not count, whenever it was taken', () => {
    for (const [command, why] of [[check(9.9), 'outOfTolerance'], [{ type: 'withdrawGauge', gauge: 'MIC-11', reason: 'dropped' }, 'withdrawn']] as const) {
      const plant = lotAt();
      plant.must(command);
      expect(refusalIn(plant.ask(reading(1), CREW[1], { takenAt: '2026-11-20T05:00:00.000Z' }))).toMatchObject({ why });
    }
  });
});

describe('a correction', () => {
  it('mends what was typed with the gauge of then, and may be measured again with another', () => {
    const plant = lotAt();
    plant.must({ type: 'registerGauge', gauge: { ...gaugeOf(plant).card, id: 'MIC-19' } });
    plant.must(reading(1));
    plant.must(correction(10.501));
    plant.must(check(9.9));
    expect(plant.refusalOf(correction(10.502))).toBe('gaugeCannotCount');
    expect(plant.refusalOf(correction(10.502, { gauge: 'MIC-12' }))).toBe('gaugeCannotCount');
    expect(plant.must(correction(10.501, { gauge: 'MIC-19' }))[0]).toMatchObject({ type: 'readingCorrected', from: 10.501, to: 10.501, gauge: { id: 'MIC-19' } });
    expect(plant.lot('A1').gates.find(({ id }) => id === 'own')?.work[0]?.readings[0]?.gauge?.id).toBe('MIC-19');
    expect(plant.refusalOf(correction(10.503, { gauge: 'NONE-1' }))).toBe('notFound');
  });
});

describe('the hold of a recall', () => {
  function recalled(): LittlePlant {
    const plant = lotAt();
    plant.must(reading(1));
    openLot(plant, 'A2', 10);
    plant.must(check(9.9));
    return plant;
  }
  const hold = (subjects: readonly string[]): Command => ({ type: 'holdRecall', gauge: 'MIC-11', recall: 'MIC-11-R1', subjects, reason: 'Micrometer 11' });

  it('puts all of them on hold in one commit, signed by an engineer, each once', () => {
    const plant = recalled();
    expect(plant.refusalOf(hold(['lot:A1']), CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(hold(['lot:A1']), CREW[2], { signed: false })).toBe('signatureMissing');
    const slips = plant.must(hold(['lot:A1', 'lot:A2', 'lot:A1', 'batch:P1']), CREW[2]);
    expect(slips.map(({ type }) => type)).toEqual(['held', 'held', 'held', 'recallHeld']);
    expect(slips[0]).toEqual({ type: 'held', hold: 'A1-H1', cause: { by: 'recall', gauge: 'MIC-11', recall: 'MIC-11-R1' }, reason: 'Micrometer 11' });
    expect(slips[3]).toMatchObject({ held: [{ subject: 'lot:A1', hold: 'A1-H1' }, { subject: 'lot:A2' }, { subject: 'batch:P1' }], signature: { badge: 'Q-401', meaning: 'recallHeldBy' } });
    expect(plant.refusalOf(reading(2))).toBe('subjectIsHeld');
    expect(plant.refusalOf(hold(['lot:A1', 'lot:A2']), CREW[2])).toBe('nothingChanged');
  });

  it('is lifted like a person’s: cleared once the pieces were looked at again, or scrapped', () => {
    const plant = recalled();
    plant.must(hold(['lot:A1']), CREW[2]);
    expect(refusalIn(plant.ask({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'sort' }, reason: 'x' }, CREW[2]))).toMatchObject({ code: 'dispositionNotForThis', possible: ['clear', 'scrap', 'return'] });
    plant.must({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'clear' }, reason: 'measured again with MIC-19' }, CREW[2]);
    plant.must({ type: 'closeRecall', gauge: 'MIC-11', recall: 'MIC-11-R1', reason: 'all decided' }, CREW[2]);
    expect(plant.refusalOf(hold(['lot:A2']), CREW[2])).toBe('recallIsClosed');
    expect(refusalIn(plant.ask({ ...hold(['lot:A2']), recall: 'MIC-11-R7' } as Command, CREW[2]))).toMatchObject({ code: 'notFound', what: 'recall' });
  });

  it('passes over what has ended', () => {
    const plant = recalled();
    plant.must({ type: 'hold', subject: 'lot:A2', reason: 'x' });
    plant.must({ type: 'dispose', subject: 'lot:A2', hold: 'A2-H1', disposition: { kind: 'scrap' }, reason: 'x' });
    expect(plant.must(hold(['lot:A2', 'lot:A1']), CREW[2]).map(({ type }) => type)).toEqual(['held', 'recallHeld']);
  });
});

describe('a reading seen with the error found', () => {
  const tenToEleven = length({ decisionRule: 'guardedAcceptance' }) as Measured;
  it('is judged by what it would have been: too much shown means the piece was smaller', () => {
    expect(judgedWithError(tenToEleven, 0.003, 10.005, 0.007)).toEqual({ asRead: true, withError: false });
    expect(judgedWithError(tenToEleven, 0.003, 10.998, 0.007)).toEqual({ asRead: false, withError: true });
    expect(judgedWithError(tenToEleven, 0.003, 10.01, 0.007)).toEqual({ asRead: true, withError: true });
  });
  it('is not judged where the value was worked out from what was read', () => {
    expect(judgedWithError({ ...tenToEleven, entry: { how: 'shrinkage', dieMm: 25 } }, 0.003, 18, 0.007)).toBeNull();
  });
});
