import type { Slip } from '../../shared/traveller/index.ts';

/** What the journal's slips say a characteristic measured, reckoned here from the readings themselves and not from any verdict. */
export interface MeasuredNumbers { readonly name: string; readonly decimals: number; readonly isGuarded: boolean; readonly n: number; readonly mean: number; readonly s: number | null; readonly min: number; readonly max: number; readonly lower: number | null; readonly upper: number | null }
/** One class of one sample by attributes. */
export interface CountedNumbers { readonly gate: string; readonly n: number; readonly found: number; readonly ac: number; readonly re: number }

interface Open { readonly name: string; readonly decimals: number; readonly isGuarded: boolean; readonly lower: number | null; readonly upper: number | null; readonly values: Map<number, number>; readonly weights: number[] }

/** Measured characteristics of a thread, as they stood when their gate's last verdict was given. */
export function measuredOf(slips: readonly Slip[]): MeasuredNumbers[] {
  const open = new Map<string, Open>();
  for (const { body } of slips) {
    if (body.type === 'gateOpened') for (const { characteristic } of body.demands) if (characteristic.kind === 'measured') open.set(`${body.gate.id}/${characteristic.id}`, { name: characteristic.name, decimals: characteristic.decimals, isGuarded: characteristic.decisionRule === 'guardedAcceptance', lower: characteristic.lower, upper: characteristic.upper, values: new Map(), weights: [] });
    if (body.type === 'readingTaken' && typeof body.value === 'number') open.get(`${body.gate}/${body.characteristic}`)?.values.set(body.ordinal, body.value);
    if (body.type === 'readingCorrected' && typeof body.to === 'number') open.get(`${body.gate}/${body.characteristic}`)?.values.set(body.ordinal, body.to);
    if (body.type === 'weightsTaken') open.get(`${body.gate}/${body.characteristic}`)?.weights.push(...body.values);
  }
  return [...open.values()].map(({ values, weights, ...rest }) => ({ ...rest, ...summary([...values.values(), ...weights]) }));
}

/** Mean and s by two plain passes: another way than the running form the rules use. */
function summary(values: readonly number[]): { n: number; mean: number; s: number | null; min: number; max: number } {
  const n = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { n, mean, s: n < 2 ? null : Math.sqrt(squares / (n - 1)), min: values.reduce((a, b) => Math.min(a, b)), max: values.reduce((a, b) => Math.max(a, b)) };
}

/** Counts by class of every finished sample of a thread, re-inspections too, in the order of the verdicts. */
export function countedOf(slips: readonly Slip[]): CountedNumbers[] {
  const numbers: CountedNumbers[] = [];
  let classes: { gate: string; characteristic: string; class: string; n: number; ac: number; re: number; found: number }[] = [];
  for (const { body } of slips) {
    if (body.type === 'gateOpened') {
      classes = classes.filter(({ gate }) => gate !== body.gate.id);
      for (const { characteristic, basis } of body.demands) if (basis.by === 'attributes') for (const { class: each, plan } of basis.classes) if (!('kind' in plan)) classes.push({ gate: body.gate.id, characteristic: characteristic.id, class: each, n: plan.sampleSize, ac: plan.ac, re: plan.re, found: 0 });
    }
    if (body.type === 'findingRecorded') {
      const counted = classes.find(({ gate, characteristic, class: each }) => gate === body.gate && characteristic === body.characteristic && each === body.class);
      if (counted !== undefined) counted.found += body.ordinals === undefined ? body.pieces : body.ordinals.filter((ordinal) => ordinal <= counted.n).length;
    }
    if (body.type === 'verdictGiven') numbers.push(...classes.filter(({ gate }) => gate === body.gate).map(({ gate, n, found, ac, re }) => ({ gate, n, found, ac, re })));
  }
  return numbers;
}
