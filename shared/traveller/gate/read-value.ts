import { doubtedBy, dueAt } from '../gauge/gauge.ts';
import { isWholeSteps } from '../gauge/steps.ts';
import type { GaugeState } from '../known.ts';
import { refuse } from '../pen.ts';
import type { Characteristic, Measured } from '../plan/characteristic.ts';
import { judgedLimits } from './judge.ts';
import { likelierValue } from './likelier-value.ts';
import type { GaugeUsed, ReadingInputs } from './slips.ts';
import { workOut } from './work-out.ts';

/** What a person entered at one place of the sample. */
export interface Entered { readonly value: number | string | boolean | null; readonly inputs?: ReadingInputs; readonly sure?: boolean }

/** The value that counts, or the refusal that says what is wrong with the entry. Nothing is rounded or dropped in silence. */
export function readValue(characteristic: Characteristic, entered: Entered, gauge: GaugeState | null): number | string | boolean {
  if (entered.inputs !== undefined && !isWorkedOut(characteristic)) refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'valueItself', unit: '' });
  switch (characteristic.kind) {
    case 'measured': return measuredValue(characteristic, entered, gauge);
    case 'graded':
      if (typeof entered.value !== 'string' || !characteristic.scale.includes(entered.value)) refuse({ code: 'ratingUnknown', characteristic: characteristic.name, value: String(entered.value), scale: characteristic.scale });
      return entered.value;
    case 'confirmed':
      if (typeof entered.value !== 'boolean') refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'yesOrNo', unit: '' });
      return entered.value;
    case 'counted': return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'findings', unit: '' });
  }
}

function isWorkedOut(characteristic: Characteristic): boolean {
  return characteristic.kind === 'measured' && characteristic.entry.how !== 'direct';
}

function measuredValue(characteristic: Measured, { value, inputs, sure }: Entered, gauge: GaugeState | null): number {
  const { name } = characteristic;
  const got = characteristic.entry.how === 'direct' ? directValue(characteristic, value) : workOut(characteristic, value, inputs);
  if (!Number.isFinite(got)) refuse({ code: 'valueImpossible', characteristic: name, value: got, why: 'notFinite', detail: '' });
  if (gauge !== null && characteristic.entry.how === 'direct' && (got < gauge.card.least || got > gauge.card.most)) refuse({ code: 'valueImpossible', characteristic: name, value: got, why: 'outsideGauge', detail: `${gauge.card.least} … ${gauge.card.most} ${gauge.card.unit}` });
  for (const read of characteristic.entry.how === 'direct' ? [got] : lengthsRead(inputs, gauge)) requireAsShown(name, read, gauge);
  requirePlausible(characteristic, got, sure);
  return got;
}

/** Questions a value outside the plausible range unless the person is sure of it. */
export function requirePlausible({ name, plausible: { least, most } }: Measured, value: number, sure: boolean | undefined): void {
  if (sure !== true && (value < least || value > most)) refuse({ code: 'unlikelyValue', characteristic: name, value, least, most, likely: likelierValue(value, least, most) });
}

function directValue(characteristic: Measured, value: Entered['value']): number {
  if (typeof value !== 'number') return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'number', unit: characteristic.unit });
  // A decimal like 4.763 is not exact in binary: the value must be the double nearest to a decimal of so many places.
  if (Number.isFinite(value) && Number(value.toFixed(characteristic.decimals)) !== value) refuse({ code: 'valueImpossible', characteristic: characteristic.name, value, why: 'finerThanResolution', detail: String(characteristic.decimals) });
  return value;
}

/** The lengths among what was read, where the gauge reads millimetres. */
function lengthsRead(inputs: ReadingInputs | undefined, gauge: GaugeState | null): readonly number[] {
  if (gauge?.card.unit !== 'mm') return [];
  return Object.entries(inputs ?? {}).flatMap(([key, read]: [string, unknown]) => (key.endsWith('Mm') ? [read].flat() : [])).filter((read) => typeof read === 'number');
}

/** Refuses what the gauge cannot have shown: a value between two of its steps. */
export function requireAsShown(name: string, value: number, gauge: GaugeState | null): void {
  if (gauge !== null && Number.isFinite(value) && !isWholeSteps(value, gauge.card.resolution)) refuse({ code: 'valueImpossible', characteristic: name, value, why: 'finerThanGauge', detail: `${gauge.card.resolution} ${gauge.card.unit}` });
}

/**
 * Refuses a gauge that is known to be bad now, whenever the reading was taken, and one that was bad when it was: nobody would rely on either,
 * however late the network brought the reading.
 * @param at when the reading was taken at the bench
 */
export function requireTrusted(gauge: GaugeState, at: string): void {
  const { card, withdrawn, outOfTolerance } = gauge;
  if (withdrawn !== null) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'withdrawn', detail: withdrawn });
  const recall = outOfTolerance ?? doubtedBy(gauge, at)?.id;
  if (recall !== undefined) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'outOfTolerance', detail: recall });
}

/**
 * The gauge as the slip keeps it, or the refusal that it cannot count. The calibration is good to the end of its last day.
 * @param at when the reading was taken at the bench
 */
export function gaugeUsed(characteristic: Measured, gauge: GaugeState | null, at: string): GaugeUsed | undefined {
  if (gauge === null) {
    if (characteristic.gaugeKind !== null) refuse({ code: 'gaugeNeeded', characteristic: characteristic.name, gaugeKind: characteristic.gaugeKind });
    return undefined;
  }
  const { card } = gauge;
  requireTrusted(gauge, at);
  const due = dueAt(gauge, at);
  if (due < at.slice(0, 10)) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'overdue', detail: due });
  if (characteristic.gaugeKind !== null && card.gaugeKind !== characteristic.gaugeKind) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'wrongKind', detail: characteristic.gaugeKind });
  if (characteristic.entry.how === 'direct' && card.unit !== characteristic.unit) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'wrongUnit', detail: `${card.unit} / ${characteristic.unit}` });
  if (leavesNoRoom(characteristic, card.expandedUncertainty)) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'tooCoarse', detail: `U = ${card.expandedUncertainty} ${card.unit}` });
  return { id: card.id, expandedUncertainty: card.expandedUncertainty, calibrationDue: due, ...(card.coverageFactor === undefined ? {} : { coverageFactor: card.coverageFactor }) };
}

/** True when the guard bands of this gauge meet: no value at all could be accepted with it. */
function leavesNoRoom(characteristic: Measured, uncertainty: number): boolean {
  const { acceptLower, acceptUpper } = judgedLimits(characteristic, uncertainty);
  return characteristic.decisionRule === 'guardedAcceptance' && acceptLower !== null && acceptUpper !== null && acceptLower >= acceptUpper;
}
