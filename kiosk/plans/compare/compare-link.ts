import { FINDING_CLASSES, judgedClasses, type FindingClass } from '../../../shared/traveller/plan/characteristic.ts';
import type { Characteristic } from '../../../shared/traveller/index.ts';
import { choiceOf, withText, type Choice } from './choice.ts';
import { comparePath, STANDARD_SETTINGS } from './comparison.ts';

/** Where the plans of a characteristic are compared: one plan for each class that it judges. */
export interface CompareLink { readonly findingClass: FindingClass | null; readonly href: string }

/** Links that open the comparison with the rule of a characteristic, one a class; none where its rule has no risk to draw. @param from the plan's page, `PLAN/version` */
export function compareLinks({ sampling }: Characteristic, from: string, lotSize = 1000): readonly CompareLink[] {
  const link = (findingClass: FindingClass | null, ...chosen: readonly Choice[]): CompareLink => {
    const choices = chosen.map((choice) => withText(choice, 'lot', String(lotSize)));
    const switching = 'switching' in sampling ? sampling.switching : STANDARD_SETTINGS.switching;
    return { findingClass, href: comparePath({ choices, settings: { ...STANDARD_SETTINGS, from, switching } }) };
  };
  const percent = (fraction: number): string => String(Number((100 * fraction).toPrecision(12)));
  const points = ({ p1Percent, producerRisk, p2Percent, consumerRisk }: { readonly p1Percent: number; readonly producerRisk: number; readonly p2Percent: number; readonly consumerRisk: number }) => ({ p1: String(p1Percent), producerRisk: percent(producerRisk), p2: String(p2Percent), consumerRisk: percent(consumerRisk) });
  const classes = (choice: (findingClass: FindingClass) => Choice | null, judged: readonly FindingClass[]): readonly CompareLink[] => judged.flatMap((each) => {
    const chosen = choice(each);
    return chosen === null ? [] : [link(each, chosen)];
  });
  switch (sampling.rule) {
    case 'attributes': return classes((each) => choiceOf('attributes', { level: sampling.level, aql: String(sampling.aqlPercent[each] ?? 1), samples: sampling.samples ?? 'single' }), FINDING_CLASSES.filter((each) => sampling.aqlPercent[each] !== undefined));
    case 'limitingQuality':
    case 'zeroAcceptance': return classes((each) => choiceOf(sampling.rule, { lq: String(sampling.lqPercent[each] ?? 5), consumerRisk: percent(sampling.consumerRisk) }), judgedClasses(sampling));
    case 'twoPoint': return classes((each) => {
      const chosen = sampling.points[each];
      return chosen === undefined ? null : choiceOf(sampling.samples === 'double' ? 'twoPointDouble' : 'twoPointSingle', points(chosen));
    }, judgedClasses(sampling));
    case 'sequential': return classes((each) => {
      const chosen = sampling.points[each];
      return chosen === undefined ? null : choiceOf('sequential', points(chosen));
    }, judgedClasses(sampling));
    case 'variables': {
      const method = sampling.sigma === undefined ? 's' : 'sigma';
      if (sampling.points !== undefined) return [link(null, choiceOf('variablesPoints', { ...points(sampling.points), method }))];
      const ofLimit = (aqlPercent: number, other?: number): Choice => choiceOf('variables', { variablesLevel: sampling.level, aql: String(aqlPercent), method, ...(other === undefined ? {} : { aqlOther: String(other) }) });
      if (sampling.separate === undefined) return [link(null, ofLimit(sampling.aqlPercent))];
      // Each limit with its own AQL is a plan of its own: the lower first.
      const { lowerAqlPercent, upperAqlPercent } = sampling.separate;
      return [link(null, ofLimit(lowerAqlPercent, upperAqlPercent), ofLimit(upperAqlPercent, lowerAqlPercent))];
    }
    case 'fixed':
    case 'barrels':
    case 'positions':
    case 'everyPiece':
    case 'interval':
    case 'once': return [];
  }
}
