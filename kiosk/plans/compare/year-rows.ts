import type { SimulatedYear } from '../../../shared/sampling/risk/index.ts';
import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { showFigure } from '../../desk/show.ts';
import type { DeskRow } from '../../desk/sorted-table.ts';
import { deskWords, labels } from '../../desk/words.ts';
import { percentText } from './compared-text.ts';

const words = planCompareWords.year;

/** The lots of a simulated year that were not accepted, and those from which on inspection was another. */
export function yearRows({ lots }: SimulatedYear): readonly DeskRow[] {
  return lots.flatMap(({ severity, found, sampleSize, accepted }, at): readonly DeskRow[] => {
    const before = lots[at - 1]?.severity ?? 'normal';
    const moved = before !== severity;
    const rejected = !accepted && severity !== 'discontinued';
    if (!moved && !rejected) return [];
    const what = [...(moved ? [words.moved(labels.severities[severity])] : []), ...(rejected ? [words.rejected] : [])].join('; ');
    return [{ key: String(at), texts: { lot: at + 1, severity: labels.severities[severity], ...(severity === 'discontinued' ? { n: deskWords.none, found: deskWords.none } : { n: showFigure(sampleSize), found: showFigure(found) }), what } }];
  });
}

/** The sums of a simulated year. */
export function yearSums({ lots, accepted, pieces }: SimulatedYear): readonly { readonly label: string; readonly text: string }[] {
  const all = lots.length;
  const share = (count: number): string => words.ofLots(showFigure(count), percentText(all === 0 ? 0 : count / all));
  const on = (severity: (typeof lots)[number]['severity']): number => lots.filter((lot) => lot.severity === severity).length;
  const inspected = all - on('discontinued');
  return [
    { label: words.sum.accepted, text: share(accepted) }, { label: words.sum.notAccepted, text: share(inspected - accepted) },
    { label: words.sum.normal, text: share(on('normal')) }, { label: words.sum.tightened, text: share(on('tightened')) }, { label: words.sum.reduced, text: share(on('reduced')) }, { label: words.sum.discontinued, text: share(on('discontinued')) },
    { label: words.sum.pieces, text: showFigure(pieces) },
  ];
}
