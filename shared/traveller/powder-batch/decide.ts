import { isPassed, verdictOf } from '../gate/work.ts';
import { isDemo } from '../lot/decide.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId } from '../pen.ts';
import type { Measured } from '../plan/characteristic.ts';
import { planInForce, routeOf } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import { requireFree } from '../upstream.ts';
import type { Batch, PowderFactors } from './batch.ts';
import type { BatchOwnCommand, OpenBatch } from './commands.ts';

/** Decides the commands that only a powder batch knows. */
export function decideBatch(pen: Pen, command: BatchOwnCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'openBatch': return openBatch(pen, command);
    case 'releaseBatch': return releaseBatch(pen, command.batch);
  }
}

function openBatch(pen: Pen, command: OpenBatch): void {
  requireFitId('batch', command.batch);
  const stream = streamName('batch', command.batch);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'batch', id: command.batch });
  if (!Number.isInteger(command.barrels) || command.barrels < 1) refuse({ code: 'notEnoughPieces', wanted: command.barrels, remaining: 0 });
  const { card } = pen.find(streamName('grade', command.grade), 'grade', 'grade');
  const { plan, planVersion } = planInForce(pen, card.powderPlan, 'batch');
  pen.write(stream, { type: 'batchOpened', batch: command.batch, grade: { id: card.id, name: card.name }, plan: card.powderPlan, planVersion, route: routeOf(plan), barrels: command.barrels, kgPerBarrel: command.kgPerBarrel, rawLots: command.rawLots, demo: isDemo(pen) });
}

function releaseBatch(pen: Pen, id: string): void {
  const batch = pen.batch(id);
  requireFree(batch);
  if (batch.released !== null) refuse({ code: 'alreadyReleased', certificate: batch.id });
  const missing = batch.gates.filter((gate) => !isPassed(gate)).map(({ name }) => name);
  if (missing.length > 0) refuse({ code: 'notAllGatesPassed', missing });
  pen.write(batch.stream, { type: 'batchReleased', factors: factorsOf(batch), signature: pen.signature('releaseBatch', 'powderReleasedBy') });
}

/** Beyond these no press target can be worked out: shrinkage and binder in percent, density in g/cm³. */
const MOST: Readonly<Record<NonNullable<Measured['factor']>, number>> = { linearShrinkagePercent: 50, binderPercent: 20, sinteredDensityGPerCm3: 25 };

/** The means that pressing needs, from the lab's readings as they stand, corrections included; a missing or impossible one is refused. */
export function factorsOf(batch: Batch): PowderFactors {
  const mean = (factor: NonNullable<Measured['factor']>): number => {
    for (const gate of batch.gates) {
      const work = gate.work.find(({ demand }) => demand.characteristic.kind === 'measured' && demand.characteristic.factor === factor);
      const detail = verdictOf(gate)?.verdict.results.find(({ characteristic }) => characteristic === work?.demand.characteristic.id)?.detail;
      if (detail !== undefined && 'summary' in detail && detail.summary.mean > 0 && detail.summary.mean < MOST[factor]) return detail.summary.mean;
    }
    return refuse({ code: 'factorMissing', batch: batch.id, factor });
  };
  return { linearShrinkagePercent: mean('linearShrinkagePercent'), sinteredDensityGPerCm3: mean('sinteredDensityGPerCm3'), binderPercent: mean('binderPercent') };
}
