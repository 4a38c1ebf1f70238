import { beforeEach, describe, expect, it } from 'vitest';
import { isReleased, lastGateWorkers } from '../../../shared/traveller/index.ts';
import type { Role } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, lookAtAll, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { labelledBox, passedLot, passGate, releasedLot, RELEASER } from '../../property/traveller/on-the-way.ts';

const BOTH = { badge: 'B-700', name: 'Inspects and releases', roles: ['inspector', 'releaser'] as readonly Role[] };
const release = { type: 'releaseLot', lot: 'A1' } as const;
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
});

describe('a release', () => {
  it('names the gates that have not passed', () => {
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'final-visual');
    expect(plant.ask(release, RELEASER)).toEqual({ refusal: { code: 'notAllGatesPassed', missing: ['Marking'] } });
  });

  it('is signed by a releaser and gives the certificate its number', () => {
    passedLot(plant, 'A1');
    for (const person of [CREW[0], CREW[1], CREW[2], CREW[4]]) expect(plant.refusalOf(release, person)).toBe('notYourRole');
    expect(plant.refusalOf(release, RELEASER, { signed: false })).toBe('signatureMissing');
    expect(plant.must(release, RELEASER)).toEqual([expect.objectContaining({ type: 'lotReleased', certificate: 'C-A1-1', quantity: 1000 })]);
    expect(plant.refusalOf(release, RELEASER)).toBe('alreadyReleased');
  });

  it('is refused for a lot with no pieces left', () => {
    passedLot(plant, 'A1', 10);
    plant.must({ type: 'scrapPieces', lot: 'A1', pieces: 10, reason: 'dropped' });
    expect(plant.refusalOf(release, RELEASER)).toBe('notEnoughPieces');
  });
});

describe('whoever worked the last gate', () => {
  beforeEach(() => {
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'final-visual');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'marking' }, CREW[1]);
    // BOTH looks at the sample and finds nothing; somebody else makes the last entry.
    plant.must({ type: 'completeSample', subject: 'lot:A1', gate: 'marking', characteristic: 'legible', looked: 13 }, BOTH);
    plant.must({ type: 'takeReading', subject: 'lot:A1', gate: 'marking', characteristic: 'text', ordinal: 1, value: true }, CREW[1]);
  });

  it('is whoever entered anything there, a clean sample included', () => {
    expect(lastGateWorkers(plant.lot('A1'))).toEqual(['B-700', 'I-301']);
  });

  it('does not release alone', () => {
    expect(plant.ask(release, BOTH)).toEqual({ refusal: { code: 'workerReleasesAlone', gate: 'Marking', badge: 'B-700' } });
  });

  it('releases together with a releaser who did not', () => {
    const [slip] = plant.must(release, BOTH, { coSigner: RELEASER });
    expect(slip?.type === 'lotReleased' && slip.signatures.map(({ badge, meaning }) => [badge, meaning])).toEqual([['B-700', 'releasedBy'], ['R-501', 'releasedTogetherWith']]);
  });

  it.each([
    { coSigner: BOTH, why: 'samePerson' }, { coSigner: { badge: 'Q-401', name: 'Engineer', roles: ['engineer'] as readonly Role[] }, why: 'notReleaser' },
    { coSigner: { badge: 'I-301', name: 'Inspector', roles: ['releaser'] as readonly Role[] }, why: 'workedLastGate' },
  ])('cannot be helped by a co-signer who is $why', ({ coSigner, why }) => {
    expect(plant.ask(release, BOTH, { coSigner })).toEqual({ refusal: { code: 'coSignerCannot', badge: coSigner.badge, why } });
  });
});

describe('a withdrawn release', () => {
  it('stops packing, labels and shipping, and a new one counts its certificates on', () => {
    releasedLot(plant, 'A1', 100);
    const box = labelledBox(plant, 'A1');
    const withdraw = { type: 'withdrawRelease', lot: 'A1', reason: 'gauge was out of order' } as const;
    expect(plant.refusalOf({ ...withdraw, reason: '' }, RELEASER)).toBe('reasonMissing');
    expect(plant.refusalOf(withdraw, RELEASER, { signed: false })).toBe('signatureMissing');
    plant.must(withdraw, RELEASER);
    expect(isReleased(plant.lot('A1'))).toBe(false);
    for (const command of [{ type: 'packBox', lot: 'A1', pieces: 10 }, { type: 'printLabel', lot: 'A1', box, reason: 'x' }, { type: 'readLabel', lot: 'A1', box, payload: 'x' }, { type: 'shipBox', lot: 'A1', box, shipment: 'S', order: 'O', consignee: 'C' }] as const) {
      expect(plant.ask(command)).toEqual({ refusal: { code: 'notReleased', lot: 'A1', why: 'withdrawn' } });
    }
    expect(plant.refusalOf(withdraw, RELEASER)).toBe('notReleased');
    expect(plant.must(release, RELEASER)[0]).toMatchObject({ certificate: 'C-A1-2', quantity: 100 });
  });
});

it('a held lot is not packed, labelled or shipped, released or not', () => {
  releasedLot(plant, 'A1', 100);
  const box = labelledBox(plant, 'A1');
  plant.must({ type: 'hold', subject: 'lot:A1', reason: 'a doubt' });
  for (const command of [{ type: 'packBox', lot: 'A1', pieces: 10 }, { type: 'printLabel', lot: 'A1', box, reason: 'x' }, { type: 'shipBox', lot: 'A1', box, shipment: 'S', order: 'O', consignee: 'C' }] as const) {
    expect(plant.ask(command)).toEqual({ refusal: { code: 'notReleased', lot: 'A1', why: 'held' } });
  }
});

it('a gate is judged once each attempt: a second look by the same people needs a disposition', () => {
  openLot(plant, 'A1');
  passGate(plant, 'A1', 'final-visual');
  expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' })).toBe('gateOutOfOrder');
  expect(() => lookAtAll(plant, 'A1', 'final-visual', 'looks')).toThrow('gateNotOpen');
});
