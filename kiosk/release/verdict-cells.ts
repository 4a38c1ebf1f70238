import { sampleTotals } from '../../shared/traveller/index.ts';
import type { CharacteristicResult, JudgedLimits, ResultDetail } from '../../shared/traveller/index.ts';
import { words as catalogueOf } from '../../shared/words/index.ts';
import { lotPlanNumbers, lotPlanSource } from '../../shared/words/lot-plan.en.ts';
import { deskWords, labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { attributesCaution, normalityCaution, variablesAql } from '../../shared/words/variables.en.ts';
import { showFigure, showNumber } from '../desk/show.ts';

/** What one judgement rests on, ready to read: plan, pieces, found or statistic, limit. Several lines where two views belong together. */
export interface VerdictCells { readonly plan: string; readonly n: number; readonly found: readonly string[]; readonly limit: readonly string[]; readonly accepted: boolean }

const speak = { labels, format: catalogueOf('en').format };

type Measured = Extract<ResultDetail, { readonly summary: unknown }>;

/** One line for each judgement of a characteristic: one a class where it was counted by class. */
export function verdictCells(result: CharacteristicResult): readonly VerdictCells[] {
  const { detail, accepted, decimals } = result;
  switch (detail.by) {
    case 'skipped': return [{ plan: words.plan.skipped(showFigure(detail.clearance), showFigure(detail.oneIn)), n: 0, found: [words.found.notInspected], limit: [words.limit.none], accepted }];
    case 'attributes': return detail.classes.map(({ class: findingClass, plan, found, beyond, outcome, decided }) => ({
      plan: 'kind' in plan ? lotPlanSource(plan, speak) : words.plan.attributes(plan.tableSource ?? plan.table, plan.level, plan.letter, labels.severities[plan.severity], showFigure(plan.aqlPercent)), n: decided?.at ?? plan.sampleSize,
      found: [words.found.count(showFigure(found), labels.findingClasses[findingClass]), ...(beyond === 0 ? [] : [words.found.beyond(showFigure(beyond))])],
      limit: [decided === undefined ? lotPlanNumbers(plan, speak) : words.limit.acRe(decided.ac, decided.re), ...(decided === undefined || sampleTotals(plan).length < 2 ? [] : [words.limit.onSample(showFigure(decided.sample))])], accepted: outcome === 'accepted' || outcome === 'acceptedInGap',
    }));
    case 'variables': {
      const { plan, judged, limits } = detail;
      const { lower, upper, together } = judged.separate ?? { lower: undefined, upper: undefined, together: undefined };
      const sides = [...(lower === undefined ? [] : [{ ...lower, side: 'lower' as const }]), ...(upper === undefined ? [] : [{ ...upper, side: 'upper' as const }])];
      const constants = sides.length === 0 ? [judged] : [...sides, ...(together === undefined ? [] : [together])];
      const statistic = judged.form === 'k' && sides.length > 0 ? sides.map((each) => words.found.k(each.side, showNumber(each.statistic, 3)))
        : judged.form === 'M' ? [...sides.map((each) => words.found.side(each.side, showNumber(each.statistic, 3))), words.found.percent(showNumber(judged.pPercent, 3))]
          : [words.found.k(limits.lower === null ? 'upper' : 'lower', showNumber(judged.statistic, 3))];
      return [{
        plan: variablesPlanText(plan), n: detail.summary.n,
        found: [...statistic, ...measured(detail, result), ...cautionsOf(detail, result)],
        limit: [...constants.map(({ limit }) => (judged.form === 'M' ? words.limit.m(showFigure(limit)) : words.limit.k(showFigure(limit)))), ...limitsOf(limits, decimals)], accepted,
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

/** How a plan by variables was found and by which method it is judged. */
function variablesPlanText(plan: Extract<ResultDetail, { by: 'variables' }>['plan']): string {
  const sigma = plan.sigma === undefined ? null : showFigure(plan.sigma);
  if (plan.origin === 'points') return words.plan.variablesPoints(sigma, showFigure(plan.p1Percent), showFigure(plan.p2Percent));
  return words.plan.variables(sigma, plan.level, plan.letter, labels.severities[plan.severity], variablesAql(plan, speak.format));
}

/** Readings that do not look normal, or that say something else when they are counted. */
function cautionsOf(detail: Extract<ResultDetail, { by: 'variables' }>, result: CharacteristicResult): readonly string[] {
  return [attributesCaution(detail, result, speak), normalityCaution(detail, speak)].flatMap((caution) => (caution === null ? [] : [caution]));
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
