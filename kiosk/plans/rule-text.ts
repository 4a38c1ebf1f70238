import { FINDING_CLASSES, type Characteristic } from '../../shared/traveller/index.ts';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { showFigure, showList, showNumber } from '../desk/show.ts';
import { labels } from '../desk/words.ts';

/** The sampling rule of a characteristic as a sentence. */
export function ruleText({ sampling }: Characteristic): string {
  const mean = 'accept' in sampling && sampling.accept === 'mean';
  switch (sampling.rule) {
    case 'attributes': {
      const aqls = FINDING_CLASSES.flatMap((each) => (sampling.aqlPercent[each] === undefined ? [] : [words.rules.classAql(labels.findingClasses[each], showFigure(sampling.aqlPercent[each] ?? 0))]));
      return words.rules.attributes(sampling.level, aqls.join(' · '), sampling.switching);
    }
    case 'variables': return words.rules.variables(sampling.level, showFigure(sampling.aqlPercent));
    case 'fixed': return words.rules.fixed(showFigure(sampling.n), mean);
    case 'barrels': return words.rules.barrels(showFigure(sampling.barrels), showFigure(sampling.each), mean);
    case 'positions': return words.rules.positions(showList(sampling.positions), showFigure(sampling.each), mean);
    case 'everyPiece': return words.rules.everyPiece(showFigure(sampling.ejectAtMostPercent));
    case 'interval': return words.rules.interval(showFigure(sampling.n), showFigure(sampling.everyPieces));
    case 'once': return words.rules.once;
  }
}

/** What a characteristic is judged against, line by line. */
export function limitLines(characteristic: Characteristic): readonly string[] {
  switch (characteristic.kind) {
    case 'measured': {
      const { lower, upper, target, decimals, unit, decisionRule, pressTolerancePercent } = characteristic;
      const written = (limit: number | null) => (limit === null ? null : showNumber(limit, decimals));
      if (pressTolerancePercent !== null) return [words.limits.press(showFigure(pressTolerancePercent))];
      return [`${labels.between(written(lower), written(upper))} ${unit}`, ...(target === null ? [] : [words.limits.target(showNumber(target, decimals))]), labels.decisionRules[decisionRule]];
    }
    case 'counted': return FINDING_CLASSES.flatMap((each) => {
      const names = characteristic.kinds.filter((kind) => kind.class === each).map(({ name }) => name);
      return names.length === 0 ? [] : [words.limits.kindsOf(labels.findingClasses[each], showList(names))];
    });
    case 'graded': return [words.limits.grade(characteristic.worstAccepted, characteristic.scale.join(', '))];
    case 'confirmed': return [characteristic.statement];
  }
}
