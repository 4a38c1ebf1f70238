import { boxCodeFault, buildBoxCode, readBoxCode } from '../box-code/index.ts';
import { verdictOfAll } from '../charge/stand-for-members.ts';
import { isPassed } from '../gate/work.ts';
import { remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId, requireReason } from '../pen.ts';
import { planInForce, routeOf } from '../plan/in-force.ts';
import { factorsOf } from '../powder-batch/decide.ts';
import { concessionsInForce, takeConcessionAlong, takePartsConcessions } from '../powder-batch/parts-concessions.ts';
import { powderForPieces, remainingKg } from '../powder-batch/powder-balance.ts';
import { requirePressLimits } from '../gate/press-limits.ts';
import { streamName } from '../stream.ts';
import { requireFree, requirePowderFree } from '../upstream.ts';
import type { LotOwnCommand, OpenLot, PackBox, PrintLabel, ReadLabel, RecordSort, ShipBox, SplitLot, VoidBox } from './commands.ts';
import type { Box, Lot } from './lot.ts';
import { moveLotToPlan } from './move-to-plan.ts';
import { pressTargetOf } from './press-target.ts';
import { lotProduct } from './regrade.ts';
import { releaseLot, requireReleased, withdrawRelease } from './release.ts';

/** Decides the commands that only an insert lot knows. */
export function decideLot(pen: Pen, command: LotOwnCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'openLot': return openLot(pen, command);
    case 'recordSort': return recordSort(pen, command);
    case 'destroyPieces': return takeOut(pen, command.lot, command.pieces, command.reason, 'piecesDestroyed');
    case 'scrapPieces': return takeOut(pen, command.lot, command.pieces, command.reason, 'piecesScrapped');
    case 'splitLot': return splitLot(pen, command);
    case 'releaseLot': return releaseLot(pen, command.lot);
    case 'withdrawRelease': return withdrawRelease(pen, command.lot, command.reason);
    case 'packBox': return packBox(pen, command);
    case 'printLabel': return printLabel(pen, command);
    case 'readLabel': return readLabel(pen, command);
    case 'voidBox': return voidBox(pen, command);
    case 'shipBox': return shipBox(pen, command);
    case 'moveLotToPlan': return moveLotToPlan(pen, command);
  }
}

function openLot(pen: Pen, command: OpenLot): void {
  requireFitId('lot', command.lot);
  const stream = streamName('lot', command.lot);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'lot', id: command.lot });
  if (!Number.isInteger(command.quantity) || command.quantity < 1) refuse({ code: 'notEnoughPieces', wanted: command.quantity, remaining: 0 });
  const { card } = pen.find(streamName('product', command.product), 'product', 'product');
  const { plan, planVersion } = planInForce(pen, card.plan, 'lot');
  const batch = pen.batch(command.batch);
  requireFree(batch);
  requirePowderFree(pen, batch);
  const verdict = verdictOfAll(batch);
  // A released batch whose verdict was corrected may be under test again.
  if (batch.released === null || verdict === null || !verdict.accepted) return refuse({ code: 'batchNotReleased', batch: batch.id });
  if (batch.grade.id !== card.grade) refuse({ code: 'gradeDiffers', lot: command.lot, has: batch.grade.id, wanted: card.grade });
  const press = pressTargetOf(pen, card.id, factorsOf(pen, batch), batch);
  requirePressLimits(plan, press);
  const [kg, left] = [powderForPieces(command.quantity, press.weightG), remainingKg(batch)];
  if (kg > left) refuse({ code: 'notEnoughPowder', batch: batch.id, wantedKg: kg, remainingKg: left });
  pen.write(stream, {
    type: 'lotOpened', lot: command.lot, product: lotProduct(card), plan: card.plan, planVersion, route: routeOf(plan), batch: batch.id, quantity: command.quantity,
    trayCapacity: command.trayCapacity, order: command.order ?? null, splitFrom: null, demo: isDemo(pen), press,
  });
  pen.write(batch.stream, { type: 'batchUsed', lot: command.lot, kg });
  for (const gate of plan.gates) {
    if (gate.workedOn !== 'batch') continue;
    pen.write(stream, { type: 'gateVerdictInherited', gate: gate.id, from: batch.stream, verdict, revised: false });
    for (const { statement, signature } of concessionsInForce(batch)) takeConcessionAlong(pen, stream, { gate: gate.id, from: batch.stream, statement, signature });
  }
  takePartsConcessions(pen, pen.lot(command.lot));
}

