import { beforeEach, describe, expect, it } from 'vitest';
import { blindOrder, nextPlace } from '../../../shared/traveller/index.ts';
import type { Command, Study } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, MASTER } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';

const [LAB, INSPECTOR, ENGINEER, , PACKER] = CREW;
const NOBODY = { badge: 'X-1', name: 'Somebody', roles: ['inspector'] } as const;
const open: Extract<Command, { type: 'openStudy' }> = {
  type: 'openStudy', study: 'S26-0001', studyKind: 'crossed', gauge: 'MIC-11', characteristic: 'Thickness', tolerance: 0.1, plausible: { least: 4, most: 6 },
  parts: ['A', 'B', 'C'].map((label) => ({ label, reference: null })), people: ['I-301', 'L-201'], trials: 2,
};
const PLACES = [0, 1] as const;
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  for (const person of [LAB, INSPECTOR]) if (person !== undefined && plant.state(`person:${person.badge}`) === null) plant.must({ type: 'enrolPerson', badge: person.badge, name: person.name, roles: person.roles, pin: '1234' });
});
function study(id = 'S26-0001'): Study {
  const state = plant.state(`study:${id}`);
  if (state?.kind !== 'study') throw new Error('no study');
  return state;
}
const nextPart = (badge: string): number => nextPlace(study(), badge)?.part ?? 0;
const read = (part: number, value: number, more = {}): Command => ({ type: 'takeStudyReading', study: 'S26-0001', part, value, ...more });
/** Measures everything: parts 4.75, 4.76, 4.78 with a little spread by person and trial. */
function measureAll(): void {
  for (const [at, person] of [INSPECTOR, LAB].entries()) for (const { part, trial } of blindOrder(study(), person?.badge ?? '')) {
    const value = ([4.75, 4.76, 4.78][part - 1] ?? 0) + 0.001 * at + (trial === 1 ? 0 : 0.001 * (part % 2));
    plant.must(read(part, Number(value.toFixed(3))), person);
  }
}
const close: Command = { type: 'closeStudy', study: 'S26-0001', poolAbove: 0.25, confidence: 0.95 };

