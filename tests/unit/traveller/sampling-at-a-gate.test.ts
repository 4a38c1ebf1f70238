import { beforeEach, describe, expect, it } from 'vitest';
import { drawSample } from '../../../shared/sampling/draw/index.ts';
import type { Demand } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, lookAtAll, openLot, releasedBatch, SHORT_ROUTE, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { gateRecord, passGate, verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
});
const LOOKS = { subject: 'lot:A1', gate: 'final-visual', characteristic: 'looks' } as const;
function openVisual(quantity: number): Demand {
  openLot(plant, 'A1', quantity);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
  const demand = gateRecord(plant, 'lot:A1', 'final-visual').work[0]?.demand;
  if (demand === undefined) throw new Error('nothing is asked for');
  return demand;
}
const classesOf = ({ basis }: Demand) => (basis.by === 'attributes' ? basis.classes.flatMap((each) => ('kind' in each.plan ? [] : [{ ...each, plan: each.plan }])) : []);
const piecesOf = ({ places }: Demand): readonly number[] => places.map((place) => (place.at === 'tray' ? place.piece : 0));

describe('opening a gate', () => {
  it('records letter, n, Ac and Re of each class for the lot as it stands', () => {
    // MIL-STD-105E Tables I and II-A: 1,000 at level II is letter J, n 80; AQL 0.15 Ac 0, 0.65 Ac 1, 2.5 Ac 5.
    const found = classesOf(openVisual(1000)).map(({ class: each, plan: { letter, arrow, sampleSize, ac, re } }) => [each, letter, arrow, sampleSize, ac, re]);
    expect(found).toEqual([['critical', 'J', 'none', 80, 0, 1], ['major', 'J', 'none', 80, 1, 2], ['minor', 'J', 'none', 80, 5, 6]]);
  });

  it('follows an arrow and takes the sample size of the letter it leads to', () => {
    // Tables I and II-A: 1,000 at S-2 is letter C; AQL 1.0 has an arrow down to E, n 13, Ac 0.
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'final-visual');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'marking' });
    const legible = gateRecord(plant, 'lot:A1', 'marking').work.map(({ demand }) => demand).find(({ characteristic }) => characteristic.id === 'legible');
    const [plan] = legible === undefined ? [] : classesOf(legible).map((each) => each.plan);
    expect([plan?.startLetter, plan?.arrow, plan?.letter, plan?.sampleSize, plan?.ac]).toEqual(['C', 'down', 'E', 13, 0]);
  });

  it('takes the lot as it is now, not as it was opened', () => {
    openLot(plant, 'A1', 1300);
    plant.must({ type: 'scrapPieces', lot: 'A1', pieces: 300, reason: 'tray dropped' });
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    expect(gateRecord(plant, 'lot:A1', 'final-visual').lotSize).toBe(1000);
  });

  it('asks for every piece of a lot no larger than the sample', () => {
    const demand = openVisual(5);
    expect([demand.n, classesOf(demand).every(({ plan }) => plan.everyPiece), [...piecesOf(demand)].sort()]).toEqual([5, true, [1, 2, 3, 4, 5]]);
  });

  it('draws the pieces by the recorded seed, so that an auditor can draw them again', () => {
    const demand = openVisual(1000);
    const { seed, lotSize } = gateRecord(plant, 'lot:A1', 'final-visual');
    expect(piecesOf(demand)).toEqual(drawSample({ seed: seed ?? '', population: lotSize, size: 80 }));
  });

  it('names the tray and the position of each piece', () => {
    for (const place of openVisual(1000).places) if (place.at === 'tray') expect(place.piece).toBe((place.tray - 1) * 60 + place.position);
  });

  it('goes by the route: a later gate first is refused and the gate that is due is named', () => {
    openLot(plant, 'A1');
    expect(plant.ask({ type: 'openGate', subject: 'lot:A1', gate: 'marking' })).toEqual({ refusal: { code: 'gateOutOfOrder', gate: 'Marking', before: 'Final visual', next: 'final-visual' } });
  });

  it('is for the roles that the plan names', () => {
    openLot(plant, 'A1');
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' }, CREW[0])).toBe('notYourRole');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' }, CREW[1]);
    for (const person of [CREW[0], CREW[2], CREW[3], CREW[4]]) expect(plant.refusalOf({ ...LOOKS, type: 'completeSample', looked: 80 }, person)).toBe('notYourRole');
  });
});

