import { nextHold } from '../gate/give-verdict.ts';
import { standingHolds } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId, requireReason } from '../pen.ts';
import { streamName } from '../stream.ts';
import type { GaugeCommand } from './commands.ts';
import type { GaugeState, Recall } from './gauge.ts';
import { errorFound, isWithinAllowed } from './gauge.ts';
import { carrySpreadOn, setGaugeUncertainty } from './set-uncertainty.ts';
import { isWholeSteps } from './steps.ts';

/** Registers, calibrates, checks or withdraws a gauge, and works off the recall of one that was found bad. */
export function decideGauge(pen: Pen, command: GaugeCommand): void {
  pen.requireRole(command.type);
  if (command.type === 'registerGauge') {
    requireFitId('gauge', command.gauge.id);
    const stream = streamName('gauge', command.gauge.id);
    if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'gauge', id: command.gauge.id });
    return pen.write(stream, { type: 'gaugeRegistered', gauge: command.gauge });
  }
  const gauge = pen.find(streamName('gauge', command.gauge), 'gauge', 'gauge');
  switch (command.type) {
    case 'calibrateGauge': {
      const { calibrationDue, expandedUncertainty, certificate, coverageFactor, asFound } = command;
      const more = { ...(coverageFactor === undefined ? {} : { coverageFactor }), ...(asFound === undefined ? {} : { asFound }) };
      pen.write(gauge.stream, { type: 'gaugeCalibrated', calibrationDue, expandedUncertainty, certificate, ...more });
      carrySpreadOn(pen, gauge, expandedUncertainty);
      if (asFound !== undefined && !isWithinAllowed(asFound.error, asFound.allowedError)) openRecall(pen, gauge, 'calibration', asFound.error, asFound.allowedError);
      return;
    }
    case 'checkGauge': return checkGauge(pen, gauge, command);
    case 'setGaugeLine': return pen.write(gauge.stream, { type: 'gaugeLineChanged', line: command.line });
    case 'setGaugeUncertainty': return setGaugeUncertainty(pen, gauge, command.study);
    case 'holdRecall': return holdRecall(pen, gauge, command);
    case 'closeRecall': {
      requireReason(command.type, command.reason);
      const recall = openOne(gauge, command.recall);
      return pen.write(gauge.stream, { type: 'recallClosed', recall: recall.id, reason: command.reason, signature: pen.signature(command.type, 'recallClosedBy') });
    }
    case 'withdrawGauge':
      requireReason(command.type, command.reason);
      return pen.write(gauge.stream, { type: 'gaugeWithdrawn', reason: command.reason });
  }
}

function checkGauge(pen: Pen, gauge: GaugeState, { master, nominal, found, ...command }: Extract<GaugeCommand, { type: 'checkGauge' }>): void {
  const { card, withdrawn } = gauge;
  if (withdrawn !== null) refuse({ code: 'gaugeCannotCount', gauge: card.id, why: 'withdrawn', detail: withdrawn });
  const allowedError = command.allowedError ?? card.allowedError ?? refuse({ code: 'allowedErrorMissing', gauge: card.id });
  if (found < card.least || found > card.most) refuse({ code: 'valueImpossible', characteristic: card.name, value: found, why: 'outsideGauge', detail: `${card.least} … ${card.most} ${card.unit}` });
  if (!isWholeSteps(found, card.resolution)) refuse({ code: 'valueImpossible', characteristic: card.name, value: found, why: 'finerThanGauge', detail: `${card.resolution} ${card.unit}` });
  const error = errorFound(found, nominal);
  const passed = isWithinAllowed(error, allowedError);
  pen.write(gauge.stream, { type: 'gaugeChecked', master, nominal, found, allowedError, passed });
  if (!passed) openRecall(pen, gauge, 'check', error, allowedError);
}

/** Opens a recall over what was read since the last good check. While one stands that the gauge has not come back from, a second bad finding adds nothing to it. */
function openRecall(pen: Pen, gauge: GaugeState, found: Recall['found'], error: number, allowedError: number): void {
  if (gauge.outOfTolerance !== null) return;
  pen.write(gauge.stream, { type: 'recallOpened', recall: `${gauge.card.id}-R${gauge.recalls.length + 1}`, found, since: gauge.lastGood?.at ?? null, error, allowedError });
}

function openOne(gauge: GaugeState, id: string): Recall {
  const recall = gauge.recalls.find((each) => each.id === id) ?? refuse({ code: 'notFound', what: 'recall', id });
  return recall.closed === null ? recall : refuse({ code: 'recallIsClosed', recall: id });
}

function holdRecall(pen: Pen, gauge: GaugeState, command: Extract<GaugeCommand, { type: 'holdRecall' }>): void {
  requireReason(command.type, command.reason);
  const recall = openOne(gauge, command.recall);
  const signature = pen.signature(command.type, 'recallHeldBy');
  const held = [...new Set(command.subjects)].flatMap((stream) => {
    const subject = pen.subject(stream);
    const stands = standingHolds(subject).some(({ cause }) => cause.by === 'recall' && cause.recall === recall.id);
    if (subject.ended !== null || stands) return [];
    const hold = nextHold(subject);
    pen.write(stream, { type: 'held', hold, cause: { by: 'recall', gauge: gauge.card.id, recall: recall.id }, reason: command.reason });
    return [{ subject: stream, hold }];
  });
  if (held.length === 0) refuse({ code: 'nothingChanged', what: recall.id });
  pen.write(gauge.stream, { type: 'recallHeld', recall: recall.id, held, reason: command.reason, signature });
}