describe('a gauge study', () => {
  it('is opened by the lab or an engineer with a gauge fit for use', () => {
    expect(plant.refusalOf(open, INSPECTOR)).toBe('notYourRole');
    plant.must({ type: 'withdrawGauge', gauge: 'MIC-11', reason: 'dropped' });
    expect(plant.ask(open, ENGINEER)).toMatchObject({ refusal: { code: 'gaugeCannotCount', why: 'withdrawn' } });
    plant.must({ type: 'calibrateGauge', gauge: 'MIC-11', calibrationDue: '2026-11-01', expandedUncertainty: 0.002, certificate: 'K-1' });
    expect(plant.ask(open, ENGINEER)).toMatchObject({ refusal: { code: 'gaugeCannotCount', why: 'overdue' } });
    plant.must({ type: 'calibrateGauge', gauge: 'MIC-11', calibrationDue: '2027-11-01', expandedUncertainty: 0.002, certificate: 'K-2' });
    plant.must(open, ENGINEER);
    expect(plant.refusalOf(open, ENGINEER)).toBe('alreadyThere');
    expect(study()).toMatchObject({ standing: 'open', gaugeThen: { unit: 'mm' }, people: [{ badge: 'I-301' }, { badge: 'L-201' }] });
  });

  it.each([
    { why: 'tooFewPeople', change: { people: ['I-301'] } }, { why: 'tooFewParts', change: { parts: [{ label: 'A', reference: null }] } }, { why: 'tooFewTrials', change: { trials: 1 } },
    { why: 'labelTwice', change: { parts: [{ label: 'A', reference: null }, { label: 'A', reference: null }] } }, { why: 'personTwice', change: { people: ['I-301', 'I-301'] } },
    { why: 'referenceNotAsked', change: { parts: [{ label: 'A', reference: 4.7 }, { label: 'B', reference: null }] } }, { why: 'oneReferencePart', change: { studyKind: 'bias' as const } },
    { why: 'referenceMissing', change: { studyKind: 'linearity' as const } }, { why: 'tooFewReferences', change: { studyKind: 'linearity' as const, parts: ['A', 'B', 'C'].map((label) => ({ label, reference: 4.7 })) } },
    { why: 'plausibleOutsideGauge', change: { plausible: { least: 4, most: 4000 } } }, { why: 'tooManyReadings', change: { trials: 1000 } },
  ])('that could not give its result is refused: $why', ({ why, change }) => {
    expect(plant.ask({ ...open, ...change }, ENGINEER)).toEqual({ refusal: { code: 'studyUnsound', study: 'S26-0001', why } });
  });

  it('takes a reading only from its people, under their own badge, of the part that is theirs to take next', () => {
    plant.must(open, ENGINEER);
    expect(plant.refusalOf(read(1, 4.76), NOBODY)).toBe('notInStudy');
    const first = nextPart('I-301');
    const other = first === 1 ? 2 : 1;
    expect(plant.ask(read(other, 4.76), INSPECTOR)).toMatchObject({ refusal: { code: 'studyOutOfOrder', next: ['A', 'B', 'C'][first - 1] } });
    plant.must(read(first, 4.76), INSPECTOR);
    expect(study().readings).toEqual([expect.objectContaining({ badge: 'I-301', part: first, trial: 1, value: 4.76 })]);
    // The other person's order is their own and begins at its beginning.
    expect(nextPlace(study(), 'L-201')).toEqual(blindOrder(study(), 'L-201')[0]);
  });

  it('questions a value outside what it was told to expect and refuses what the gauge cannot show, without a word of earlier readings', () => {
    plant.must(open, ENGINEER);
    const part = nextPart('I-301');
    expect(plant.ask(read(part, 47.6), INSPECTOR)).toEqual({ refusal: { code: 'valueImpossible', characteristic: 'Thickness', value: 47.6, why: 'outsideGauge', detail: '0 … 25 mm' } });
    expect(plant.ask(read(part, 4.7601), INSPECTOR)).toMatchObject({ refusal: { code: 'valueImpossible', why: 'finerThanGauge' } });
    expect(plant.ask(read(part, 7.46), INSPECTOR)).toEqual({ refusal: { code: 'unlikelyValue', characteristic: 'Thickness', value: 7.46, least: 4, most: 6, likely: null } });
    plant.must(read(part, 7.46, { sure: true }), INSPECTOR);
  });

  it('takes no reading with a gauge that fell overdue meanwhile', () => {
    plant.must(open, ENGINEER);
    expect(plant.refusalOf(read(nextPart('I-301'), 4.76), INSPECTOR, { at: '2030-01-01T08:00:00Z' })).toBe('gaugeCannotCount');
  });

  it('judges the gauge by when the reading was taken, however late the network brings it', () => {
    plant.must(open, LAB);
    const state = plant.state('gauge:MIC-11');
    const due = state?.kind === 'gauge' ? state.card.calibrationDue : '';
    const at = '2039-01-01T06:00:00.000Z';
    expect(plant.refusalOf(read(nextPart('I-301'), 4.75), INSPECTOR, { at })).toBe('gaugeCannotCount');
    expect(plant.refusalOf(read(nextPart('I-301'), 4.75), INSPECTOR, { at, takenAt: `${due}T06:00:00.000Z` })).toBe('none');
  });

  it('lets whoever took a reading correct it, and an engineer withdraw it, so that it is measured again', () => {
    plant.must(open, ENGINEER);
    const part = nextPart('I-301');
    plant.must(read(part, 4.67), INSPECTOR);
    const correct: Command = { type: 'correctStudyReading', study: 'S26-0001', reading: 1, value: 4.76, reason: 'digits changed over' };
    expect(plant.refusalOf(correct, LAB)).toBe('readingOfAnother');
    expect(plant.refusalOf({ ...correct, reason: ' ' }, INSPECTOR)).toBe('reasonMissing');
    expect(plant.refusalOf({ ...correct, reading: 9 }, INSPECTOR)).toBe('notFound');
    plant.must(correct, INSPECTOR);
    expect(study().readings).toEqual([expect.objectContaining({ value: 4.76, corrected: true })]);
    const withdraw: Command = { type: 'withdrawStudyReading', study: 'S26-0001', reading: 1, reason: 'dirt on the part' };
    expect(plant.refusalOf(withdraw, PACKER)).toBe('notYourRole');
    plant.must(withdraw, ENGINEER);
    expect(study().readings).toEqual([]);
    expect(nextPart('I-301')).toBe(part);
    plant.must(read(part, 4.765), INSPECTOR);
    expect(study().readings[0]?.reading).toBe(2);
  });

  it('is closed whole, signed by an engineer, and then takes nothing more', () => {
    plant.must(open, ENGINEER);
    measureAll();
    expect(plant.refusalOf(read(1, 4.76), INSPECTOR)).toBe('studyOutOfOrder');
    expect(plant.refusalOf(close, LAB)).toBe('notYourRole');
    expect(plant.refusalOf(close, ENGINEER, { signed: false })).toBe('signatureMissing');
    plant.must(close, ENGINEER);
    expect(study().closed?.found).toMatchObject({ by: 'crossed' });
    expect(plant.refusalOf({ type: 'abandonStudy', study: 'S26-0001', reason: 'late' }, ENGINEER)).toBe('studyNotOpen');
  });

  it('is not closed with a reading missing, and may be given up', () => {
    plant.must(open, ENGINEER);
    plant.must(read(nextPart('I-301'), 4.76), INSPECTOR);
    expect(plant.ask(close, ENGINEER)).toEqual({ refusal: { code: 'studyNotWhole', study: 'S26-0001', taken: 1, wanted: 12 } });
    plant.must({ type: 'abandonStudy', study: 'S26-0001', reason: 'part B was lost' }, ENGINEER);
    expect(study().abandoned).toMatchObject({ reason: 'part B was lost' });
    expect(plant.refusalOf(read(1, 4.76), INSPECTOR)).toBe('studyNotOpen');
  });

  it.each(PLACES)('against known values gives bias or linearity (%i)', (at) => {
    const linear = at === 1;
    const parts = (linear ? [4.7, 4.8, 4.9] : [4.8]).map((reference, index) => ({ label: `R${index}`, reference }));
    plant.must({ ...open, studyKind: linear ? 'linearity' : 'bias', parts, people: ['I-301'], tolerance: null, trials: 3 }, ENGINEER);
    for (const { part, trial } of blindOrder(study(), 'I-301')) plant.must(read(part, Number(((parts[part - 1]?.reference ?? 0) + 0.002 + 0.001 * trial).toFixed(3))), INSPECTOR);
    plant.must(close, ENGINEER);
    // By hand: every bias is 0.003, 0.004, 0.005, their mean 0.004 at every reference.
    const found = study().closed?.found;
    if (linear) expect(found).toMatchObject({ by: 'linearity', meanBias: expect.closeTo(0.004, 9), slope: expect.closeTo(0, 9) });
    else expect(found).toMatchObject({ by: 'bias', bias: expect.closeTo(0.004, 9) });
  });
});

