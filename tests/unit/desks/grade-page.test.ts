import { afterAll, describe, expect, it, vi } from 'vitest';
import { GRADES, LAYERS } from '../../../demo-data/plant-records.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { requireSound } from '../../../shared/traveller/plan/require-sound.ts';
import { cardOf, compositionOf, EMPTY_FORM, faultyLimits, filledLimits, formOf, reckonedOf, shownLimits } from '../../../kiosk/plans/grade/grade-form.ts';
import { gradeRows } from '../../../kiosk/plans/grade/grade-csv.ts';
import { workedOut } from '../../../kiosk/plans/grade/grade-why.ts';
import { planWithGrade, planWithLayers } from '../../../kiosk/plans/grade/propose-draft.ts';
import { saturationView } from '../../../kiosk/plans/grade/saturation-view.ts';

// The desk reads and writes figures in the page's language.
vi.stubGlobal('document', { documentElement: { lang: 'en' } });
afterAll(() => void vi.unstubAllGlobals());

const TEN = { ...EMPTY_FORM, id: 'G-10', name: 'Ten', powderPlan: 'P', furnacePlan: 'F', parts: [{ component: 'WC', percent: '90', density: '' }, { component: 'Co', percent: '10', density: '' }] };

describe('the form of a grade', () => {
  it.each(GRADES.map((grade) => [grade.id, grade] as const))('%s says the same after going through the form', (_, grade) => {
    expect(cardOf(formOf(grade))).toEqual({ card: grade, fault: null });
  });

  it('keeps a grade without limits without them, until they are asked to be filled', () => {
    const [first] = GRADES;
    if (first === undefined) throw new Error('no grade');
    const { limits: _, ...bare } = first;
    expect(cardOf(formOf(bare)).card).toEqual(bare);
    expect(cardOf(filledLimits(formOf(bare))).card.limits).toMatchObject({ saturation: { lowPercent: 75, highPercent: 95 }, porosity: { A: 'A02', B: 'B00', C: 'C00' } });
  });

  it('prefills a new grade where the trade has a formula, and leaves coercivity and hardness to be given', () => {
    // 14.5312 g/cm³ is RHO-10 of material-checks.csv; ± 0.05 and the window 75 to 95 are common practice.
    expect(shownLimits(TEN)).toMatchObject({ densityLower: '14.48', densityUpper: '14.58', low: '75', warnLow: '80', warnHigh: '92', high: '95', coercivityLower: '', hardnessLower: '', A: 'A02', etaPhase: 'none' });
    expect(shownLimits({ ...TEN, limits: { densityLower: '' } }).densityLower).toBe('');
    expect(shownLimits(EMPTY_FORM).densityLower).toBe('');
  });

  it('reads figures as they are typed, and names what is none', () => {
    expect(compositionOf({ parts: [{ component: ' WC ', percent: '93.5', density: '15.7' }, { component: '', percent: '', density: '' }] })).toEqual([{ component: 'WC', massPercent: 93.5, densityGPerCm3: 15.7 }]);
    expect(reckonedOf({ parts: [{ component: 'WC', percent: 'much', density: '' }] })).toBeNull();
    expect(faultyLimits({ ...shownLimits(TEN), coercivityLower: '-3', hardnessUpper: 'x' })).toEqual(['coercivityLower', 'hardnessUpper']);
    expect(cardOf({ ...TEN, parts: TEN.parts.slice(0, 1) }).fault).toEqual({ why: 'sum', sumPercent: 90 });
    expect(cardOf({ ...TEN, limits: { warnLow: '' } }).fault).toEqual({ why: 'saturationWindow' });
  });
});

