import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { GaugeState, Recall } from './gauge.ts';
import { isWithinAllowed } from './gauge.ts';
import type { GaugeSlip } from './slips.ts';

/** A gauge after one more slip. @throws BrokenThread on a thread that does not begin with its registration, or speaks of a recall it never opened */
export function evolveGauge(gauge: GaugeState | null, { body, stream, version, at, by }: Slip<GaugeSlip>): GaugeState {
  if (body.type === 'gaugeRegistered') return { kind: 'gauge', stream, version, card: body.gauge, withdrawn: null, outOfTolerance: null, dueDays: [{ from: at, due: body.gauge.calibrationDue }], lastGood: null, recalls: [] };
  if (gauge === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  const next = { ...gauge, version };
  switch (body.type) {
    case 'gaugeCalibrated': {
      const { calibrationDue, expandedUncertainty, certificate, coverageFactor, asFound } = body;
      const card = { ...gauge.card, calibrationDue, expandedUncertainty, certificate, ...(coverageFactor === undefined ? {} : { coverageFactor }) };
      const calibrated = { ...next, card, withdrawn: null, dueDays: [...gauge.dueDays, { from: at, due: calibrationDue }] };
      // Found bad: the recall that follows says so. What it was before adjusting is no good check.
      return asFound !== undefined && !isWithinAllowed(asFound.error, asFound.allowedError) ? calibrated : { ...calibrated, outOfTolerance: null, lastGood: { at, by: 'calibration' }, recalls: gauge.recalls.map((recall) => (recall.id === gauge.outOfTolerance ? { ...recall, liftedAt: at } : recall)) };
    }
    case 'gaugeChecked': return body.passed ? { ...next, lastGood: { at, by: 'check' } } : next;
    case 'gaugeLineChanged': return { ...next, card: { ...gauge.card, line: body.line } };
    case 'recallOpened': {
      const { recall: id, found, since, error, allowedError } = body;
      return { ...next, outOfTolerance: id, recalls: [...gauge.recalls, { id, found, since, error, allowedError, openedAt: at, openedBy: by, held: [], closed: null }] };
    }
    case 'recallHeld': return withRecall(next, body.recall, (recall) => ({ ...recall, held: [...recall.held, ...body.held] }));
    case 'recallClosed': return withRecall(next, body.recall, (recall) => ({ ...recall, closed: { at, by, reason: body.reason } }));
    case 'gaugeUncertaintySet': {
      const { study, s, calibrationUncertainty, expandedUncertainty } = body;
      return { ...next, card: { ...gauge.card, expandedUncertainty }, spread: { study, s, calibrationUncertainty } };
    }
    case 'gaugeWithdrawn': return { ...next, withdrawn: body.reason };
  }
}

function withRecall(gauge: GaugeState, id: string, change: (recall: Recall) => Recall): GaugeState {
  if (!gauge.recalls.some((recall) => recall.id === id)) throw new BrokenThread(`${gauge.stream} has no recall ${id}`);
  return { ...gauge, recalls: gauge.recalls.map((recall) => (recall.id === id ? change(recall) : recall)) };
}