describe('classes with samples of different size', () => {
  /** 200 pieces at level II: letter G, n 32. Critical 0.15 leads by an arrow to n 80, major 0.65 to n 20, minor 2.5 stays at 32 (Table II-A). */
  const QUANTITY = 200;

  it('each have their own n, and the largest is drawn', () => {
    const demand = openVisual(QUANTITY);
    expect([demand.n, ...classesOf(demand).map(({ plan }) => plan.sampleSize)]).toEqual([80, 80, 20, 32]);
  });

  it('are judged on random samples of their own: the first n of the draw come from all over the lot', () => {
    const pieces = piecesOf(openVisual(QUANTITY));
    const { seed } = gateRecord(plant, 'lot:A1', 'final-visual');
    expect([...pieces].sort((a, b) => a - b)).toEqual(drawSample({ seed: seed ?? '', population: QUANTITY, size: 80 }));
    // The smallest and the greatest piece of the first 20 lie near the ends of the lot; the 20 lowest of the 80 never would.
    expect(Math.max(...pieces.slice(0, 20))).toBeGreaterThan(QUANTITY / 2);
    expect(Math.max(...pieces.slice(0, 32))).toBeGreaterThan(QUANTITY / 2);
  });

  it('ask which piece was found in a class whose n is smaller than the draw', () => {
    openVisual(QUANTITY);
    expect(plant.refusalOf({ ...LOOKS, type: 'recordFinding', code: 'CH', pieces: 1 })).toBe('findingNeedsPiece');
    plant.must({ ...LOOKS, type: 'recordFinding', code: 'CH', pieces: 1, ordinals: [3] });
    plant.must({ ...LOOKS, type: 'recordFinding', code: 'CR', pieces: 1 });
  });

  it('count what lies within their n; what was found beyond is kept and not counted', () => {
    openVisual(QUANTITY);
    lookAtAll(plant, 'A1', 'final-visual', 'looks', [{ code: 'CH', pieces: 2, ordinals: [21, 80] }]);
    const detail = verdictAt(plant, 'A1', 'final-visual').results[0]?.detail;
    const major = detail?.by === 'attributes' ? detail.classes.find((each) => each.class === 'major') : undefined;
    expect([major?.found, major?.beyond, major?.outcome]).toEqual([0, 2, 'accepted']);
    expect(verdictAt(plant, 'A1', 'final-visual').accepted).toBe(true);
  });

  it('count a piece once, however many nonconformities of one class it has', () => {
    openVisual(1000);
    lookAtAll(plant, 'A1', 'final-visual', 'looks', [{ code: 'CH', pieces: 1, ordinals: [7] }, { code: 'FL', pieces: 1, ordinals: [7] }]);
    // Major: Ac 1. Two nonconformities on one piece are one nonconforming piece.
    expect(verdictAt(plant, 'A1', 'final-visual').accepted).toBe(true);
  });
});

describe('a sample by attributes', () => {
  it('has its verdict when the whole sample was looked at and no earlier', () => {
    openVisual(1000);
    const early = plant.must({ ...LOOKS, type: 'recordFinding', code: 'CH', pieces: 2 });
    expect(early.map(({ type }) => type)).toEqual(['findingRecorded']);
    expect(plant.refusalOf({ ...LOOKS, type: 'completeSample', looked: 79 })).toBe('sampleNotWhole');
    expect(plant.must({ ...LOOKS, type: 'completeSample', looked: 80 }).map(({ type }) => type)).toContain('verdictGiven');
  });

  it.each([{ code: 'ST', pieces: 5, accepted: true }, { code: 'ST', pieces: 6, accepted: false }, { code: 'CH', pieces: 1, accepted: true }, { code: 'CH', pieces: 2, accepted: false }, { code: 'CR', pieces: 1, accepted: false }])(
    'with $pieces × $code is accepted: $accepted', ({ code, pieces, accepted }) => {
      openVisual(1000);
      lookAtAll(plant, 'A1', 'final-visual', 'looks', [{ code, pieces }]);
      expect([verdictAt(plant, 'A1', 'final-visual').accepted, plant.lot('A1').holds.length]).toEqual([accepted, accepted ? 0 : 1]);
    });

  it('takes no finding that the plan does not know, none after its end, and no more pieces than it has', () => {
    openVisual(1000);
    expect(plant.refusalOf({ ...LOOKS, type: 'recordFinding', code: 'XX', pieces: 1 })).toBe('findingUnknown');
    expect(plant.refusalOf({ ...LOOKS, type: 'recordFinding', code: 'ST', pieces: 81 })).toBe('tooManyFound');
    expect(plant.refusalOf({ ...LOOKS, type: 'recordFinding', code: 'ST', pieces: 1, ordinals: [81] })).toBe('ordinalOutside');
    expect(plant.refusalOf({ ...LOOKS, type: 'takeReading', ordinal: 1, value: 3 })).toBe('wrongKindOfEntry');
  });

  it('looks at a characteristic of the same gate only once', () => {
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'final-visual');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'marking' });
    lookAtAll(plant, 'A1', 'marking', 'legible');
    expect(plant.refusalOf({ subject: 'lot:A1', gate: 'marking', characteristic: 'legible', type: 'completeSample', looked: 13 })).toBe('sampleAlreadyComplete');
    expect(gateRecord(plant, 'lot:A1', 'marking').status).toBe('open');
  });
});

it('a gate worked on another subject cannot be opened on the lot', () => {
  const full = littlePlant();
  releasedBatch(full);
  full.must({ type: 'openLot', lot: 'B1', product: 'CNMG-D1', batch: 'P1', quantity: 10, trayCapacity: 60 });
  expect(full.refusalOf({ type: 'openGate', subject: 'lot:B1', gate: 'sintered' })).toBe('gateWorkedElsewhere');
  expect(() => workThrough(full, 'lot:B1', 'dimensions')).toThrow('gateOutOfOrder');
});
