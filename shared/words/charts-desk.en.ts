import type { ChartRow } from '../wire/charts-view.ts';
import type { SubjectKind } from '../traveller/index.ts';

/** What the charts desk says. */
export const chartsDeskWords = {
  title: 'Charts',
  back: 'All charts',
  unknown: 'There is no characteristic at this address.',
  list: {
    caption: 'Control charts of the plant', empty: 'No characteristic is charted yet. An engineer sets a chart up.', add: 'Chart another characteristic',
    standings: { provisional: 'limits provisional', inControl: 'in control', signal: 'signal' } satisfies Record<ChartRow['standing'], string>,
    columns: { characteristic: 'Characteristic', standing: 'Standing', owner: 'Product or grade', gate: 'Gate', chart: 'Chart', lots: 'Lots', last: 'Newest lot', signals: 'Signals', lastSignal: 'Last signal', holds: 'Holds' },
    holds: 'may hold', holdsNot: 'no',
  },
  choose: {
    title: 'Chart a characteristic', lead: 'Measured and counted characteristics of plans in force can be charted.', kind: 'Of a', kinds: { lot: 'lot, by product', batch: 'powder batch, by grade', furnace: 'furnace charge, by grade', coating: 'coating charge, by coating' } satisfies Record<SubjectKind, string>,
    owner: 'Product, grade or coating', thing: 'Gate and characteristic', go: 'Go to its page', none: 'Nothing here can be charted.', noOwner: 'Nothing is defined for this kind yet.',
  },
  page: {
    about: (gate: string, owner: string) => `${gate} · ${owner}`,
    facts: { lots: 'Lots', values: 'Values', limits: 'Limits of the newest lot', first: 'First lot', last: 'Newest lot' },
    notCharted: (name: string) => ({ happened: `${name} is not charted yet.`, next: 'An engineer sets a chart up; lots judged before can be taken along.' }),
    noChart: 'Every chart of it was withdrawn. Its points are kept.',
    noPoints: 'No lot stands on it yet. The next first verdict at the gate puts one here.',
    define: 'Set up a chart', charts: 'Control charts', capability: 'Capability', spread: 'All values kept', mayNot: 'A quality engineer sets charts up and signs for their limits.',
  },
  chart: {
    names: { provisional: 'limits provisional', inControl: 'in control', signal: 'signal' } satisfies Record<ChartRow['standing'], string>,
    provisional: 'Limits are provisional: from all lots here, they move with every lot, and nothing is signalled.',
    frozenFrom: (lots: string, by: string, when: string, reason: string) => `Limits frozen from ${lots} by ${by}, ${when}: ${reason}`, frozenGiven: (by: string, when: string, reason: string) => `Limits given by ${by}, ${when}: ${reason}`,
    centre: 'Centre', sigma: 'Sigma', noLimits: (fault: string) => `No limits can be drawn yet: ${fault}.`,
    rules: 'Signals on', mayHold: 'A signal puts the lot on hold.', mayNotHold: 'A signal holds nothing.',
    signalsNow: 'What the rules say now', posted: 'posted', notPosted: 'in the base period, or before the limits were frozen', gone: 'Signals posted earlier that a correction has taken away', none: 'No rule speaks.',
    signal: (n: number, clause: string) => `S${n}: ${clause}`,
    table: (chart: string) => `Points of ${chart}`, columns: { no: 'No.', lot: 'Lot', when: 'Judged', n: 'n', value: 'Value', lower: 'Lower limit', centre: 'Centre', upper: 'Upper limit', signal: 'Signal', note: 'Note' },
    base: 'base period', revised: 'corrected', start: 'begins anew', open: 'Show the table',
    freeze: 'Freeze limits', renew: 'Freeze anew', unfreeze: 'Unfreeze', restart: 'Begin anew', change: 'Change rules', withdraw: 'Withdraw chart',
    ask: (what: string) => `How do these limits of ${what} come about?`, how: 'How?',
    axisX: 'lots in the order judged', upper: 'upper', lower: 'lower', middle: 'centre', cursorOf: (line: string, name: string) => `Lot read out: ${line} of ${name}`, backOne: 'One lot earlier', onOne: 'One lot later',
    read: (lot: string, value: string, limits: string, signal: string) => `${lot}: ${value}, limits ${limits}${signal}`, readSignal: (n: string) => `, signal S${n}`, noLimit: 'none',
    reasons: { unfreeze: 'Why the limits no longer stand', restart: 'What was found, and what was done', withdraw: 'Why the chart is not needed' },
    signUnfreeze: 'Limits unfrozen by', unfreezeStatement: (name: string) => `The limits of ${name} no longer stand. Nothing is signalled until others are frozen.`,
    done: { frozen: 'The limits are frozen.', unfrozen: 'The limits move again.', restarted: 'The chart begins anew with the next lot.', withdrawn: 'The chart is withdrawn.', defined: 'The chart is set up.' },
  },
  define: {
    title: 'Set up a chart', change: (name: string) => `Change ${name}`, kind: 'Kind of chart', class: 'Counted', allClasses: 'all classes together', lambda: 'Lambda, weight of the newest lot', width: 'Width of the limits, sigma', k: 'k, allowance, sigma', h: 'h, decision interval, sigma',
    spread: 'Sigma of a lot’s mean', spreads: { betweenLots: 'from lot to lot (moving ranges)', withinLots: 'from within lots, by the root of n' }, limits: 'Limits', limitKinds: { threeSigma: 'three sigma', exact: 'exact, 0.00135 a side' },
    rules: 'Signals on', may: 'A signal puts the lot on hold', hold: { no: 'no, it is shown only', yes: 'yes, until an engineer decides' }, lots: (n: number) => (n === 1 ? 'One lot judged before is taken along.' : `${n} lots judged before are taken along.`), do: 'Set it up', save: 'Save the change', badNumber: 'A number is needed here.',
    falseAlarms: 'Every rule switched on makes false signals more frequent: beyond three sigma alone once in 370 lots of a steady process, all four zone rules once in 92 (docs/methods/charts.md).',
  },
  freeze: {
    title: (name: string) => `Freeze the limits of ${name}`, way: 'Limits', ways: { lots: 'from lots on the chart', given: 'given' }, from: 'From lot', to: 'To lot', centre: 'Centre', sigma: 'Sigma', reason: 'Why these limits', next: 'Go on to sign', sign: 'Limits frozen by',
    statement: (name: string, base: string) => `From the next lot on ${name} is judged by ${base}. These limits stand until other ones are signed.`,
    lots: (n: number) => `${n} lots`, few: (n: number) => `Only ${n} lots. Twenty to twenty-five are common practice; with fewer, false signals are more frequent.`, outside: (n: number) => (n === 1 ? 'One of these lots lies beyond the limits they give. Find out why before you sign, or leave it out.' : `${n} of these lots lie beyond the limits they give. Find out why before you sign, or leave them out.`),
    base: (centre: string, sigma: string | null) => (sigma === null ? `centre ${centre}` : `centre ${centre}, sigma ${sigma}`),
  },
  capability: {
    caption: 'Capability, with 95 % confidence limits', columns: { index: 'Index', value: 'Value', low: 'from', high: 'to', by: 'Interval' },
    within: 'within lots', overall: 'overall', share: 'Share outside, by the normal law', counted: 'Share outside, counted',
    by: { chiSquare: 'exact, chi-square', noncentralT: 'exact, noncentral t', bissell: 'approximate, Bissell', noncentralTBothSides: 'noncentral t, both sides', clopperPearson: 'exact, Clopper–Pearson' },
    tooFew: 'Fewer than 8 values: no capability is shown.', noSpread: 'All values are equal: there is no scatter to compare with the tolerance.', noLimit: 'Without a limit there is no capability.',
    few: (n: string) => `Only ${n} values; below 30 the intervals are wide and the approximate ones rough.`, notNormal: (p: string) => `The values do not look normal (Shapiro–Wilk, p ${p}). Indices and the share by the normal law do not mean what they say; the counted share does.`, normal: (p: string, n: string) => `No sign against a normal distribution in ${n} values (Shapiro–Wilk, p ${p}).`, notTested: 'Whether the values are normal was not tested: none are kept singly, or too few.',
    notSteady: 'A chart signals at one of these lots, or no limits are signed for: capability means something only while nothing changes.', differ: 'Limits differ from lot to lot; the newest are taken here.',
    names: { width: { within: 'Cp', overall: 'Pp' }, lowerSide: { within: 'CPL', overall: 'PPL' }, upperSide: { within: 'CPU', overall: 'PPU' }, centred: { within: 'Cpk', overall: 'Ppk' } },
    ask: (name: string, value: string) => `${name} ${value}: how?`, histogram: (n: string, all: string) => (n === all ? `${n} values` : `${n} of ${all} values, those kept singly`), class: 'From', classTo: 'to below', count: 'Values', histogramTable: 'Values by class', axisCount: 'values', mean: 'mean', lower: 'lower limit', upper: 'upper limit',
  },
  how: {
    formula: 'Formula', inputs: 'Put in', holds: 'Holds for', holdsText: 'normal values of a steady process',
    spread: { within: 's within lots, pooled: √(Σ(nᵢ − 1)sᵢ² / Σ(nᵢ − 1))', overall: 's of all values as one sample' },
    width: '(upper − lower) / 6s; interval × √(χ²(α/2; df)/df) … √(χ²(1 − α/2; df)/df)', side: 'distance of the mean from the limit / 3s; interval: the noncentralities of t(df) that leave α/2 beyond what was seen, / 3√N',
    centred: 'the smaller distance of the mean from a limit / 3s; interval ± z·√(1/(9N) + Cpk²/(2·df))', share: 'P(Z > distance/s) of each side; interval by the noncentral t law, with two limits each side at half the risk', counted: 'seen outside / seen; interval: Clopper–Pearson',
    handbook: 'NIST/SEMATECH e-Handbook 6.1.6', bissell: 'Bissell, Applied Statistics 39 (1990) 331', kushler: 'Kushler & Hurley, Journal of Quality Technology 24 (1992) 188', clopper: 'Clopper & Pearson, Biometrika 26 (1934) 404', shareSource: 'Interval of the share by noncentral t',
    limits: {
      meanAndS: 'mean: centre ± 3σ/√n; s: c4σ, limits B5σ and B6σ; σ = Σ hᵢsᵢ/c4(nᵢ) / Σ hᵢ, hᵢ = c4²/(1 − c4²)', meanAndRange: 'mean: centre ± 3σ/√n; range: d2σ, limits D1σ and D2σ; σ = Σ hᵢRᵢ/d2(nᵢ) / Σ hᵢ, hᵢ = d2²/d3²',
      individuals: 'centre ± 3σ; moving range up to (d2 + 3d3)σ; σ = mean moving range / d2(2)', ewma: 'z = λx + (1 − λ)z; centre ± width·√v, v = λ²σᵢ² + (1 − λ)²v', cusum: 'C = max(0, C ± (x − centre)/σᵢ − k); limit h',
      p: 'p ± 3√(p(1 − p)/n), or the counts beyond which the binomial law leaves 0.00135 a side', np: 'np ± 3√(np(1 − p)), or the counts beyond which the binomial law leaves 0.00135 a side', u: 'u ± 3√(u/n), or the counts beyond which the Poisson law leaves 0.00135 a side', c: 'c ± 3√c, or the counts beyond which the Poisson law leaves 0.00135 a side',
    },
    chartSources: 'ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2, 6.3.3', constants: 'c4, d2, d3 worked out for each n', zoneRules: 'Statistical Quality Control Handbook, Western Electric (1956); Nelson, Journal of Quality Technology 16 (1984) 237',
  },
};
export type ChartsDeskWords = typeof chartsDeskWords;
