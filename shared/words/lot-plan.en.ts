import { stagesOf } from '../sampling/attributes/index.ts';
import { isSequential } from '../traveller/index.ts';
import type { LotPlan } from '../traveller/index.ts';
import type { Speak } from './speak.ts';

const share = (fraction: number, { format }: Speak): string => `${format.number(fraction * 100)} %`;

/** Where a plan comes from: "letter J, normal, AQL 2.5", "limiting quality 5 %, consumer's risk 10 %". */
export function lotPlanSource(plan: LotPlan, speak: Speak): string {
  const { format, labels } = speak;
  if (!('kind' in plan)) {
    const samples = plan.samples === undefined ? '' : `, ${labels.samples[plan.samples]}`;
    const own = plan.tableSource === undefined ? '' : `, own table ${plan.tableSource}`;
    return `letter ${plan.letter}, ${labels.severities[plan.severity]}, AQL ${format.number(plan.aqlPercent)}${samples}${own}`;
  }
  const { kind } = plan;
  switch (kind) {
    case 'limitingQuality': case 'zeroAcceptance':
      return `${labels.isolated[kind]}: ${format.number(plan.lqPercent ?? 0)} % accepted at most ${share(plan.consumerRisk, speak)} of the time`;
    case 'twoPoint': case 'sequential':
      return `${labels.isolated[kind]}: ${format.number(plan.p1Percent ?? 0)} % accepted at least ${share(1 - (plan.producerRisk ?? 0), speak)}, ${format.number(kind === 'sequential' ? plan.p2Percent : plan.lqPercent ?? 0)} % at most ${share(plan.consumerRisk, speak)} of the time`;
  }
}

/** What a plan asks and accepts by: "80, accept to 2, reject from 3", "50: 1/4 · 50: 4/5". */
export function lotPlanNumbers(plan: LotPlan, { format }: Speak): string {
  if (isSequential(plan)) return `piece by piece, at most ${format.count(plan.truncateAt)}; there accept to ${format.count(plan.truncateAc)}`;
  const stages = stagesOf(plan);
  if (stages.length === 1) return `${format.count(plan.sampleSize)}, accept to ${format.count(plan.ac)}, reject from ${format.count(plan.re)}`;
  return stages.map(({ sampleSize, ac, re }) => `${format.count(sampleSize)}: ${ac === null ? '#' : format.count(ac)}/${format.count(re)}`).join(' · ');
}