describe('what follows from it', () => {
  const reckoned = reckonedOf(TEN);
  if (reckoned === null) throw new Error('the composition is whole');

  it('is shown with unit, formula, inputs and a tagged source for every number', () => {
    const numbers = workedOut(reckoned, 0.7);
    // RHO-10, VB-10, C-10, HC-10-0.7 of material-checks.csv; 20.16 = 201.6 · 0.1.
    expect(numbers.map(({ key, shown, unit }) => `${key} ${shown} ${unit}`)).toEqual(['density 14.53 g/cm³', 'binder 16.3 vol%', 'carbon 5.519 wt%', 'window 5.37 … 5.52 wt%', 'full 20.16 µT·m³/kg', 'grain submicron ', 'coercivity 14.4 kA/m']);
    for (const { why } of numbers) {
      expect(why.lines.length).toBeGreaterThanOrEqual(2);
      expect(why.sources.every(({ tag }) => tag.length > 0)).toBe(true);
    }
  });

  it('has no coercivity outside the span of straight grades', () => expect(workedOut(reckoned, 30).map(({ key }) => key)).not.toContain('coercivity'));

  it('goes out as a table with composition, numbers and limits', () => {
    const rows = gradeRows(cardOf(TEN).card, reckoned);
    expect(rows).toContainEqual(['worked out', 'Theoretical density', '14.53', 'g/cm³', expect.stringContaining('Rule of mixtures')]);
    expect(rows).toContainEqual(['limit', 'Density, least', '14.48', 'g/cm³', '']);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([5]));
  });
});

describe('the window of saturation', () => {
  const window = { lowPercent: 75, warnLowPercent: 80, warnHighPercent: 92, highPercent: 95 };

  it('is drawn in five bands without a gap, and says the reading at each step in the unit of the bench', () => {
    const view = saturationView(window, 'µT·m³/kg', 0.1);
    expect(view?.bands.map(({ kind, from, to }) => [kind, from, to])).toEqual([['low', 67, 75], ['warnLow', 75, 80], ['normal', 80, 92], ['warnHigh', 92, 95], ['high', 95, 103]]);
    // 20.16 µT·m³/kg · 0.75 = 15.12 and · 0.95 = 19.15.
    expect(view?.rows.map(({ reading }) => reading)).toEqual(['… 15.12', '15.12 … 16.13', '16.13 … 18.55', '18.55 … 19.15', '19.15 …']);
    expect(saturationView({ ...window, warnLowPercent: 60 }, 'µT·m³/kg', 0.1)).toBeNull();
  });
});

it.each(['FURNACE-F8', 'POWDER-F8'])('%s with the limits of its grade can be worked', (id) => {
  const plan = PLANS.find((each) => each.id === id);
  const [grade] = GRADES;
  if (plan === undefined || grade === undefined) throw new Error(`no ${id}`);
  const changed = planWithGrade(plan, grade);
  expect(changed).not.toBeNull();
  if (changed !== null) expect(() => requireSound(changed)).not.toThrow();
  expect(changed).not.toEqual(plan);
});

it('COATING-PVD with the layers of another coating can be worked, its ball, gauge and places kept', () => {
  const plan = PLANS.find(({ id }) => id === 'COATING-PVD');
  const three = LAYERS.find(({ id }) => id === 'DEMO-CVD');
  if (plan === undefined || three === undefined) throw new Error('the demo plant has other coatings');
  const changed = planWithLayers(plan, three);
  const measured = changed?.gates[0]?.characteristics.filter(({ kind }) => kind === 'measured');
  expect(measured?.map(({ name }) => name)).toEqual(['Coating thickness', 'TiN', 'Al2O3', 'TiCN']);
  expect(measured?.[1]).toMatchObject({ entry: { how: 'craterLayer', of: 'thickness', layer: 1 }, gaugeKind: 'crater microscope', sampling: plan.gates[0]?.characteristics[0]?.sampling });
  if (changed !== null) expect(() => requireSound(changed)).not.toThrow();
  // Proposed again for a coating of two layers, the third is gone.
  const two = changed === null ? null : planWithLayers(changed, { ...three, layers: three.layers?.slice(0, 2) ?? [] });
  expect(two?.gates[0]?.characteristics.map(({ id }) => id)).toEqual(['thickness', 'adhesion', 'colour', 'layer-1', 'layer-2']);
  expect(planWithLayers(plan, { id: 'X', name: 'X', coatingPlan: 'COATING-PVD' })).toBeNull();
});