/** True when the plant is an invented one: everything printed says so. */
export function isDemo(pen: Pen): boolean {
  const plant = pen.state('plant:plant');
  return plant?.kind === 'plant' && plant.card.demo;
}

function recordSort(pen: Pen, command: RecordSort): void {
  const lot = pen.lot(command.lot);
  requireFree(lot);
  const gate = lot.gates.find(({ id }) => id === command.gate) ?? refuse({ code: 'notFound', what: 'gate', id: command.gate });
  if (gate.status !== 'sorting') refuse({ code: 'sortNotAskedFor', gate: gate.name, status: gate.status });
  const remaining = remainingPieces(lot.balance);
  const removed = command.removed.reduce((sum, { pieces }) => sum + pieces, 0);
  if (command.looked !== remaining || removed > command.looked || command.removed.some(({ pieces }) => !Number.isInteger(pieces) || pieces < 1)) refuse({ code: 'sortNotWhole', looked: command.looked, remaining });
  pen.write(lot.stream, { type: 'lotSorted', gate: gate.id, looked: command.looked, removed: command.removed });
}

function takeOut(pen: Pen, id: string, pieces: number, reason: string, type: 'piecesDestroyed' | 'piecesScrapped'): void {
  const lot = pen.lot(id);
  requireReason(type === 'piecesScrapped' ? 'scrapPieces' : 'destroyPieces', reason);
  if (lot.ended !== null) refuse({ code: 'subjectHasEnded', subject: lot.id, how: lot.ended.how });
  // The open gate drew its sample from the pieces there were, and may weigh each of them.
  const open = lot.gates.find(({ status }) => status === 'open');
  if (open !== undefined) refuse({ code: 'gateIsOpen', gate: open.name });
  requireLoose(lot, pieces);
  pen.write(lot.stream, { type, pieces, gate: null, reason });
}

function requireLoose(lot: Lot, pieces: number): void {
  const remaining = remainingPieces(lot.balance);
  if (!Number.isInteger(pieces) || pieces < 1 || pieces > remaining) refuse({ code: 'notEnoughPieces', wanted: pieces, remaining });
}

/** A split is allowed between gates only: the part takes every verdict given so far and goes its own way. */
function splitLot(pen: Pen, { lot: id, into, pieces, reason }: SplitLot): void {
  const lot = pen.lot(id);
  requireReason('splitLot', reason);
  requireFitId('lot', into);
  requireFree(lot);
  const open = lot.gates.find(({ status }) => status === 'open' || status === 'sorting');
  if (open !== undefined) refuse({ code: 'gateIsOpen', gate: open.name });
  // A part would come to a gate that awaits re-inspection as if for the first time, and would count for switching.
  const again = lot.gates.find(({ status, original }) => status === 'waiting' && !original);
  if (again !== undefined) refuse({ code: 'gateIsOpen', gate: again.name });
  if (lot.release !== null && lot.release.withdrawn === null) refuse({ code: 'alreadyReleased', certificate: lot.release.certificate });
  requireLoose(lot, pieces);
  const stream = streamName('lot', into);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'lot', id: into });
  pen.write(lot.stream, { type: 'piecesSplitOff', into, pieces, reason });
  pen.write(stream, {
    type: 'lotOpened', lot: into, product: lot.product, plan: lot.plan, planVersion: lot.planVersion, route: lot.gates.map(({ id: gate, name, workedOn, bench }) => ({ id: gate, name, workedOn, bench })),
    batch: lot.batch, quantity: pieces, trayCapacity: lot.trayCapacity, order: lot.order, press: lot.press, splitFrom: lot.id, demo: lot.demo,
  });
  for (const { charge, gate, places, current, cells, again, member } of lot.charges) if (current) pen.write(stream, { type: 'chargeJoined', charge, gate, places, ...(cells === null ? {} : { cells }), ...(again === null ? {} : { again }), member });
  for (const gate of lot.gates) {
    const given = gate.verdicts.at(-1);
    if (given === undefined || !isPassed(gate)) continue;
    pen.write(stream, { type: 'gateVerdictInherited', gate: gate.id, from: given.from ?? lot.stream, verdict: { ...given.verdict, accepted: true }, revised: false });
  }
  for (const { gate, statement, signature, from } of concessionsInForce(lot)) if (gate !== null) takeConcessionAlong(pen, stream, { gate, from: from ?? lot.stream, statement, signature });
  pen.write(streamName('batch', lot.batch), { type: 'batchUsed', lot: into });
}

