import { AQLS, attributesPlan, stagesOf } from '../../shared/sampling/attributes/index.ts';
import { twoPointSingle } from '../../shared/sampling/design/index.ts';
import { ocCurve, schemeBehaviour, schemeFor } from '../../shared/sampling/risk/index.ts';
import type { RiskModel } from '../../shared/sampling/risk/index.ts';

/** The works that R and scipy do too (scripts/sampling.R, scripts/sampling.py), each giving a sum of its answers by which the sides are compared. */
export const works: Readonly<Record<string, () => number>> = {
  'look-up': () => {
    let sum = 0;
    for (const lotSize of LOTS) {
      for (const aqlPercent of AQLS) {
        const { sampleSize, ac } = attributesPlan({ lotSize, level: 'II', aqlPercent, severity: 'normal' });
        sum += sampleSize + ac;
      }
    }
    return sum;
  },
  'oc-lot': () => curves({ kind: 'hypergeometric', lotSize: 10_000 }),
  'oc-process': () => curves({ kind: 'binomial' }),
  'design-process': () => designs({ kind: 'binomial' }),
  'design-lot': () => designs({ kind: 'hypergeometric', lotSize: 10_000 }),
  scheme: () => {
    let sum = 0;
    for (let at = 0; at < 50; at += 1) {
      const { acceptance, averageSampleNumber } = schemeBehaviour(SCHEME, { kind: 'binomial' }, 0.002 + (0.098 * at) / 49);
      sum += acceptance + averageSampleNumber;
    }
    return sum;
  },
};

const LOTS = [2, 20, 60, 120, 200, 400, 1000, 2500, 5000, 20_000, 100_000, 400_000];
const DOUBLE = { stages: [{ sampleSize: 125, ac: 2, re: 5 }, { sampleSize: 125, ac: 6, re: 7 }] };
const POINTS = [[0.01, 0.05], [0.01, 0.03], [0.02, 0.06], [0.005, 0.02], [0.04, 0.1], [0.001, 0.01]] as const;
const SCHEME = schemeFor({ lotSize: 1000, level: 'II', aqlPercent: 1, rule: 'ISO 2859-1', steady: true, reducedAllowed: true });

/** What the scripts take for granted about the scheme: a change of the tables must be seen here and not as a difference in speed. */
export const schemePlans = [SCHEME.plans.normal, SCHEME.plans.tightened, SCHEME.plans.reduced].map((plan) => stagesOf(plan).map(({ sampleSize, ac, re }) => [sampleSize, ac, re].join('/')).join());

function curves(model: RiskModel): number {
  return ocCurve(DOUBLE, model, { from: 0, to: 0.1, points: 200, lotSize: 10_000 })
    .reduce((sum, { accepted, rejected, asn, aoq, ati }) => sum + accepted + rejected + asn + aoq + (ati ?? 0), 0);
}

function designs(model: RiskModel): number {
  let sum = 0;
  for (const [p1, p2] of POINTS) {
    const plan = twoPointSingle({ p1, producerRisk: 0.05, p2, consumerRisk: 0.1, model });
    if ('none' in plan) throw new Error(plan.none);
    sum += plan.n + plan.ac;
  }
  return sum;
}