describe('a gauge’s uncertainty', () => {
  const set: Command = { type: 'setGaugeUncertainty', gauge: 'MIC-11', study: 'S26-0001' };
  const gauge = () => {
    const state = plant.state('gauge:MIC-11');
    if (state?.kind !== 'gauge') throw new Error('no gauge');
    return state;
  };
  it('takes the spread of a closed crossed study in, beside the calibration, and a later calibration keeps it', () => {
    const calibration = gauge().card.expandedUncertainty;
    plant.must(open, ENGINEER);
    expect(plant.ask(set, ENGINEER)).toMatchObject({ refusal: { code: 'studyNotForUncertainty', why: 'notClosed' } });
    measureAll();
    plant.must(close, ENGINEER);
    expect(plant.ask({ ...set, gauge: 'BAL-21' }, ENGINEER)).toMatchObject({ refusal: { code: 'studyNotForUncertainty', why: 'otherGauge' } });
    expect(plant.refusalOf(set, ENGINEER, { signed: false })).toBe('signatureMissing');
    plant.must(set, ENGINEER);
    const found = study().closed?.found;
    const s = found?.by === 'crossed' ? found.gaugeS : NaN;
    // JCGM 100, 5.1.2: u² = (U/2)² + s².
    expect(gauge().card.expandedUncertainty).toBeCloseTo(2 * Math.sqrt((calibration / 2) ** 2 + s ** 2), 12);
    expect(plant.refusalOf(set, ENGINEER)).toBe('nothingChanged');
    plant.must({ type: 'calibrateGauge', gauge: 'MIC-11', calibrationDue: '2028-01-01', expandedUncertainty: 0.004, certificate: 'K-9' });
    expect(gauge().card).toMatchObject({ calibrationDue: '2028-01-01', expandedUncertainty: expect.closeTo(2 * Math.sqrt(0.002 ** 2 + s ** 2), 12) });
    expect(gauge().spread).toEqual({ study: 'S26-0001', s, calibrationUncertainty: 0.004 });
  });
});

describe('a person of every role', () => {
  it('measures nothing in a study that does not name them', () => {
    plant.must(open, ENGINEER);
    expect(plant.refusalOf(read(1, 4.76), MASTER)).toBe('notInStudy');
  });
});