function boxOf(lot: Lot, serial: string): Box {
  const box = lot.boxes.find((each) => each.serial === serial) ?? refuse({ code: 'notFound', what: 'box', id: serial });
  if (box.voided !== null) refuse({ code: 'boxIsGone', box: serial, why: 'voided' });
  if (box.shipped !== null) refuse({ code: 'boxIsGone', box: serial, why: 'shipped' });
  return box;
}

/** Characters that a box's serial may have in the code (shared/traveller/box-code). */
const LONGEST_SERIAL = 20;

function packBox(pen: Pen, { lot: id, pieces }: PackBox): void {
  const lot = requireReleased(pen, id);
  const { piecesPerBox } = lot.product;
  if (pieces > piecesPerBox) refuse({ code: 'boxTooFull', pieces, most: piecesPerBox });
  requireLoose(lot, pieces);
  // Voided boxes keep their place in the count, so no serial is ever given twice.
  const serial = `${lot.id}-${String(lot.boxes.length + 1).padStart(3, '0')}`;
  if (serial.length > LONGEST_SERIAL) refuse({ code: 'identifierUnfit', field: 'box', value: serial, rule: 'serial', detail: String(LONGEST_SERIAL) });
  pen.write(lot.stream, { type: 'boxPacked', box: serial, pieces });
}

/** The code that stands on a box's label, or the refusal that says what cannot stand in it. */
function boxPayload(lot: Lot, box: Box, country: string): string {
  const fields = { item: lot.product.itemCode, lot: lot.id, serial: box.serial, quantity: box.pieces, packedOn: box.packedAt.slice(0, 10), country };
  const fault = boxCodeFault(fields);
  if (fault !== null) return refuse({ code: 'identifierUnfit', field: 'label', value: box.serial, rule: 'labelCode', detail: 'identifier' in fault ? fault.identifier : 'value' in fault ? fault.value : fault.code });
  return buildBoxCode(fields);
}

function printLabel(pen: Pen, { lot: id, box: serial, reason }: PrintLabel): void {
  const lot = requireReleased(pen, id);
  const box = boxOf(lot, serial);
  const copy = box.copies + 1;
  if (copy > 1 && (reason ?? '').trim() === '') refuse({ code: 'reasonMissing', command: 'printLabel' });
  const plant = pen.find('plant:plant', 'plant', 'plant');
  pen.write(lot.stream, { type: 'labelPrinted', box: serial, copy, reason: copy > 1 ? reason ?? null : null, payload: boxPayload(lot, box, plant.card.country) });
}

function readLabel(pen: Pen, { lot: id, box: serial, payload }: ReadLabel): void {
  const lot = requireReleased(pen, id);
  const box = boxOf(lot, serial);
  if (box.payload === null) return refuse({ code: 'labelNotPrinted', box: serial });
  if (payload !== box.payload) {
    const read = readBoxCode(payload);
    const wanted = readBoxCode(box.payload);
    if (!read.ok || !wanted.ok) return refuse({ code: 'labelDiffers', box: serial, field: 'code', read: payload, wanted: serial });
    const differs = (['serial', 'lot', 'item', 'quantity', 'packedOn', 'country'] as const).find((field) => read.fields[field] !== wanted.fields[field]) ?? 'serial';
    refuse({ code: 'labelDiffers', box: serial, field: differs, read: String(read.fields[differs]), wanted: String(wanted.fields[differs]) });
  }
  pen.write(lot.stream, { type: 'labelRead', box: serial, payload });
}

function voidBox(pen: Pen, { lot: id, box: serial, reason }: VoidBox): void {
  const lot = pen.lot(id);
  requireReason('voidBox', reason);
  boxOf(lot, serial);
  pen.write(lot.stream, { type: 'boxVoided', box: serial, reason });
}

function shipBox(pen: Pen, { lot: id, box: serial, shipment, order, consignee }: ShipBox): void {
  const lot = requireReleased(pen, id);
  const box = boxOf(lot, serial);
  if (box.copies === 0) refuse({ code: 'labelNotPrinted', box: serial });
  if (!box.readBack) refuse({ code: 'labelNotReadBack', box: serial });
  for (const [field, value] of Object.entries({ shipment, order, consignee })) if (value.trim() === '') refuse({ code: 'identifierUnfit', field, value, rule: 'notEmpty', detail: '' });
  pen.write(lot.stream, { type: 'boxShipped', box: serial, shipment, order, consignee });
}

