import { requireFinite } from '../../ground/outside-domain.ts';
import { fisherTest } from './crossed-anova.ts';
import type { AnovaRow, CrossedAnova, MeanSquare, Source } from './crossed-anova.ts';
import { effectiveDf, estimated, varianceInterval } from './mean-square-interval.ts';
import type { Term, VarianceInterval } from './mean-square-interval.ts';

/** What the spread of readings is made of. reproducibility = person + interaction; gauge = repeatability + reproducibility; total = gauge + part. */
export type ComponentName = 'repeatability' | 'person' | 'interaction' | 'reproducibility' | 'gauge' | 'part' | 'total';
/** One component, in the squared unit of the readings. */
export type Component = {
  readonly name: ComponentName;
  /** Never below 0. */
  readonly variance: number;
  readonly s: number;
  /** What the mean squares gave, where it was below 0 and is set to 0; else null. */
  readonly negative: number | null;
  /** Limits of the variance. */
  readonly interval: VarianceInterval;
  /** By Satterthwaite; null where the estimate is 0 or below. */
  readonly effectiveDf: number | null;
};
/** How the table was read. `withInteraction` keeps it, `pooled` adds it to repeatability, `onePerson` has none. */
export type GaugeModel = 'withInteraction' | 'pooled' | 'onePerson';
/** Components of a crossed study, with the table of the model in force. */
export type GaugeComponents = { readonly model: GaugeModel; readonly rows: readonly AnovaRow[]; readonly components: readonly Component[]; readonly confidence: number };
export type GaugeChoices = {
  /** The interaction is pooled where its p is above this; a fraction 0 … 1. 1 never pools. Common practice 0.25 (from memory). */
  readonly poolAbove: number;
  /** Of each interval, a fraction 0.5 … 0.999. */
  readonly confidence: number;
};

/**
 * Variance components from the analysis of variance of a crossed study, by equating mean squares with their expectations. A negative
 * estimate is set to 0 and told in `negative`; sums are made of the components after that, so that they add up.
 * @throws OutsideDomain for choices outside their ranges
 * @see Burdick, Borror & Montgomery, Design and Analysis of Gauge R&R Studies (2005), ch. 2 and 3; measurement systems handbook of the automotive trade, 4th ed. (pooling; both from memory)
 */
export function gaugeComponents(anova: CrossedAnova, { poolAbove, confidence }: GaugeChoices): GaugeComponents {
  requireFinite('poolAbove', poolAbove, 0, 1);
  requireFinite('confidence', confidence, 0.5, 0.999);
  const model = modelOf(anova, poolAbove);
  const rows = model === 'pooled' ? pooledRows(anova) : anova.rows;
  const terms = termsOf(model, anova, rows);
  const own = (name: ComponentName): number => Math.max(0, estimated(terms[name]));
  const [repeatability, person, interaction, part] = [own('repeatability'), own('person'), own('interaction'), own('part')];
  const variances: Record<ComponentName, number> = {
    repeatability, person, interaction, reproducibility: person + interaction, gauge: repeatability + person + interaction, part, total: repeatability + person + interaction + part,
  };
  const names: readonly ComponentName[] = model === 'onePerson' ? ['repeatability', 'gauge', 'part', 'total']
    : model === 'pooled' ? ['repeatability', 'person', 'reproducibility', 'gauge', 'part', 'total']
    : ['repeatability', 'person', 'interaction', 'reproducibility', 'gauge', 'part', 'total'];
  return {
    model, rows, confidence,
    components: names.map((name) => {
      const raw = estimated(terms[name]);
      const single = name === 'repeatability' || name === 'person' || name === 'interaction' || name === 'part';
      return { name, variance: variances[name], s: Math.sqrt(variances[name]), negative: single && raw < 0 ? raw : null, interval: varianceInterval(terms[name], confidence), effectiveDf: raw > 0 ? effectiveDf(terms[name]) : null };
    }),
  };
}

function modelOf({ people, rows }: CrossedAnova, poolAbove: number): GaugeModel {
  if (people === 1) return 'onePerson';
  const test = rows.find(({ source }) => source === 'interaction')?.test ?? null;
  // Without any repeatability the interaction cannot be tested and is kept.
  return test !== null && test.p > poolAbove ? 'pooled' : 'withInteraction';
}

function rowOf(rows: readonly AnovaRow[], source: Source): AnovaRow | null {
  return rows.find((row) => row.source === source) ?? null;
}

/** The interaction taken into repeatability, and part and person tested against that. */
function pooledRows({ rows }: CrossedAnova): AnovaRow[] {
  const [interaction, repeatability] = [rowOf(rows, 'interaction'), rowOf(rows, 'repeatability')];
  const [squares, df] = [(interaction?.squares ?? 0) + (repeatability?.squares ?? 0), (interaction?.df ?? 0) + (repeatability?.df ?? 0)];
  const pooled: MeanSquare = { meanSquare: squares / df, df };
  return rows.filter(({ source }) => source !== 'interaction')
    .map((row) => (row.source === 'repeatability' ? { ...row, squares, ...pooled } : { ...row, test: fisherTest(row, 'repeatability', pooled) }));
}

/** Each component as a weighted sum of the table's mean squares. */
function termsOf(model: GaugeModel, { parts, people, trials }: CrossedAnova, rows: readonly AnovaRow[]): Record<ComponentName, readonly Term[]> {
  const term = (source: Source, weight: number): Term[] => {
    const row = rowOf(rows, source);
    return row === null ? [] : [{ weight, meanSquare: row.meanSquare, df: row.df }];
  };
  const [n, p, o] = [trials, parts, people];
  const interacting = model === 'withInteraction';
  const error: Source = interacting ? 'interaction' : 'repeatability';
  const personShare = model === 'onePerson' ? 0 : 1 / (p * n);
  const partShare = 1 / (o * n);
  // Beside the terms of person and part, what is left of the error's own expectation.
  const sums = (byPerson: number, byPart: number): Term[] => [
    ...term('person', byPerson), ...term('part', byPart),
    ...(interacting ? [...term('interaction', 1 / n - byPerson - byPart), ...term('repeatability', 1 - 1 / n)] : term('repeatability', 1 - byPerson - byPart)),
  ];
  return {
    repeatability: term('repeatability', 1),
    person: [...term('person', personShare), ...term(error, -personShare)],
    interaction: interacting ? [...term('interaction', 1 / n), ...term('repeatability', -1 / n)] : [],
    reproducibility: interacting
      ? [...term('person', personShare), ...term('interaction', 1 / n - personShare), ...term('repeatability', -1 / n)]
      : [...term('person', personShare), ...term(error, -personShare)],
    gauge: sums(personShare, 0),
    part: [...term('part', partShare), ...term(error, -partShare)],
    total: sums(personShare, partShare),
  };
}
