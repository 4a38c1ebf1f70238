import { outcomes } from '../../../shared/sampling/risk/index.ts';
import { planWhyWords as words, type SourceTag } from '../../../shared/words/plan-why.en.ts';
import { showFigure } from '../../desk/show.ts';
import type { Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { percentText, stagesIn, toDigits } from './compared-text.ts';
import type { Figures } from './figures.ts';
import { numberOf } from './read-choice.ts';
import { modelFor } from './values.ts';
import { whyOfPlan } from './why-of-plan.ts';
import type { WhyKind } from './why-asked.ts';

/** Part of a master table with the way the plan was found in it. */
export interface Excerpt { readonly caption: string; readonly rows: readonly { readonly letter: string; readonly size: string; readonly cell: string; readonly way: string; readonly marked: boolean }[] }
/** Why a number is what it is: lines of label and text, a table's part where one was read, and how sure each source is. */
export interface Why {
  readonly lines: readonly { readonly label: string; readonly text: string; readonly formula?: boolean }[];
  readonly excerpt: Excerpt | null;
  readonly sources: readonly { readonly text: string; readonly tag: SourceTag }[];
}
export interface WhyInputs { readonly settings: Settings; readonly figures: Figures | null }

/** The reason of a number of a plan, with its inputs put in. */
export function whyOf(kind: WhyKind, plan: Compared, inputs: WhyInputs): Why {
  switch (kind) {
    case 'sample':
    case 'numbers':
    case 'letter': return whyOfPlan(plan);
    case 'scheme':
    case 'share':
    case 'schemeAsn':
    case 'schemeAoq': return whyOfScheme(inputs);
    case 'simulated': return whyOfYear(inputs);
    case 'producer': return plan.judged.by === 'points' ? whyOfPlan(plan) : whyOfRisk(kind, plan, inputs);
    case 'atLq': return plan.judged.by === 'isolated' || plan.judged.by === 'points' ? whyOfPlan(plan) : whyOfRisk(kind, plan, inputs);
    default: return whyOfRisk(kind, plan, inputs);
  }
}

const { labels, risk, scheme } = words;
type RiskKind = Exclude<WhyKind, 'sample' | 'numbers' | 'letter' | 'scheme' | 'share' | 'schemeAsn' | 'schemeAoq' | 'simulated'>;

function whyOfRisk(kind: RiskKind, compared: Compared, { settings, figures }: WhyInputs): Why {
  const { judged } = compared;
  const measured = judged.by === 'measured';
  const law = measured ? risk.laws.measured : risk.laws[settings.model];
  const several = judged.by === 'sequential' ? risk.sequential : 'stages' in judged.judging && judged.judging.stages.length > 1 ? risk.several : risk.single;
  const accepted = measured ? (judged.method === 's' ? words.measured.formulaS : words.measured.formulaSigma) : several;
  const asn = measured ? risk.asnFixed : judged.by === 'sequential' ? risk.asnSequential : risk.asn;
  const lots = numberOf(settings.lots) ?? 0;
  const byLots = risk.lots(showFigure(lots));
  const lines = (formulas: readonly string[], put: string | null, rules: readonly string[]): Why['lines'] => [
    ...[law, ...rules].map((text) => ({ label: labels.rule, text })),
    ...formulas.map((text) => ({ label: labels.formula, text, formula: true })),
    ...(put === null ? [] : [{ label: labels.inputs, text: put, formula: true }]),
  ];
  const lawSource = measured ? words.measured.laws[judged.method] : risk.lawSource;
  const made = (formulas: readonly string[], put: string | null, source: string | null = null, rules: readonly string[] = []): Why => ({
    lines: lines(formulas, put, rules), excerpt: null, sources: [...(source === null || measured ? [{ text: lawSource, tag: 'memory' as const }] : []), ...(source === null ? [] : [{ text: source, tag: 'memory' as const }]), { text: risk.exact, tag: 'computed' }],
  });
  const expected = figures?.expected ?? null;
  const percent = (p: number): string => percentText(p, 4);
  switch (kind) {
    case 'producer': return made([risk.producer, accepted], figures?.producer == null ? null : risk.atAccepted(percent(figures.producer.p), percentText(1 - figures.producer.risk, 6)));
    case 'consumer': return made([risk.consumer, accepted], figures === null ? null : risk.atAccepted(percent(figures.tenPercent), '10'));
    case 'atLq': return made([risk.atLq, accepted], figures?.atLq == null ? null : risk.atAccepted(percent(figures.atLq.p), percentText(figures.atLq.risk, 6)));
    case 'aoql': return made([risk.aoql, accepted], figures === null ? null : risk.lotOf(showFigure(compared.lotSize), risk.at(percent(figures.aoql.at), `AOQ ${percentText(figures.aoql.aoql, 5)} %`)), risk.aoqSource, [risk.aoqSorted, ...(settings.model === 'hypergeometric' && !measured ? [risk.aoqOneLot] : [])]);
    case 'asnAtAql': return made([asn], figures?.producer == null || figures.asnAtAql === null ? null : asnPutIn(compared, settings, figures.producer.p, figures.asnAtAql), risk.asnSource);
    case 'acceptedExpected': return made([accepted], expected === null ? null : risk.atAccepted(percent(expected.p), percentText(expected.accepted, 6)));
    case 'asnExpected': return made([asn], expected === null ? null : asnPutIn(compared, settings, expected.p, expected.asn), risk.asnSource);
    case 'piecesYear': return made([risk.year, asn], expected === null ? null : risk.product(byLots + risk.times + toDigits(expected.asn, 6), toDigits(lots * expected.asn, 6)), risk.asnSource);
    case 'usedYear': return made([risk.used, asn], expected === null ? null : risk.product(byLots + risk.times + toDigits(expected.asn, 6), toDigits(lots * expected.asn, 6)), risk.asnSource);
    case 'hoursYear': return made([risk.hours, risk.year], expected === null ? null : risk.product(risk.pieces(toDigits(lots * expected.asn, 6)) + risk.times + risk.minutes(settings.minutes), `${toDigits((lots * expected.asn * (numberOf(settings.minutes) ?? 0)) / 60, 4)} h`), risk.asnSource);
    case 'sortedYear': return made([risk.sorted, risk.ati], expected === null ? null : risk.product(byLots + risk.times + toDigits(expected.ati, 6), toDigits(lots * expected.ati, 6)), risk.aoqSource);
  }
}

/** The pieces of each sample with how often it is come to: "50 × 100 % + 50 × 23.6 % = 61.81"; the mean alone where there are no samples. */
function asnPutIn(compared: Compared, { model }: Settings, p: number, asn: number): string {
  const stages = stagesIn(compared);
  if (stages === null || compared.judged.by === 'measured') return risk.at(percentText(p, 4), toDigits(asn, 6));
  const { byStage } = outcomes(compared.judged.judging, modelFor(compared, model), p);
  const comeTo = stages.map((_, at) => byStage.slice(0, at).reduce((left, { accepted, rejected }) => left - accepted - rejected, 1));
  return risk.product(stages.map(({ sampleSize }, at) => `${showFigure(sampleSize)}${risk.times}${percentText(comeTo[at] ?? 0, 4)} %`).join(' + '), toDigits(asn, 6));
}

function whyOfScheme({ settings }: WhyInputs): Why {
  return {
    lines: [
      { label: labels.clause, text: scheme.clause[settings.switching] }, { label: labels.rule, text: scheme.rule }, { label: labels.formula, text: scheme.formula, formula: true },
      { label: labels.inputs, text: scheme.inputs(settings.expected, settings.switching), formula: true },
    ],
    excerpt: null,
    sources: [{ text: scheme.clause[settings.switching], tag: settings.switching === 'MIL-STD-105E' ? 'seen' : 'memory' }, { text: scheme.chain, tag: 'computed' }],
  };
}

function whyOfYear({ settings }: WhyInputs): Why {
  return {
    lines: [{ label: labels.rule, text: scheme.simulated }, { label: labels.rule, text: scheme.rule }, { label: labels.inputs, text: scheme.seed(settings.seed, settings.expected), formula: true }],
    excerpt: null,
    sources: [{ text: scheme.clause[settings.switching], tag: settings.switching === 'MIL-STD-105E' ? 'seen' : 'memory' }, { text: scheme.simulated, tag: 'computed' }],
  };
}
