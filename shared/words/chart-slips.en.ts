import type { ChartSignalled, ChartSlip, PointValue } from '../traveller/index.ts';
import { chartKeyName, chartNames } from './chart-signal.en.ts';
import { signatureSentence } from './gate-slips.en.ts';
import type { Said } from './said.ts';
import { streamText } from './speak.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

function pointText(value: PointValue, { format }: Speak): string {
  if (value.by === 'counted') return `${format.count(value.count)} found in ${format.count(value.of)}`;
  return `mean ${format.number(Number(value.mean.toPrecision(7)))}, ${value.s === null ? 'one value' : `s ${format.number(Number(value.s.toPrecision(4)))}`}, n ${format.count(value.n)}`;
}

function centreText({ centre, sigma }: { readonly centre: number; readonly sigma: number | null }, { format }: Speak): string {
  return `Centre ${format.number(Number(centre.toPrecision(8)))}${sigma === null ? '' : `, sigma ${format.number(Number(sigma.toPrecision(6)))}`}`;
}

/** What charts of a characteristic tell, signals apart, which stand on the lot's thread too. */
export const chartSlipWords: WordsFor<Exclude<ChartSlip, ChartSignalled>, 'type', Said, [Speak]> = {
  chartDefined: ({ key, card, about }, speak) => ({
    sentence: `Chart of ${about.characteristicName} at ${about.gateName}, ${about.ownerName}: ${chartKeyName(key, speak)}`,
    lines: [`Signals on: ${card.rules.map((rule) => chartNames.rules[rule]).join('; ')}`, card.mayHold ? 'A signal puts the lot on hold.' : 'A signal holds nothing.'],
  }),
  chartPointAdded: ({ subject, value }, speak) => ({ sentence: `${streamText(speak, subject)}: ${pointText(value, speak)}`, lines: [] }),
  chartPointRevised: ({ subject, value, why }, speak) => ({ sentence: `${streamText(speak, subject)} after a correction (${why}): ${pointText(value, speak)}`, lines: [] }),
  chartLimitsFrozen: ({ key, base, lots, reason, signature }, speak) => ({
    sentence: `Limits of ${chartKeyName(key, speak)} frozen ${lots.length === 0 ? 'as given' : `from ${speak.labels.lots(lots.length, speak.format.count(lots.length))}`}: ${reason}`,
    lines: [centreText(base, speak), ...(lots.length === 0 ? [] : [`From ${speak.format.list(lots.map((lot) => streamText(speak, lot)))}`]), signatureSentence(signature, speak)],
  }),
  chartLimitsUnfrozen: ({ key, reason, signature }, speak) => ({ sentence: `Limits of ${chartKeyName(key, speak)} no longer frozen: ${reason}`, lines: ['They move with every lot, and nothing is signalled.', signatureSentence(signature, speak)] }),
  chartRestarted: ({ key, reason }, speak) => ({ sentence: `${chartKeyName(key, speak)} begins anew with the next lot: ${reason}`, lines: [] }),
  chartWithdrawn: ({ key, reason }, speak) => ({ sentence: `${chartKeyName(key, speak)} withdrawn: ${reason}`, lines: ['The points stay.'] }),
};
