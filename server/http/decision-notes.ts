import type { Subject } from '../../shared/traveller/index.ts';
import { decisionRisk, verdictOf } from '../../shared/traveller/index.ts';
import { decisionRiskWords, riskText } from '../../shared/words/decision-risk.en.ts';
import { words } from '../../shared/words/index.ts';

/** The rule, the limits used and the risk of a wrong decision, one line a measured characteristic whose gauge states an uncertainty. */
export function decisionNotes(subject: Subject): string[] {
  const { labels, format } = words('en');
  return subject.gates.flatMap((gate) => {
    const record = verdictOf(gate);
    // What was taken over from a batch or charge stands with that one.
    if (record === null || (record.from !== null && !record.from.startsWith('lot:'))) return [];
    return record.verdict.results.flatMap(({ name, unit, decimals, decisionRule, guardFactor, detail }) => {
      if (decisionRule === null || !('limits' in detail) || detail.limits.uncertainty === 0) return [];
      const { lower, upper, acceptLower, acceptUpper, uncertainty, coverageFactor } = detail.limits;
      const moved = acceptLower !== lower || acceptUpper !== upper ? 1 : 0;
      const written = (limit: number | null) => (limit === null ? null : format.number(limit, Math.min(6, decimals + moved)));
      const found = decisionRisk({ lower, upper, decisionRule, entry: { how: 'direct' }, ...(guardFactor === undefined ? {} : { guardFactor }) }, { uncertainty, coverageFactor, mean: detail.summary.mean, s: detail.summary.s });
      const limits = `${labels.between(written(acceptLower), written(acceptUpper))} ${unit ?? ''}`.trim();
      const risk = found.known ? decisionRiskWords.printed(riskText(found.risk.consumer, format), riskText(found.risk.producer, format)) : decisionRiskWords.printedUnknown;
      return [decisionRiskWords.note(gate.name, name, labels.decisionRules[decisionRule], guardFactor === undefined ? null : format.number(guardFactor), limits, labels.uncertainty(`${format.number(uncertainty)} ${unit ?? ''}`.trim(), coverageFactor), risk)];
    });
  });
}
