import { describe, expect, it } from 'vitest';
import { craterThicknessUm } from '../../../shared/carbide/index.ts';
import type { Command, Decision, Measured } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { gateRecord, length, routeWith, verdictAt } from '../../property/traveller/on-the-way.ts';

/** A lot at a gate with one characteristic: a length 10 to 11 mm, to three decimals, n 3, but for the change. */
function lotAt(change: Partial<Measured> = {}): LittlePlant {
  const plant = littlePlant(routeWith(length(change)));
  releasedBatch(plant);
  openLot(plant, 'A1', 500);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  return plant;
}
type Reading = Partial<Omit<Extract<Command, { type: 'takeReading' }>, 'type' | 'subject' | 'gate' | 'characteristic'>>;
const reading = (more: Reading): Command => ({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value: 10.5, gauge: 'MIC-11', ...more });
const refusalIn = (decision: Decision): unknown => ('refusal' in decision ? decision.refusal : null);
/** Takes these values one after another and gives the types of slip that the last one wrote. */
const takeAll = (plant: LittlePlant, values: readonly number[], more: Reading = {}): readonly string[] =>
  values.map((value, at) => plant.must(reading({ ordinal: at + 1, value, ...more })).map(({ type }) => type)).at(-1) ?? [];

describe('the verdict of measured pieces', () => {
  it('falls with the n-th reading and no earlier, in whatever order the places are read', () => {
    const plant = lotAt();
    expect(plant.must(reading({ ordinal: 3 })).map(({ type }) => type)).toEqual(['readingTaken']);
    expect(plant.must(reading({ ordinal: 1 })).map(({ type }) => type)).toEqual(['readingTaken']);
    expect(plant.must(reading({ ordinal: 2 })).map(({ type }) => type)).toEqual(['readingTaken', 'verdictGiven']);
  });

  it('does not fall early for a reading that is out', () => {
    const plant = lotAt();
    expect(takeAll(plant, [12])).toEqual(['readingTaken']);
    expect(gateRecord(plant, 'lot:A1', 'own').status).toBe('open');
  });

  it('counts a value on the limit as within', () => {
    const plant = lotAt();
    takeAll(plant, [10, 11, 10.5]);
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
  });

  it('looks at each value or at the mean, as the plan says', () => {
    for (const [accept, accepted] of [['each', false], ['mean', true]] as const) {
      const plant = lotAt({ sampling: { rule: 'fixed', n: 3, accept } });
      takeAll(plant, [10.5, 10.5, 11.2]);
      expect([accept, verdictAt(plant, 'A1', 'own').accepted]).toEqual([accept, accepted]);
    }
  });

  it('by variables rests on k and on exactly n readings, and says how many lie outside', () => {
    // MIL-STD-414 Tables A-2, B-1: 500 at level II is letter E, n 7; AQL 1.0 k 1.62, M 3.55 for two limits.
    const plant = lotAt({ sampling: { rule: 'variables', level: 'II', aqlPercent: 1 } });
    takeAll(plant, [10.2, 10.4, 10.5, 10.5, 10.6, 10.6, 10.8]);
    const detail = verdictAt(plant, 'A1', 'own').results[0]?.detail;
    expect(detail?.by === 'variables' && [detail.plan.sampleSize, detail.plan.k, detail.judged.form, detail.judged.limit, detail.outside]).toEqual([7, 1.62, 'M', 3.55, 0]);
  });

  it('of a lot too small for the tables of variables measures every piece against the limits', () => {
    const plant = littlePlant(routeWith(length({ sampling: { rule: 'variables', level: 'II', aqlPercent: 1 } })));
    releasedBatch(plant);
    openLot(plant, 'A1', 2);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
    takeAll(plant, [10.5, 10.6]);
    const detail = verdictAt(plant, 'A1', 'own').results[0]?.detail;
    expect(detail?.by === 'limits' && [detail.accept, detail.summary.n]).toEqual(['each', 2]);
  });
});

