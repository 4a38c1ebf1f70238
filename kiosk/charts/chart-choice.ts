import type { ChartCard, ChartKind, ChartRule, FindingClass } from '../../shared/traveller/index.ts';
import { readNumber, typedFigure } from '../desk/show.ts';

/** What is typed and chosen beside the kind of a chart. */
export interface Constants { readonly lambda: string; readonly width: string; readonly k: string; readonly h: string; readonly spread: 'betweenLots' | 'withinLots'; readonly limits: 'threeSigma' | 'exact' }
/** Where nothing is chosen yet: common choices (Montgomery, Introduction to Statistical Quality Control, from memory). */
export const FRESH: Constants = { lambda: typedFigure(0.2), width: '3', k: typedFigure(0.5), h: '5', spread: 'betweenLots', limits: 'exact' };

/** The constants of a chart that is there, as they would be typed. */
export function constantsOf(spec: ChartCard['spec']): Constants {
  switch (spec.kind) {
    case 'ewma': return { ...FRESH, lambda: typedFigure(spec.lambda), width: typedFigure(spec.width), spread: spec.spread };
    case 'cusum': return { ...FRESH, k: typedFigure(spec.k), h: typedFigure(spec.h), spread: spec.spread };
    case 'p': case 'np': case 'c': case 'u': return { ...FRESH, limits: spec.limits };
    case 'meanAndS': case 'meanAndRange': case 'individuals': return FRESH;
  }
}

/** The chart as it will be asked for; null while a number is missing. How far a constant may go is for the rules to say. */
export function cardOf(kind: ChartKind, findingClass: FindingClass | null, constants: Constants, rules: readonly ChartRule[], mayHold: boolean): ChartCard | null {
  const spec = specOf(kind, constants);
  const counts = kind === 'p' || kind === 'np' || kind === 'c' || kind === 'u';
  return spec === null ? null : { spec, rules, mayHold, class: counts ? findingClass : null };
}

function specOf(kind: ChartKind, { lambda, width, k, h, spread, limits }: Constants): ChartCard['spec'] | null {
  const both = (one: string, other: string): readonly [number, number] | null => {
    const [first, second] = [readNumber(one), readNumber(other)];
    return first === null || second === null ? null : [first, second];
  };
  switch (kind) {
    case 'ewma': {
      const read = both(lambda, width);
      return read === null ? null : { kind, lambda: read[0], width: read[1], spread };
    }
    case 'cusum': {
      const read = both(k, h);
      return read === null ? null : { kind, k: read[0], h: read[1], spread };
    }
    case 'p': case 'np': case 'c': case 'u': return { kind, limits };
    case 'meanAndS': case 'meanAndRange': case 'individuals': return { kind };
  }
}
