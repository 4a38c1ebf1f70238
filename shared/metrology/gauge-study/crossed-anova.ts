import { carefulSum } from '../../ground/careful-sum.ts';
import { fisherAbove } from '../../sampling/chance/index.ts';
import { crossedSize } from './crossed-readings.ts';
import type { CrossedReadings, CrossedSize } from './crossed-readings.ts';

/** Where spread comes from. `repeatability` is the same person on the same part again. */
export type Source = 'part' | 'person' | 'interaction' | 'repeatability';
/** A mean square and what it rests on. */
export type MeanSquare = { readonly meanSquare: number; readonly df: number };
/** F against the mean square named, and the probability of so large an F where this source adds nothing. */
export type FTest = { readonly against: Source; readonly f: number; readonly p: number };
/** One line of the table. `test` is null for repeatability, and where there is no spread to test against. */
export type AnovaRow = MeanSquare & { readonly source: Source; readonly squares: number; readonly test: FTest | null };
/** The analysis of variance of a crossed study: sums of squares in the squared unit of the readings. With one person only part and repeatability. */
export type CrossedAnova = CrossedSize & { readonly mean: number; readonly rows: readonly AnovaRow[]; readonly total: { readonly squares: number; readonly df: number } };

/**
 * Two-way analysis of variance with interaction, parts and people both taken as drawn from many: part and person are tested against the
 * interaction, the interaction against repeatability; with one person the parts against repeatability.
 * @throws OutsideDomain where crossedSize does
 * @remarks Each sum of squares is summed from its own deviations, counted from the first reading and carried with its rounding: none is a difference of
 * large numbers. Readings with d constant leading digits keep about 15 − d digits, the limit of double precision, as the NIST StRD sets show.
 * @see Montgomery, Design and Analysis of Experiments, ch. 13 (random two-factor model; from memory); Burdick, Borror & Montgomery, Design and Analysis of Gauge R&R Studies (2005), ch. 2 (from memory)
 */
export function crossedAnova(readings: CrossedReadings): CrossedAnova {
  const size = crossedSize(readings);
  const { parts, people, trials } = size;
  const start = readings[0]?.[0]?.[0] ?? 0;
  const cells = readings.map((byPerson) => byPerson.map((byTrial) => byTrial.map((value) => value - start)));
  const cellMeans = cells.map((byPerson) => byPerson.map(meanOf));
  const partMeans = cells.map((byPerson) => meanOf(byPerson.flat()));
  const personMeans = Array.from({ length: people }, (_, person) => meanOf(cells.flatMap((byPerson) => byPerson[person] ?? [])));
  const mean = meanOf(cells.flat(2));
  const squares: Record<Source, number> = {
    part: people * trials * squaresOf(partMeans.map((each) => each - mean)),
    person: parts * trials * squaresOf(personMeans.map((each) => each - mean)),
    interaction: trials * squaresOf(cellMeans.flatMap((byPerson, part) => byPerson.map((cell, person) => cell - (partMeans[part] ?? 0) - (personMeans[person] ?? 0) + mean))),
    repeatability: carefulSum(cells.flatMap((byPerson, part) => byPerson.map((cell, person) => squaresOf(cell.map((each) => each - (cellMeans[part]?.[person] ?? 0)))))),
  };
  const df: Record<Source, number> = { part: parts - 1, person: people - 1, interaction: (parts - 1) * (people - 1), repeatability: parts * people * (trials - 1) };
  const sources: readonly Source[] = people === 1 ? ['part', 'repeatability'] : ['part', 'person', 'interaction', 'repeatability'];
  const found = (source: Source): MeanSquare => ({ meanSquare: squares[source] / df[source], df: df[source] });
  const against: Record<Source, Source | null> = { part: people === 1 ? 'repeatability' : 'interaction', person: 'interaction', interaction: 'repeatability', repeatability: null };
  return {
    ...size, mean: start + mean,
    rows: sources.map((source) => ({ source, squares: squares[source], ...found(source), test: testOf(found(source), against[source], found) })),
    total: { squares: carefulSum(sources.map((source) => squares[source])), df: parts * people * trials - 1 },
  };
}

/** F of one mean square against another: null where that one shows no spread at all. */
export function fisherTest(over: MeanSquare, against: Source, under: MeanSquare): FTest | null {
  if (under.meanSquare === 0) return null;
  const f = over.meanSquare / under.meanSquare;
  return { against, f, p: fisherAbove(Math.min(f, 1e150), over.df, under.df) };
}

function testOf(over: MeanSquare, against: Source | null, found: (source: Source) => MeanSquare): FTest | null {
  return against === null ? null : fisherTest(over, against, found(against));
}

function meanOf(values: readonly number[]): number {
  return carefulSum(values) / values.length;
}

/** Sum of squares of deviations whose sum should be 0; what a rounded mean left over is taken out. */
function squaresOf(deviations: readonly number[]): number {
  const leftOver = carefulSum(deviations);
  return Math.max(0, carefulSum(deviations.map((each) => each * each)) - (leftOver * leftOver) / deviations.length);
}
