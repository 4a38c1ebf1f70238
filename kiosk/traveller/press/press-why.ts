import type { PressTarget } from '../../../shared/traveller/index.ts';
import { powderToPressWords } from '../../../shared/words/powder-to-press.en.ts';
import type { Why } from '../../plans/compare/why.ts';
import { catalogue, format } from '../speak.ts';

const words = powderToPressWords.why;

/** How a press target comes about: each formula, what was put in, the powder with its parts, the sources. */
export function whyOfTarget(press: PressTarget): Why {
  const { number } = format();
  const { labels } = words;
  const { sizes, dieFactor, dieMm, greenThicknessLimits, weightRoom, uncertainty, greenDensityGPerCm3 } = press;
  const formula = (label: string, text: string, put: string): Why['lines'] => [{ label, text: `${text}\n${put}`, formula: true }];
  const along = number(press.heightShrinkagePercent ?? press.linearShrinkagePercent, 2);
  const inPlane = dieFactor === undefined ? press.linearShrinkagePercent : 100 * (1 - 1 / dieFactor);
  const limits = sizes?.thicknessLimits;
  return {
    lines: [
      ...(sizes === undefined ? [] : formula(labels.weight, words.weight, words.weightPut(number(sizes.sinteredVolumeMm3), number(press.sinteredDensityGPerCm3, 3), number(press.binderPercent, 3), number(press.furtherLossPercent ?? 0, 3), number(press.weightG, 3)))),
      ...(sizes === undefined ? [] : formula(labels.height, words.height, words.heightPut(number(sizes.thicknessMm), along, number(press.greenThicknessMm, 3)))),
      ...(press.heightShrinkagePercent === undefined ? [{ label: labels.height, text: words.even }] : []),
      ...(limits === undefined || greenThicknessLimits === undefined ? [{ label: labels.limits, text: words.noLimits }]
        : [{ label: labels.limits, text: words.limitsPut(number(limits.lowerMm), number(greenThicknessLimits.lowerMm, 3), number(limits.upperMm), number(greenThicknessLimits.upperMm, 3)), formula: true }, { label: labels.limits, text: words.limitsFrom[sizes?.limitsFrom ?? 'card'] }]),
      ...(dieFactor === undefined ? [] : formula(labels.die, words.die, words.diePut(number(inPlane, 2), number(dieFactor, 4), sizes?.acrossMm === undefined ? null : number(sizes.acrossMm), dieMm === undefined ? null : number(dieMm, 3)))),
      ...(greenDensityGPerCm3 === undefined ? [] : formula(labels.density, words.density, words.densityPut(number(greenDensityGPerCm3, 3)))),
      ...(weightRoom === undefined ? [] : [{ label: labels.room, text: words.room(number(weightRoom.lowerG, 3), number(weightRoom.upperG, 3)) }]),
      ...(uncertainty === undefined ? [] : [{ label: labels.uncertainty, text: words.uncertainty(number(uncertainty.weightG, 3), number(uncertainty.greenThicknessMm, 3), number(uncertainty.dieFactor, 4)) }]),
      { label: labels.powder, text: [words.measured(press.fromBatch), ...((press.weighted?.length ?? 0) === 0 ? [] : [words.weighted(format().list((press.weighted ?? []).map((factor) => catalogue().labels.factors[factor])))])].join('; ') },
      ...(press.blendedFrom ?? []).map(({ batch, kg }) => ({ label: labels.part, text: words.share(batch, number(kg)) })),
    ],
    excerpt: null,
    sources: [
      { text: words.sources.balance, tag: 'derived' }, { text: words.sources.usual, tag: 'practice' },
      ...(uncertainty === undefined ? [] : [{ text: words.sources.gum, tag: 'memory' } as const]), ...(press.blendedFrom === undefined ? [] : [{ text: words.sources.blend, tag: 'derived' } as const]),
    ],
  };
}