describe('limits drawn in by the gauge', () => {
  it('accept only what lies inside by the expanded uncertainty (guarded acceptance, ISO 14253-1)', () => {
    // U of MIC-11 is 0.003 mm: 10.003 … 10.997.
    for (const [value, accepted] of [[10.003, true], [10.002, false], [10.997, true], [10.998, false]] as const) {
      const plant = lotAt({ decisionRule: 'guardedAcceptance' });
      takeAll(plant, [value, 10.5, 10.5]);
      expect([value, verdictAt(plant, 'A1', 'own').accepted]).toEqual([value, accepted]);
    }
  });

  it('move by the guard factor of the plan: 0.825 U is 0.002475 mm', () => {
    for (const [value, accepted] of [[10.003, true], [10.002, false]] as const) {
      const plant = lotAt({ decisionRule: 'guardedAcceptance', guardFactor: 0.825 });
      takeAll(plant, [value, 10.5, 10.5]);
      expect([value, verdictAt(plant, 'A1', 'own').accepted]).toEqual([value, accepted]);
    }
    const plant = lotAt({ decisionRule: 'guardedAcceptance', guardFactor: 0.825 });
    takeAll(plant, [10.5, 10.5, 10.5]);
    const [result] = verdictAt(plant, 'A1', 'own').results;
    expect(result?.detail.by === 'limits' && [result.decisionRule, result.guardFactor, result.detail.limits.acceptLower, result.detail.limits.uncertainty]).toEqual(['guardedAcceptance', 0.825, 10 + 0.825 * 0.003, 0.003]);
  });

  it('reject only what lies beyond the tolerance and the guard band (guarded rejection, ISO 14253-1)', () => {
    for (const [value, accepted] of [[9.997, true], [9.996, false], [11.003, true], [11.004, false]] as const) {
      const plant = lotAt({ decisionRule: 'guardedRejection' });
      takeAll(plant, [value, 10.5, 10.5]);
      expect([value, verdictAt(plant, 'A1', 'own').accepted]).toEqual([value, accepted]);
    }
  });

  it('hold for the mean and for the statistic of a plan by variables just so', () => {
    // Mean 11.001 lies beyond 11 and within 11.003.
    for (const [decisionRule, accepted] of [['simple', false], ['guardedRejection', true]] as const) {
      const plant = lotAt({ decisionRule, sampling: { rule: 'fixed', n: 3, accept: 'mean' } });
      takeAll(plant, [11, 11.001, 11.002]);
      expect([decisionRule, verdictAt(plant, 'A1', 'own').accepted]).toEqual([decisionRule, accepted]);
    }
    // One limit: Q = (mean − lower as judged) / s; the limit moves by U = 0.003 mm and Q by U / s.
    const values = [10.002, 10.003, 10.003, 10.003, 10.004, 10.004, 10.005];
    const mean = values.reduce((sum, value) => sum + value, 0) / 7;
    const s = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 6);
    for (const [decisionRule, moved] of [['simple', 0], ['guardedAcceptance', 0.003], ['guardedRejection', -0.003]] as const) {
      const plant = lotAt({ decisionRule, upper: null, sampling: { rule: 'variables', level: 'II', aqlPercent: 1 } });
      takeAll(plant, values);
      const detail = verdictAt(plant, 'A1', 'own').results[0]?.detail;
      expect(detail?.by === 'variables' ? detail.judged.qLower : null).toBeCloseTo((mean - 10 - moved) / s, 9);
    }
  });

  it('leave the specification itself where simple acceptance is asked for', () => {
    const plant = lotAt();
    takeAll(plant, [10.001, 10.5, 10.999]);
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
  });

  it('refuse a gauge whose uncertainty leaves no room between them', () => {
    const plant = lotAt({ decisionRule: 'guardedAcceptance', lower: 10, upper: 10.006 });
    expect(refusalIn(plant.ask(reading({ value: 10.003 })))).toMatchObject({ code: 'gaugeCannotCount', why: 'tooCoarse' });
  });
});

