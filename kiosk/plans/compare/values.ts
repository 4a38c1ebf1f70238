import { acceptance, averageOutgoingQuality, averageSampleNumber, averageTotalInspection, qualityAt, rejection, type RiskModel } from '../../../shared/sampling/risk/index.ts';
import { variablesAcceptance, variablesOutgoingQuality, variablesQualityAt, variablesTotalInspection } from '../../../shared/sampling/variables/index.ts';
import type { CurveName, ModelName } from './comparison.ts';
import type { Compared } from './compared-plan.ts';

/** How found pieces are reckoned for this plan's lot. */
export function modelFor({ lotSize }: Pick<Compared, 'lotSize'>, model: ModelName): RiskModel {
  return model === 'hypergeometric' ? { kind: 'hypergeometric', lotSize } : { kind: model };
}

/** One curve of a plan at a quality. @param p a fraction; with the Poisson model nonconformities a piece */
export function valueAt(compared: Compared, curve: CurveName, model: ModelName, p: number): number {
  const { judged, lotSize } = compared;
  if (judged.by === 'measured') {
    switch (curve) {
      case 'acceptance': return variablesAcceptance(judged.judging, { p });
      case 'aoq': return variablesOutgoingQuality(judged.judging, { p }, lotSize);
      case 'asn': return judged.plan.sampleSize;
      case 'ati': return variablesTotalInspection(judged.judging, { p }, lotSize);
    }
  }
  const risk = modelFor(compared, model);
  switch (curve) {
    case 'acceptance': return acceptance(judged.judging, risk, p);
    case 'aoq': return averageOutgoingQuality(judged.judging, lotSize, risk, p);
    case 'asn': return averageSampleNumber(judged.judging, risk, p);
    case 'ati': return averageTotalInspection(judged.judging, lotSize, risk, p);
  }
}

/** The quality that is accepted with this probability. */
export function qualityOf(compared: Compared, model: ModelName, accepted: number): number {
  const { judged } = compared;
  return judged.by === 'measured' ? variablesQualityAt(judged.judging, accepted) : qualityAt(judged.judging, modelFor(compared, model), accepted);
}

/** How often lots of this quality are not accepted. */
export function rejectedAt(compared: Compared, model: ModelName, p: number): number {
  const { judged } = compared;
  return judged.by === 'measured' ? 1 - variablesAcceptance(judged.judging, { p }) : rejection(judged.judging, modelFor(compared, model), p);
}
