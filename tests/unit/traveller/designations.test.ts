import { beforeEach, describe, expect, it } from 'vitest';
import { FIXINGS, readDesignation, SHAPE_LETTERS, sizeCodesOf, TOLERANCE_CLASSES } from '../../../shared/carbide/index.ts';
import type { InsertDesignation } from '../../../shared/carbide/index.ts';
import { evolve, proposePlan } from '../../../shared/traveller/index.ts';
import type { Measured, PlanChoices, ProductCard, Slip } from '../../../shared/traveller/index.ts';
import { requireSound } from '../../../shared/traveller/plan/require-sound.ts';
import { inspectionPlanSchema } from '../../../shared/wire/plan-schema.ts';
import { planProposalTexts } from '../../../shared/words/plan-proposal.en.ts';
import { CREW, littlePlant, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';

function read(text: string): InsertDesignation {
  const outcome = readDesignation(text);
  if (!outcome.ok) throw new Error(`${text}: ${JSON.stringify(outcome.problems)}`);
  return outcome.designation;
}
const CHOICES: PlanChoices = {
  id: 'ROUTE-X', name: 'Route X', dimensions: { level: 'II', aqlPercent: 1, decisionRule: 'guardedAcceptance' }, looks: { level: 'II', switching: 'ISO 2859-1', aqlPercent: { critical: 0.15, major: 0.65, minor: 2.5 } },
  cornerRadiusPlusMinusMm: null, coated: true, marking: 'X', route: null,
};
const propose = (text: string, choices: Partial<PlanChoices> = {}) => proposePlan(read(text), { ...CHOICES, ...choices }, planProposalTexts);
const sizes = (plan: ReturnType<typeof propose>['plan']) => (plan.gates.find(({ id }) => id === 'dimensions')?.characteristics ?? []).filter((each): each is Measured => each.kind === 'measured');

describe('the designation on a product’s card', () => {
  let plant: LittlePlant;
  beforeEach(() => {
    plant = littlePlant();
  });
  const card = (changes: Partial<ProductCard>): ProductCard => {
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('no product');
    return { ...product.card, id: 'NEW-1', ...changes };
  };

  it('is refused where it cannot be read, with every position that is wrong', () => {
    expect(plant.ask({ type: 'defineProduct', product: card({ designation: 'CNIG 13 04 08' }) }, CREW[2])).toEqual({
      refusal: {
        code: 'designationUnreadable', designation: 'CNIG 13 04 08',
        problems: [expect.objectContaining({ position: 3, text: 'I', fault: 'unknown' }), expect.objectContaining({ position: 5, text: '13', fault: 'noSuchSize' })],
      },
    });
  });
  it('may be anything where the part is made to a drawing', () => {
    plant.must({ type: 'defineProduct', product: card({ designation: 'Wear ring 40/28', byDrawing: true }) }, CREW[2]);
    expect(plant.state('product:NEW-1')).toMatchObject({ card: { byDrawing: true } });
    expect(plant.refusalOf({ type: 'defineProduct', product: card({ designation: 'Wear ring 40/28', byDrawing: false }) }, CREW[2])).toBe('designationUnreadable');
  });
  it('of a slip from before designations were read is folded as it stands', () => {
    const before = card({ designation: 'an old name' });
    const slip: Slip = { stream: 'product:OLD', version: 1, at: '2026-01-05T06:00:00.000Z', by: 'Q-401', bench: 'Office', body: { type: 'productDefined', product: before } };
    expect(evolve(null, slip)).toMatchObject({ card: { designation: 'an old name' } });
  });
});

describe('a plan proposed from a designation', () => {
  it('measures d, m and s within the limits of the class, in a gate behind the furnace', () => {
    const { plan, leftOut } = propose('CNMG120408');
    expect(leftOut).toEqual([]);
    expect(plan.gates.map(({ id }) => id)).toEqual(['powder', 'pressing', 'sintered', 'dimensions', 'edge', 'coating', 'final-visual', 'marking']);
    // ISO 1832 class M, d 12.7: worked list of the reference tests.
    expect(sizes(plan).map(({ id, lower, target, upper, decimals }) => [id, lower, target, upper, decimals])).toEqual([['circle', 12.62, 12.7, 12.78, 3], ['corner', 2.958, 3.088, 3.218, 3], ['thickness', 4.63, 4.76, 4.89, 3]]);
    expect(sizes(plan)[0]).toMatchObject({ gaugeKind: 'micrometer', decisionRule: 'guardedAcceptance', sampling: { rule: 'variables', level: 'II', aqlPercent: 1 }, method: 'micrometer with nest; before coating' });
  });
  it('measured after coating stands behind the coating, with twice its thickness on d and s', () => {
    const { plan } = propose('CNMG120408', { measured: { when: 'afterCoating', coatingUm: 8 } });
    expect(plan.gates.map(({ id }) => id).indexOf('dimensions')).toBe(plan.gates.map(({ id }) => id).indexOf('coating') + 1);
    expect(sizes(plan).map(({ target, method }) => [target, method])).toEqual([[12.716, 'micrometer with nest; after coating of 8 µm'], [3.088, 'V nest and plunger, set with a master; after coating of 8 µm'], [4.776, 'micrometer; after coating of 8 µm']]);
  });
  it('of an uncoated insert has no coating gate', () => expect(propose('CNMG120408', { coated: false }).plan.gates.map(({ id }) => id)).not.toContain('coating'));
  it('measures the corner radius where the engineer gives a deviation, and says when there is none to measure', () => {
    expect(sizes(propose('CNMG120408', { cornerRadiusPlusMinusMm: 0.1 }).plan).at(-1)).toMatchObject({ id: 'radius', target: 0.8, lower: 0.7, upper: 0.9 });
    expect(propose('CNMG120400', { cornerRadiusPlusMinusMm: 0.1 }).leftOut).toEqual([{ size: 'r', why: 'nothingToMeasure' }]);
  });
  it('leaves out and names what is not in hand, and takes what the plant gives', () => {
    expect(propose('VNMG220408').leftOut).toEqual([{ size: 'm', why: 'noLimits' }]);
    expect(propose('VNMG220408', { givenMm: { m: 0.2 } }).leftOut).toEqual([]);
    expect(propose('SEKN1203AFTN').leftOut).toEqual([{ size: 'm', why: 'noTarget' }]);
    expect(propose('RCMT1204M0')).toMatchObject({ leftOut: [] });
    expect(sizes(propose('RCMT1204M0').plan).map(({ id }) => id)).toEqual(['circle', 'thickness']);
  });
  it('puts its gate of dimensions into another route, in the place of the one that is there', () => {
    const dimensioned = propose('TNMG160404').plan.gates.map((gate) => (gate.id === 'dimensions' ? { ...gate, bench: 'Gauge room 2' } : gate));
    const { plan } = propose('CNMG120408', { route: dimensioned });
    expect(plan.gates.map(({ id }) => id)).toEqual(dimensioned.map(({ id }) => id));
    expect([sizes(plan)[0]?.target, plan.gates.find(({ id }) => id === 'dimensions')?.bench]).toEqual([12.7, 'Gauge room 2']);
    expect(propose('CNMG120408', { route: SHORT_ROUTE.gates }).plan.gates).toHaveLength(SHORT_ROUTE.gates.length + 1);
  });

  const texts = SHAPE_LETTERS.flatMap((shape) => TOLERANCE_CLASSES.flatMap((toleranceClass) => (sizeCodesOf(shape).length === 0 ? ['15'] : sizeCodesOf(shape)).map((size) => `${shape}N${toleranceClass}G${size}04${shape === 'R' ? (readDesignation(`RNMG${size}0400`).ok ? '00' : 'M0') : '04'}`)));
  it('can be worked and passes the wire at every shape, class and size', () => {
    for (const text of texts) {
      const { plan } = propose(text);
      expect(() => requireSound(plan), text).not.toThrow();
      expect(inspectionPlanSchema.safeParse(plan).error, text).toBeUndefined();
      for (const { lower, upper, target, plausible } of sizes(plan)) expect(plausible.least <= (lower ?? 0) && (lower ?? 0) < (target ?? 0) && (target ?? 0) < (upper ?? 0) && (upper ?? 0) <= plausible.most, text).toBe(true);
    }
    expect(texts.length).toBeGreaterThan(1000);
    expect(Object.keys(FIXINGS)).toHaveLength(15);
  });
});
