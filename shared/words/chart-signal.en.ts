import type { BaseFault, ChartKind, ChartRule, ChartSignalled, LineName, SignalSide } from '../traveller/index.ts';
import type { Said } from './said.ts';
import { streamText } from './speak.ts';
import type { Speak } from './speak.ts';

/** The names of charts, of their rules, lines and sides. */
export const chartNames: {
  readonly kinds: Readonly<Record<ChartKind, string>>; readonly rules: Readonly<Record<ChartRule, string>>; readonly lines: Readonly<Record<LineName, string>>; readonly sides: Readonly<Record<SignalSide, string>>;
  readonly baseFaults: Readonly<Record<BaseFault, string>>;
} = {
  kinds: {
    meanAndS: 'mean and s', meanAndRange: 'mean and range', individuals: 'individuals and moving range', ewma: 'EWMA of the means', cusum: 'CUSUM of the means',
    p: 'p, share nonconforming', np: 'np, number nonconforming', c: 'c, number of nonconformities', u: 'u, nonconformities a piece',
  },
  rules: {
    beyondLimits: 'one lot beyond a limit', twoOfThreeBeyondTwo: 'two of three lots beyond two sigma on one side', fourOfFiveBeyondOne: 'four of five lots beyond one sigma on one side',
    eightOnOneSide: 'eight lots in a row on one side', nineOnOneSide: 'nine lots in a row on one side', sixRisingOrFalling: 'six lots in a row rising, or falling',
    fourteenAlternating: 'fourteen lots in a row turning up and down', fifteenWithinOne: 'fifteen lots in a row within one sigma', eightWithoutOne: 'eight lots in a row with none within one sigma',
  },
  lines: {
    mean: 'mean', s: 's', range: 'range', movingRange: 'moving range', ewma: 'weighted mean', cusumUp: 'sum upwards', cusumDown: 'sum downwards', share: 'share nonconforming', count: 'count', rate: 'nonconformities a piece',
  },
  sides: { above: 'above', below: 'below', rising: 'rising', falling: 'falling', both: 'both sides' },
  baseFaults: {
    tooFew: 'there are too few lots', noSpread: 'there is no scatter to draw limits from', noneFound: 'nothing was found in them', notOnChart: 'not all of them stand on the chart, or both lots and figures were given',
  },
};

/** The name of one of a characteristic's charts by its key: "p, share nonconforming (major)". */
export function chartKeyName(key: string, { labels }: Pick<Speak, 'labels'>): string {
  const [kind = '', each = ''] = key.split('-');
  const name = Object.entries(chartNames.kinds).find(([known]) => known === kind)?.[1] ?? key;
  const named = Object.entries(labels.findingClasses).find(([known]) => known === each)?.[1];
  return named === undefined ? name : `${name} (${named})`;
}

/** "eight lots in a row on one side, mean above"; a sum is told by its name alone, which says the side. */
export function signalClause(rule: ChartRule, line: LineName, side: SignalSide): string {
  return `${chartNames.rules[rule]}, ${chartNames.lines[line]}${line === 'cusumUp' || line === 'cusumDown' ? '' : ` ${chartNames.sides[side]}`}`;
}

/** "Chart signal, Diameter, mean and s: eight lots in a row on one side, above". */
export function signalSaid({ about, key, rule, line, side, subject, lots }: ChartSignalled, speak: Speak): Said {
  return {
    sentence: `Chart signal, ${about.characteristicName}, ${chartKeyName(key, speak)}: ${signalClause(rule, line, side)}`,
    lines: [`Completed by ${streamText(speak, subject)}`, ...(lots.length < 2 ? [] : [`Looked at: ${speak.format.list(lots.map((lot) => streamText(speak, lot)))}`])],
  };
}
