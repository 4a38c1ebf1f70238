import { uncertaintyWithSpread } from '../../metrology/gauge-study/index.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { streamName } from '../stream.ts';
import type { GaugeState } from './gauge.ts';

/** Takes the spread that a closed crossed study found into a gauge's uncertainty, beside that of its calibration. A later study takes the place of an earlier one. */
export function setGaugeUncertainty(pen: Pen, gauge: GaugeState, studyId: string): void {
  const study = pen.find(streamName('study', studyId), 'study', 'study');
  if (study.gauge !== gauge.card.id) refuse({ code: 'studyNotForUncertainty', study: studyId, why: 'otherGauge' });
  if (study.closed === null) return refuse({ code: 'studyNotForUncertainty', study: studyId, why: 'notClosed' });
  const { found } = study.closed;
  if (found.by !== 'crossed') return refuse({ code: 'studyNotForUncertainty', study: studyId, why: 'notCrossed' });
  if (gauge.spread?.study === studyId) refuse({ code: 'nothingChanged', what: gauge.card.id });
  const calibrationUncertainty = gauge.spread?.calibrationUncertainty ?? gauge.card.expandedUncertainty;
  const signature = pen.signature('setGaugeUncertainty', 'uncertaintySetBy');
  const expandedUncertainty = uncertaintyWithSpread(calibrationUncertainty, found.gaugeS, gauge.card.coverageFactor ?? 2);
  pen.write(gauge.stream, { type: 'gaugeUncertaintySet', study: studyId, s: found.gaugeS, calibrationUncertainty, expandedUncertainty, signature });
}

/** A calibration says nothing about the spread between people and trials: what a study found stays in the uncertainty. */
export function carrySpreadOn(pen: Pen, { stream, spread }: GaugeState, calibrationUncertainty: number): void {
  if (spread === undefined) return;
  const { study, s } = spread;
  const { card } = pen.find(stream, 'gauge', 'gauge');
  pen.write(stream, { type: 'gaugeUncertaintySet', study, s, calibrationUncertainty, expandedUncertainty: uncertaintyWithSpread(calibrationUncertainty, s, card.coverageFactor ?? 2), signature: null });
}
