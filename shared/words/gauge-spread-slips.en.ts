import type { GaugeSlip } from '../traveller/index.ts';
import { signatureSentence } from './gate-slips.en.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

type SpreadSlip = Extract<GaugeSlip, { readonly type: 'gaugeUncertaintySet' }>;

/** A gauge's uncertainty with a study's spread in it. */
export const gaugeSpreadSlipWords: WordsFor<SpreadSlip, 'type', Said, [Speak]> = {
  gaugeUncertaintySet: ({ study, s, calibrationUncertainty, expandedUncertainty, signature }, speak) => {
    const figure = (value: number): string => speak.format.number(Number(value.toPrecision(3)));
    return {
      sentence: `U = ${figure(expandedUncertainty)}, with the spread of study ${study}`,
      lines: [
        `Calibration U = ${figure(calibrationUncertainty)}, spread between people and trials s = ${figure(s)}, combined`,
        signature === null ? 'Carried on to the new calibration' : signatureSentence(signature, speak),
      ],
    };
  },
};
