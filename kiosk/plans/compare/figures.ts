import { averageOutgoingLimit } from '../../../shared/sampling/risk/index.ts';
import { variablesOutgoingLimit } from '../../../shared/sampling/variables/index.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import type { ModelName } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { modelFor, qualityOf, rejectedAt, valueAt } from './values.ts';
import type { WorkedOut } from './turns.ts';

/** The risks and the effort of one plan. Fractions, pieces. */
export interface Figures {
  readonly letter: LineLetter;
  /** Not accepted at AQL or p1. */
  readonly producer: { readonly risk: number; readonly p: number } | null;
  /** The quality accepted with 10 %. */
  readonly tenPercent: number;
  /** Accepted at LQ or p2. */
  readonly atLq: { readonly risk: number; readonly p: number } | null;
  readonly aoql: { readonly aoql: number; readonly at: number };
  readonly asnAtAql: number | null;
  readonly expected: { readonly p: number; readonly accepted: number; readonly asn: number; readonly ati: number };
}

/** Works out the figures of every plan, in turns. @param expected the quality expected, a fraction */
export function workFigures(plans: readonly Compared[], model: ModelName, expected: number): WorkedOut<readonly Figures[]> {
  return async (turns, tell) => {
    const all: Figures[] = [];
    for (const plan of plans) {
      tell(all.length, plans.length);
      const { letter, judged, lotSize, producerAt, consumerAt } = plan;
      const at = async (curve: Parameters<typeof valueAt>[1], p: number): Promise<number> => {
        await turns.breathe();
        return valueAt(plan, curve, model, p);
      };
      // A plan for one lot has its risks from that lot, whatever the chart counts by.
      const producer = producerAt === null ? null : { risk: judged.by === 'points' ? judged.reached.producerRisk : rejectedAt(plan, model, producerAt), p: producerAt };
      const atLq = consumerAt === null ? null : { risk: judged.by === 'isolated' ? judged.plan.riskAtLq : judged.by === 'points' ? judged.reached.consumerRisk : await at('acceptance', consumerAt), p: consumerAt };
      const asnAtAql = producerAt === null ? null : await at('asn', producerAt);
      const ofExpected = { p: expected, accepted: await at('acceptance', expected), asn: await at('asn', expected), ati: await at('ati', expected) };
      await turns.breathe();
      const tenPercent = qualityOf(plan, model, 0.1);
      await turns.breathe();
      const aoql = judged.by === 'measured' ? variablesOutgoingLimit(judged.judging, lotSize) : averageOutgoingLimit(judged.judging, lotSize, modelFor(plan, model));
      all.push({ letter, producer, tenPercent, atLq, aoql, asnAtAql, expected: ofExpected });
    }
    return all;
  };
}
