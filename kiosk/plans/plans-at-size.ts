import { OutsideDomain } from '../../shared/ground/outside-domain.ts';
import { singlePlan, type Severity } from '../../shared/sampling/attributes/index.ts';
import { sMethodPlan } from '../../shared/sampling/variables/index.ts';
import { FINDING_CLASSES, type Characteristic, type InspectionPlan } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { showFigure } from '../desk/show.ts';
import type { DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';

const words = plansDeskWords.atSize;
const SEVERITIES: readonly Severity[] = ['normal', 'tightened', 'reduced'];
type Cells = { readonly letter: string; readonly n: number | string; readonly accept: string; readonly reject: string; readonly note: string };

/** What a lot of this size is asked for by every characteristic that is sampled by the tables, on each severity. Loaded only when it is asked for. */
export function plansAtSize(plan: InspectionPlan, lotSize: number): readonly DeskRow[] {
  return plan.gates.flatMap((gate) => gate.characteristics.flatMap((characteristic) => linesOf(characteristic, lotSize).map(({ findingClass, severity, cells }): DeskRow => ({
    key: `${gate.id}/${characteristic.id}/${findingClass}/${severity}`,
    texts: { gate: gate.name, characteristic: characteristic.name, class: findingClass, severity: labels.severities[severity], ...cells },
  }))));
}

function linesOf({ sampling }: Characteristic, lotSize: number): readonly { readonly findingClass: string; readonly severity: Severity; readonly cells: Cells }[] {
  if (sampling.rule === 'attributes') {
    return FINDING_CLASSES.flatMap((each) => {
      const aqlPercent = sampling.aqlPercent[each];
      if (aqlPercent === undefined) return [];
      return SEVERITIES.map((severity) => ({ findingClass: labels.findingClasses[each], severity, cells: known(() => byAttributes({ lotSize, level: sampling.level, aqlPercent, severity })) }));
    });
  }
  if (sampling.rule !== 'variables') return [];
  const { level, aqlPercent } = sampling;
  return SEVERITIES.map((severity) => ({ findingClass: words.all, severity, cells: known(() => byVariables({ lotSize, level, aqlPercent, severity: severity === 'tightened' ? 'tightened' : 'normal' }, severity)) }));
}

function byAttributes(request: Parameters<typeof singlePlan>[0]): Cells {
  const { startLetter, letter, sampleSize, ac, re, arrow, everyPiece } = singlePlan(request);
  const notes = [...(arrow === 'none' ? [] : [words.arrow(startLetter, letter)]), ...(everyPiece ? [words.everyPiece] : []), ...(re > ac + 1 ? [words.gap] : []), ...(request.severity === 'reduced' ? [words.reducedSource] : [])];
  return { letter, n: sampleSize, accept: words.ac(showFigure(ac)), reject: words.re(showFigure(re)), note: notes.join('; ') };
}

function byVariables(request: Parameters<typeof sMethodPlan>[0], severity: Severity): Cells {
  const { startLetter, letter, sampleSize, k, mPercent, arrow, everyPiece } = sMethodPlan(request);
  const notes = [...(arrow === 'none' ? [] : [words.arrow(startLetter, letter)]), ...(everyPiece ? [words.everyPiece] : []), ...(severity === 'reduced' ? [words.noReduced] : [])];
  return { letter, n: sampleSize, accept: words.k(showFigure(k)), reject: words.m(showFigure(mPercent)), note: notes.join('; ') };
}

/** A size or AQL that the tables do not know is said, not hidden. */
function known(cells: () => Cells): Cells {
  try {
    return cells();
  } catch (error) {
    if (error instanceof OutsideDomain) return { letter: '', n: '', accept: '', reject: '', note: words.unreachable };
    throw error;
  }
}
