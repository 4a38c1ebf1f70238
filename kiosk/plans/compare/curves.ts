import { roundStep } from '../../parts/axis-ticks.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import type { RiskMark } from '../../parts/risk-chart-drawing.ts';
import type { CurveName, ModelName } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import type { WorkedOut } from './turns.ts';
import { qualityOf, valueAt } from './values.ts';

const steps = 200;
const farEnough = 0.02; // the axis ends where the kindest plan accepts 2 % of the lots
const consumersShare = 0.1;

/** The curves of the plans over one axis. */
export interface Curves {
  readonly curve: CurveName;
  readonly model: ModelName;
  /** Fractions, rising from 0. */
  readonly points: readonly number[];
  readonly top: number;
  readonly lines: readonly { readonly letter: LineLetter; readonly values: readonly number[]; readonly marks: readonly RiskMark[] }[];
}

/** Works out a curve of every plan at 201 points, in turns. @param upTo right end of the axis, a fraction; null: as far as the plans need */
export function workCurves(plans: readonly Compared[], curve: CurveName, model: ModelName, upTo: number | null): WorkedOut<Curves> {
  return async (turns, tell) => {
    const all = plans.length * (steps + 1);
    const to = upTo ?? (await axisEnd(plans, model, turns));
    const points = Array.from({ length: steps + 1 }, (_, at) => Number(((to * at) / steps).toPrecision(12)));
    const lines: Curves['lines'][number][] = [];
    for (const [nth, plan] of plans.entries()) {
      const values: number[] = [];
      for (const [at, p] of points.entries()) {
        values.push(valueAt(plan, curve, model, p));
        if (at % 20 === 0) tell(nth * (steps + 1) + at, all);
        await turns.breathe();
      }
      const marks: RiskMark[] = [];
      for (const { kind, p } of markedPoints(plan, model)) {
        marks.push({ kind, x: p, y: valueAt(plan, curve, model, p) });
        await turns.breathe();
      }
      lines.push({ letter: plan.letter, values, marks });
    }
    return { curve, model, points, lines, top: topOf(curve, lines.flatMap(({ values }) => values)) };
  };
}

function markedPoints(plan: Compared, model: ModelName): readonly { readonly kind: RiskMark['kind']; readonly p: number }[] {
  return [
    ...(plan.producerAt === null ? [] : [{ kind: 'producer' as const, p: plan.producerAt }]),
    { kind: 'consumer', p: plan.consumerAt ?? qualityOf(plan, model, consumersShare) },
  ];
}

async function axisEnd(plans: readonly Compared[], model: ModelName, turns: Parameters<WorkedOut<Curves>>[0]): Promise<number> {
  let far = 0;
  for (const plan of plans) {
    far = Math.max(far, qualityOf(plan, model, farEnough), plan.producerAt ?? 0, plan.consumerAt ?? 0);
    await turns.breathe();
  }
  const step = roundStep(Math.max(far, 1e-6) / 10);
  const end = Number((Math.ceil(far / step - 1e-9) * step).toPrecision(12));
  return model === 'poisson' ? end : Math.min(1, end);
}

/** Where the upright axis ends: 100 % for probabilities, else a round number above the largest value. */
function topOf(curve: CurveName, values: readonly number[]): number {
  if (curve === 'acceptance') return 1;
  const largest = values.reduce((most, value) => Math.max(most, value), 0);
  if (largest === 0) return 1;
  const step = roundStep(largest / 8);
  return Number((Math.ceil((largest * 1.02) / step) * step).toPrecision(12));
}
