import { isPassed } from '../gate/work.ts';
import { isDemo } from '../lot/decide.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId } from '../pen.ts';
import { planInForce, routeOf } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import { requireFree, requirePowderFree } from '../upstream.ts';
import type { Batch, PowderFactors } from './batch.ts';
import { blendBatches } from './blend-batches.ts';
import type { BatchOwnCommand, OpenBatch } from './commands.ts';
import { readFactors } from './read-factors.ts';

/** Decides the commands that only a powder batch knows. */
export function decideBatch(pen: Pen, command: BatchOwnCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'openBatch': return openBatch(pen, command);
    case 'blendBatches': return blendBatches(pen, command);
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
  requirePowderFree(pen, batch);
  if (batch.released !== null) refuse({ code: 'alreadyReleased', certificate: batch.id });
  const missing = batch.gates.filter((gate) => !isPassed(gate)).map(({ name }) => name);
  if (missing.length > 0) refuse({ code: 'notAllGatesPassed', missing });
  pen.write(batch.stream, { type: 'batchReleased', factors: factorsOf(pen, batch), signature: pen.signature('releaseBatch', 'powderReleasedBy') });
}

/** What pressing needs of a batch, from the lab's readings as they stand; a missing or impossible factor is refused. */
export function factorsOf(pen: Pen, batch: Batch): PowderFactors {
  const read = readFactors(batch, (id) => pen.batch(id));
  return 'missing' in read ? refuse({ code: 'factorMissing', ...read.missing }) : read.factors;
}
