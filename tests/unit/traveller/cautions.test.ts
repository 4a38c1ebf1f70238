import { describe, expect, it } from 'vitest';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import { cautions } from '../../../shared/words/cautions.en.ts';

const [, INSPECTOR, ENGINEER] = CREW;
const word = { type: 'writeCaution', caution: 'sharpEdges', text: 'Sharp: tweezers at the visual benches, instruction S-7.', shown: true, reason: 'Instruction S-7' } as const;
const openVisual = { type: 'openGate', subject: 'lot:A1', gate: 'final-visual' } as const;

function atVisual() {
  const plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  openLot(plant, 'A1');
  return plant;
}
const shownAt = (plant: ReturnType<typeof littlePlant>) => plant.lot('A1').gates.find(({ id }) => id === 'final-visual')?.cautions;

describe('cautions', () => {
  it('a gate keeps which words it showed: version 0 is the tool’s', () => {
    const plant = atVisual();
    plant.must(openVisual, INSPECTOR);
    expect(shownAt(plant)).toEqual([{ caution: 'sharpEdges', cautionVersion: 0, text: null }, { caution: 'eyes', cautionVersion: 0, text: null }]);
    plant.must(word, ENGINEER);
    expect(shownAt(plant)?.[0]).toEqual({ caution: 'sharpEdges', cautionVersion: 0, text: null });
  });

  it('the plant’s words stand from the next opening on, and one that is switched off is gone', () => {
    const plant = atVisual();
    plant.must(word, ENGINEER);
    plant.must({ ...word, text: `${word.text} New lamp.` }, ENGINEER);
    plant.must({ type: 'writeCaution', caution: 'eyes', text: null, shown: false, reason: 'Covered by S-9' }, ENGINEER);
    plant.must(openVisual, INSPECTOR);
    expect(shownAt(plant)).toEqual([{ caution: 'sharpEdges', cautionVersion: 2, text: `${word.text} New lamp.` }]);
  });

  it('only engineers and the keeper word them, with a reason, and nothing is written that changes nothing', () => {
    const plant = littlePlant();
    expect(plant.refusalOf(word, INSPECTOR)).toBe('notYourRole');
    expect(plant.refusalOf({ ...word, reason: ' ' }, ENGINEER)).toBe('reasonMissing');
    expect(plant.refusalOf({ ...word, text: ' ' }, ENGINEER)).toBe('identifierUnfit');
    expect(plant.refusalOf({ ...word, text: null }, ENGINEER)).toBe('nothingChanged');
    plant.must(word, ENGINEER);
    expect(plant.refusalOf(word, ENGINEER)).toBe('nothingChanged');
    plant.must({ ...word, text: null, reason: 'The tool says it well' }, ENGINEER);
  });

  it('a plan may name the plant’s own caution once it is written, and none that nobody has written', () => {
    const plant = littlePlant();
    const plan = { ...SHORT_ROUTE, gates: SHORT_ROUTE.gates.map((gate) => (gate.id === 'marking' ? { ...gate, cautions: ['WET-FLOOR'] } : gate)) };
    expect(plant.refusalOf({ type: 'draftPlan', plan, why: 'wet floor' }, ENGINEER)).toBe('notFound');
    expect(plant.refusalOf({ ...word, caution: 'WET-FLOOR', text: null }, ENGINEER)).toBe('identifierUnfit');
    expect(plant.refusalOf({ ...word, caution: 'wet floor' }, ENGINEER)).toBe('identifierUnfit');
    plant.must({ ...word, caution: 'WET-FLOOR', text: 'The floor is wet here.' }, ENGINEER);
    plant.must({ type: 'draftPlan', plan, why: 'wet floor' }, ENGINEER);
  });

  it('the tool’s words name no limit and ask for nothing that a site decides', () => {
    for (const text of Object.values(cautions)) expect(text).not.toMatch(/mg|ppm|%|mask|\d/);
  });
});
