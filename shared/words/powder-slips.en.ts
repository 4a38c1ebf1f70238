import type { BatchSlip, BlendShare, CommonSlip, GateSlip, LotSlip, PowderFactors, PressTarget } from '../traveller/index.ts';
import { POWDER_FACTORS } from '../traveller/index.ts';
import { signatureSentence } from './gate-slips.en.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

const only = (sentence: string): Said => ({ sentence, lines: [] });
/** How each factor is written. */
const UNITS = { linearShrinkagePercent: '%', widthShrinkagePercent: '%', heightShrinkagePercent: '%', sinteredDensityGPerCm3: 'g/cm³', binderPercent: '%', furtherLossPercent: '%' } as const;

/** The factors of a powder in one line, those that are known. */
export function factorsText(factors: PowderFactors, { format, labels }: Speak): string {
  const text = POWDER_FACTORS.flatMap((factor) => {
    const value = factors[factor];
    return value === undefined ? [] : [`${labels.factors[factor]} ${format.number(value, 2)} ${UNITS[factor]}`];
  }).join(', ');
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

/** What a blend was made of: "300 kg of P26-101 and 100 kg of P26-102". */
export function sharesText(shares: readonly BlendShare[], { format }: Speak): string {
  return format.list(shares.map(({ batch, kg }) => `${format.number(kg)} kg of ${batch}`));
}

/** A press target in one line. */
export function targetText({ weightG, greenThicknessMm, greenThicknessLimits, dieFactor }: PressTarget, { format, labels }: Speak): string {
  const limits = greenThicknessLimits === undefined ? '' : ` (${labels.between(format.number(greenThicknessLimits.lowerMm, 3), format.number(greenThicknessLimits.upperMm, 3))} mm)`;
  return `${format.number(weightG, 3)} g, green height ${format.number(greenThicknessMm, 3)} mm${limits}${dieFactor === undefined ? '' : `, die factor ${format.number(dieFactor, 4)}`}`;
}

function weightedLines({ weighted }: PowderFactors, { format, labels }: Speak): readonly string[] {
  return weighted === undefined ? [] : [`Weighted from the parts of the blend: ${format.list(weighted.map((factor) => labels.factors[factor]))}`];
}

/** What powder batches tell besides their gates. */
export const batchSlipWords: WordsFor<Exclude<BatchSlip, GateSlip | CommonSlip>, 'type', Said, [Speak]> = {
  batchOpened: ({ batch, grade, plan, planVersion, route, barrels, kgPerBarrel, rawLots, blendedFrom, demo }, speak) => {
    const { format, labels } = speak;
    return {
      sentence: `Powder batch ${batch} ${blendedFrom === undefined ? 'opened' : 'blended'}: ${grade.name}, ${labels.barrels(barrels, format.count(barrels))} of ${format.number(kgPerBarrel)} kg`,
      lines: [
        `Plan ${plan} version ${format.count(planVersion)}: ${route.map(({ name }) => name).join(' → ')}`,
        ...rawLots.map(({ rawLot, material, kg }) => `${material}, lot ${rawLot}: ${format.number(kg)} kg`),
        ...(blendedFrom === undefined ? [] : [`Mixed from ${sharesText(blendedFrom, speak)}`]),
        ...(demo ? ['Invented demo data.'] : []),
      ],
    };
  },
  batchReleased: ({ factors, signature }, speak) => ({ sentence: 'Powder released to the presses', lines: [factorsText(factors, speak), ...weightedLines(factors, speak), signatureSentence(signature, speak)] }),
  factorsRevised: ({ from, factors, retargeted, pressed }, speak) => ({
    sentence: `What pressing is given has changed${pressed.length === 0 ? '' : `; pressed to the earlier target: ${speak.format.list(pressed)}`}`,
    lines: [
      `Was: ${factorsText(from, speak)}`, `Is: ${factorsText(factors, speak)}`, ...weightedLines(factors, speak),
      ...(retargeted.length === 0 ? [] : [`Not pressed yet, go on to the new target: ${speak.format.list(retargeted)}`]),
      ...(pressed.length === 0 ? [] : ['A quality engineer decides about those already pressed.']),
    ],
  }),
  batchBlended: ({ into, kg }, { format }) => only(`${format.number(kg)} kg blended into ${into}`),
  batchUsed: ({ lot, kg }, { format }) => only(`Used for lot ${lot}${kg === undefined ? '' : `: ${format.number(kg, 3)} kg`}`),
};

/** What a lot is told of its powder after it was opened. */
export const pressTargetSlipWords: WordsFor<Extract<LotSlip, { readonly type: 'pressTargetRevised' | 'pressTargetOutdated' }>, 'type', Said, [Speak]> = {
  pressTargetRevised: ({ press }, speak) => ({ sentence: `Press to ${targetText(press, speak)}`, lines: [`The factors of powder batch ${press.fromBatch} were corrected; the lot is not pressed yet.`] }),
  pressTargetOutdated: ({ press }, speak) => ({
    sentence: `Pressed to an earlier target; it would now be ${targetText(press, speak)}`, lines: [`The factors of powder batch ${press.fromBatch} were corrected after the lot was pressed.`, 'A quality engineer decides whether anything is to be done.'],
  }),
};
