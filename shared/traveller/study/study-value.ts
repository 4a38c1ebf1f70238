import { likelierValue } from '../gate/likelier-value.ts';
import { isWholeSteps } from '../gauge/steps.ts';
import { refuse } from '../pen.ts';
import type { Study } from './study.ts';

/** Decimals of a gauge's step: 3 for 0.001, 4 for 0.0005, 0 for 1 and above. */
export function decimalsOfStep(resolution: number): number {
  for (let decimals = 0; decimals < 9; decimals += 1) if (Math.abs(Number(resolution.toFixed(decimals)) - resolution) < resolution * 1e-9) return decimals;
  return 9;
}

/** Refuses a value the gauge cannot show, and questions one outside what the study was told to expect; earlier readings are never looked at, for that would tell them. */
export function requireStudyValue({ characteristic, plausible, gaugeThen }: Pick<Study, 'characteristic' | 'plausible' | 'gaugeThen'>, { value, sure }: { readonly value: number; readonly sure?: boolean }): void {
  const { least, most, unit, resolution } = gaugeThen;
  if (!Number.isFinite(value)) refuse({ code: 'valueImpossible', characteristic, value, why: 'notFinite', detail: '' });
  if (!isWholeSteps(value, resolution)) refuse({ code: 'valueImpossible', characteristic, value, why: 'finerThanGauge', detail: `${resolution} ${unit}` });
  if (value < least || value > most) refuse({ code: 'valueImpossible', characteristic, value, why: 'outsideGauge', detail: `${least} … ${most} ${unit}` });
  if (sure !== true && (value < plausible.least || value > plausible.most)) refuse({ code: 'unlikelyValue', characteristic, value, least: plausible.least, most: plausible.most, likely: likelierValue(value, plausible.least, plausible.most) });
}