describe('a gauge', () => {
  it('is asked for where the plan names its kind', () => {
    expect(lotAt().refusalOf({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value: 10.5 })).toBe('gaugeNeeded');
  });

  it.each([{ gauge: 'MIC-12', why: 'overdue' }, { gauge: 'OPT-31', why: 'wrongKind' }])('that is $why cannot give a reading that counts ($gauge)', ({ gauge, why }) => {
    expect(refusalIn(lotAt().ask(reading({ gauge })))).toMatchObject({ code: 'gaugeCannotCount', gauge, why });
  });

  it('counts to the end of the last day of its calibration', () => {
    const plant = lotAt();
    const due = plant.state('gauge:MIC-11');
    const day = due?.kind === 'gauge' ? due.card.calibrationDue : '';
    expect(plant.refusalOf(reading({}), CREW[1], { at: `${day}T23:59:59.999Z` })).toBe('none');
    expect(refusalIn(plant.ask(reading({}), CREW[1], { at: `${day.slice(0, 8)}${Number(day.slice(8)) + 1}T00:00:00.000Z` }))).toMatchObject({ why: 'overdue' });
  });

  it('counts no longer once withdrawn, and again after a calibration', () => {
    const plant = lotAt();
    plant.must({ type: 'withdrawGauge', gauge: 'MIC-11', reason: 'dropped' });
    expect(refusalIn(plant.ask(reading({})))).toMatchObject({ code: 'gaugeCannotCount', why: 'withdrawn', detail: 'dropped' });
    plant.must({ type: 'calibrateGauge', gauge: 'MIC-11', calibrationDue: '2027-11-20', expandedUncertainty: 0.002, certificate: 'K-1' });
    plant.must(reading({}));
  });

  it('in another unit than the reading cannot count', () => {
    expect(refusalIn(lotAt({ unit: 'µm' }).ask(reading({})))).toMatchObject({ code: 'gaugeCannotCount', why: 'wrongUnit' });
  });

  it('is kept on the slip as it was at the reading', () => {
    const [taken] = lotAt().must(reading({}));
    expect(taken).toMatchObject({ type: 'readingTaken', gauge: { id: 'MIC-11', expandedUncertainty: 0.003 } });
  });

  it('cannot have read a value beyond its range', () => {
    expect(refusalIn(lotAt().ask(reading({ value: 30, sure: true })))).toMatchObject({ code: 'valueImpossible', why: 'outsideGauge' });
  });
});

describe('a value', () => {
  it('outside the plausible range is questioned, with the slipped decimal sign that would explain it, and taken when the person is sure', () => {
    const plant = lotAt();
    expect(refusalIn(plant.ask(reading({ value: 1.05 })))).toMatchObject({ code: 'unlikelyValue', value: 1.05, least: 5, most: 20, likely: 10.5 });
    expect(plant.must(reading({ value: 1.05, sure: true }))[0]).toMatchObject({ type: 'readingTaken', value: 1.05, sure: true });
  });

  it.each([10.5001, 10.50049, 1e-9, 1e-300])('finer than the decimals asked for is refused, never rounded: %s', (value) => {
    expect(refusalIn(lotAt().ask(reading({ value, sure: true })))).toMatchObject({ code: 'valueImpossible', why: 'finerThanResolution' });
  });

  it.each([4.763, 8.001, 10.1, 0.3, 19.999, 16.1])('of three decimals or fewer is taken, exact in binary or not: %s', (value) => {
    expect(lotAt().refusalOf(reading({ value, sure: true }))).toBe('none');
  });

  it('has one place in the sample: the same place a second time is refused and nothing is counted again', () => {
    const plant = lotAt();
    plant.must(reading({ ordinal: 2 }));
    expect(refusalIn(plant.ask(reading({ ordinal: 2, value: 10.6 })))).toMatchObject({ code: 'readingAlreadyTaken', ordinal: 2, value: '10.5', taken: 1, n: 3 });
    for (const ordinal of [0, 4]) expect(plant.refusalOf(reading({ ordinal }))).toBe('ordinalOutside');
  });

  it.each([true, '10.5', null])('that is no number is refused: %s', (value) => {
    expect(lotAt().refusalOf(reading({ value }))).toBe('wrongKindOfEntry');
  });
});

