import type { CharacteristicResult, JudgedLimits, ResultDetail } from '../../shared/traveller/index.ts';
import { deskWords, labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showFigure, showNumber } from '../desk/show.ts';

/** What one judgement rests on, ready to read: plan, pieces, found or statistic, limit. Several lines where two views belong together. */
export interface VerdictCells { readonly plan: string; readonly n: number; readonly found: readonly string[]; readonly limit: readonly string[]; readonly accepted: boolean }

type Measured = Extract<ResultDetail, { readonly summary: unknown }>;

/** One line for each judgement of a characteristic: one a class where it was counted by class. */
export function verdictCells(result: CharacteristicResult): readonly VerdictCells[] {
  const { detail, accepted, decimals } = result;
  switch (detail.by) {
    case 'attributes': return detail.classes.map(({ class: findingClass, plan, found, beyond, outcome }) => ({
      plan: words.plan.attributes(plan.table, plan.level, plan.letter, labels.severities[plan.severity], showFigure(plan.aqlPercent)), n: plan.sampleSize,
      found: [words.found.count(showFigure(found), labels.findingClasses[findingClass]), ...(beyond === 0 ? [] : [words.found.beyond(showFigure(beyond))])],
      limit: [words.limit.acRe(plan.ac, plan.re)], accepted: outcome !== 'rejected',
    }));
    case 'variables': {
      const { plan, judged, limits } = detail;
      const statistic = judged.form === 'M' ? [words.found.percent(showNumber(judged.pPercent, 3))]
        : [words.found.k(limits.lower === null ? 'upper' : 'lower', showNumber(judged.statistic, 3))];
      return [{
        plan: words.plan.variables(plan.level, plan.letter, labels.severities[plan.severity], showFigure(plan.aqlPercent)), n: detail.summary.n,
        found: [...statistic, ...measured(detail, result)], limit: [judged.form === 'M' ? words.limit.m(showFigure(judged.limit)) : words.limit.k(showFigure(judged.limit)), ...limitsOf(limits, decimals)], accepted,
      }];
    }
    case 'limits': return [{ plan: detail.accept === 'mean' ? words.plan.mean : words.plan.each, n: detail.summary.n, found: measured(detail, result), limit: limitsOf(detail.limits, decimals), accepted }];
    case 'everyPiece': return [{
      plan: words.plan.everyPiece, n: detail.summary.n,
      found: [words.found.ejected(showFigure(detail.outside), showNumber((100 * detail.outside) / detail.summary.n, 2)), ...measured(detail, result, false)],
      limit: [words.limit.eject(showFigure(detail.ejectAtMostPercent)), ...limitsOf(detail.limits, decimals)], accepted,
    }];
    case 'interval': return [{ plan: words.plan.interval(showFigure(detail.looks)), n: detail.looked, found: [showFigure(detail.found)], limit: [words.limit.none], accepted }];
    case 'grade': return [{ plan: words.plan.grade, n: detail.n, found: [detail.worst], limit: [words.limit.grade(detail.worstAccepted)], accepted }];
    case 'once': return [{ plan: words.plan.once, n: 1, found: [detail.confirmed ? words.found.confirmed : words.found.notConfirmed], limit: [detail.statement], accepted }];
  }
}

/** Means carry one decimal more than a reading. */
function measured({ summary, outside }: Measured, { unit, decimals }: CharacteristicResult, sayOutside = true): readonly string[] {
  const { mean, s, min, max } = summary;
  return [
    words.found.mean(showNumber(mean, decimals + 1), s === null ? null : showNumber(s, decimals + 1), unit === null ? '' : `\u00a0${unit}`),
    words.found.span(showNumber(min, decimals), showNumber(max, decimals)),
    ...(sayOutside && outside > 0 ? [words.found.outside(showFigure(outside))] : []),
  ];
}

function limitsOf({ lower, upper, acceptLower, acceptUpper }: JudgedLimits, decimals: number): readonly string[] {
  const guarded = acceptLower !== lower || acceptUpper !== upper;
  return [span(lower, upper, decimals), ...(guarded ? [words.limit.guard(span(acceptLower, acceptUpper, decimals + 1))] : [])];
}

function span(lower: number | null, upper: number | null, decimals: number): string {
  if (lower !== null && upper !== null) return words.limit.between(showNumber(lower, decimals), showNumber(upper, decimals));
  if (lower !== null) return words.limit.atLeast(showNumber(lower, decimals));
  return upper === null ? deskWords.none : words.limit.atMost(showNumber(upper, decimals));
}