describe('a value worked out from what is read', () => {
  const crater: Partial<Measured> = { unit: 'µm', decimals: 2, lower: 10, upper: 14, plausible: { least: 0.5, most: 40 }, gaugeKind: 'crater microscope', entry: { how: 'crater', ballDiameterMm: 30 } };
  const ground = (more: Reading): Command => reading({ value: null, gauge: 'CRA-44', ...more });

  it('is the coating thickness of a crater, exact formula, stated to its decimals, both diameters kept (ISO 26423)', () => {
    const [taken] = lotAt(crater).must(ground({ inputs: { outerMm: 1.34, innerMm: 0.6 } }));
    const thickness = Number(craterThicknessUm({ ballDiameterMm: 30, outerMm: 1.34, innerMm: 0.6 }).exactUm.toFixed(2));
    expect(taken).toMatchObject({ type: 'readingTaken', value: thickness, inputs: { outerMm: 1.34, innerMm: 0.6 } });
  });

  it.each([{ outerMm: 0.6, innerMm: 0.6 }, { outerMm: 0.6, innerMm: 1 }, { outerMm: 30, innerMm: 1 }])('refuses rings that no crater has: $outerMm / $innerMm', (inputs) => {
    expect(refusalIn(lotAt(crater).ask(ground({ inputs })))).toMatchObject({ code: 'valueImpossible', why: 'craterNotConcentric' });
  });

  it('is the linear shrinkage on the die, percent, the length kept', () => {
    const plant = lotAt({ unit: '%', decimals: 2, lower: 17.7, upper: 18.3, plausible: { least: 10, most: 25 }, entry: { how: 'shrinkage', dieMm: 25 } });
    // (25 − 20.5) / 25 = 18 %, by hand.
    expect(plant.must(reading({ value: null, inputs: { sinteredMm: 20.5 } }))[0]).toMatchObject({ value: 18, inputs: { sinteredMm: 20.5 } });
    expect(refusalIn(plant.ask(reading({ ordinal: 2, value: null, inputs: { sinteredMm: 25 } })))).toMatchObject({ code: 'valueImpossible', why: 'largerThanDie' });
  });

  it('is taken from what was read alone: a value typed beside it, or inputs where none are asked for, are refused', () => {
    expect(lotAt(crater).refusalOf(ground({ value: 12, inputs: { outerMm: 1.34, innerMm: 0.6 } }))).toBe('wrongKindOfEntry');
    expect(lotAt(crater).refusalOf(ground({ inputs: { sinteredMm: 20 } }))).toBe('wrongKindOfEntry');
    expect(lotAt().refusalOf(reading({ inputs: { sinteredMm: 20 } }))).toBe('wrongKindOfEntry');
  });

  it('states no uncertainty: the gauge’s is that of a diameter', () => {
    const plant = lotAt(crater);
    for (const ordinal of [1, 2, 3]) plant.must(ground({ ordinal, inputs: { outerMm: 1.34, innerMm: 0.6 } }));
    const detail = verdictAt(plant, 'A1', 'own').results[0]?.detail;
    expect(detail?.by === 'limits' && detail.limits.uncertainty).toBe(0);
  });
});

describe('ratings and confirmations', () => {
  const open = (): LittlePlant => {
    const plant = littlePlant(routeWith(
      { kind: 'graded', id: 'length', name: 'Porosity', method: 'ISO 4499-4', destructive: false, scale: ['A00', 'A02', 'A04'], worstAccepted: 'A02', sampling: { rule: 'fixed', n: 2, accept: 'each' } },
      { kind: 'confirmed', id: 'said', name: 'Log', method: 'record', destructive: false, statement: 'The log is whole', sampling: { rule: 'once' } },
    ));
    releasedBatch(plant);
    openLot(plant, 'A1');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
    return plant;
  };
  const rate = (ordinal: number, value: string): Command => ({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal, value });
  const say = (value: boolean | string): Command => ({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'said', ordinal: 1, value });

  it.each([{ worst: 'A02', said: true, accepted: true }, { worst: 'A04', said: true, accepted: false }, { worst: 'A02', said: false, accepted: false }])('$worst and $said is accepted: $accepted', ({ worst, said, accepted }) => {
    const plant = open();
    plant.must(rate(1, 'A00'));
    plant.must(rate(2, worst));
    plant.must(say(said));
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(accepted);
  });

  it('take only what stands on the scale, and yes or no', () => {
    expect(open().refusalOf(rate(1, 'A03'))).toBe('ratingUnknown');
    expect(open().refusalOf(say('yes'))).toBe('wrongKindOfEntry');
  });
});
