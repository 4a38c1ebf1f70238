import { findingNeedsPiece, nextGate, possibleDispositions, remainingPieces, samplingStanding, standingHolds } from '../../../shared/traveller/index.ts';
import type { Command, Disposition, Lot, Subject } from '../../../shared/traveller/index.ts';
import { inputsGiving, plannedLayersUm } from '../../../demo-data/inputs-giving.ts';
import type { LittlePlant } from './little-plant.ts';

/** Three numbers of the dice decide which move is made and with what. */
export interface Throw { readonly pick: number; readonly a: number; readonly b: number }

/** Commands that make sense (and some that do not) where the plant stands; the property tests choose among them. */
export function wiseMoves(plant: LittlePlant, lots: readonly string[], { a, b }: Throw): Command[] {
  const moves: Command[] = [];
  const stream = lots.map((id) => `lot:${id}`)[a % lots.length] ?? '';
  const id = stream.slice(4);
  const state = plant.state(stream);
  if (state?.kind !== 'lot') return [{ type: 'openLot', lot: id, product: 'CNMG-D1', batch: 'P1', quantity: 1 + (b % 140), trayCapacity: 10 }];
  moves.push(...subjectMoves(state, a, b));
  moves.push(
    { type: 'scrapPieces', lot: id, pieces: 1 + (b % 9), reason: 'dropped' }, { type: 'destroyPieces', lot: id, pieces: 1 + (b % 3), reason: 'section' },
    { type: 'splitLot', lot: id, into: `${id}S${state.splitInto.length}`, pieces: 1 + (b % 40), reason: 'half goes on' }, { type: 'packBox', lot: id, pieces: 1 + (b % 11) }, { type: 'releaseLot', lot: id },
    { type: 'withdrawRelease', lot: id, reason: 'second thoughts' }, { type: 'recordSort', lot: id, gate: nextGate(state)?.id ?? '', looked: remainingPieces(state.balance), removed: [{ code: 'CH', pieces: 1 + (b % 5) }] },
    ...boxMoves(state, b),
  );
  const { charges } = state;
  for (const { charge, current } of charges) {
    const subject = plant.state(charge);
    if (current && subject !== null && 'gates' in subject) moves.push(...subjectMoves(subject, a, b));
  }
  const gate = nextGate(state);
  if (gate?.workedOn === 'furnace' || gate?.workedOn === 'coating') moves.push({ type: 'openCharge', charge: `X${plant.slips.length}`, kind: gate.workedOn, specification: gate.workedOn === 'furnace' ? 'DEMO-F8' : 'DEMO-CVD', programme: 'P', equipment: 'E', members: [{ lot: id, places: ['Top'] }] });
  return moves;
}

function boxMoves(lot: Lot, b: number): Command[] {
  const box = lot.boxes[b % Math.max(1, lot.boxes.length)];
  if (box === undefined) return [];
  const at = { lot: lot.id, box: box.serial };
  return [
    { type: 'printLabel', ...at, reason: 'smeared' }, { type: 'readLabel', ...at, payload: box.payload ?? '' }, { type: 'voidBox', ...at, reason: 'torn' },
    { type: 'shipBox', ...at, shipment: 'S1', order: 'O1', consignee: 'Invented shop' },
  ];
}

function subjectMoves(subject: Subject, a: number, b: number): Command[] {
  const moves: Command[] = [{ type: 'hold', subject: subject.stream, reason: 'a doubt' }, { type: 'addNote', subject: subject.stream, text: 'seen' }];
  for (const hold of standingHolds(subject)) {
    const kinds = possibleDispositions(subject, hold);
    const kind = kinds[b % kinds.length];
    if (kind !== undefined) moves.push(...Array.from({ length: 4 }, (): Command => ({ type: 'dispose', subject: subject.stream, hold: hold.id, reason: 'decided', disposition: dispositionOf(kind) })));
  }
  for (const gate of subject.gates) {
    const worked = gate.work[a % Math.max(1, gate.work.length)];
    const given = gate.status === 'open' ? undefined : worked?.findings[b % Math.max(1, worked.findings.length)];
    if (worked !== undefined && given !== undefined) moves.push({ type: 'withdrawFinding', subject: subject.stream, gate: gate.id, characteristic: worked.demand.characteristic.id, finding: given.slip, reason: 'dust' });
    moves.push({ type: 'openGate', subject: subject.stream, gate: gate.id });
    if (gate.status !== 'open') continue;
    for (const work of gate.work) {
      const { demand, readings, looks, weights, findings } = work;
      const { characteristic, basis, n } = demand;
      const here = { subject: subject.stream, gate: gate.id, characteristic: characteristic.id };
      if (characteristic.kind === 'counted' && basis.by === 'attributes') {
        const kind = characteristic.kinds[a % characteristic.kinds.length];
        const standing = samplingStanding(work);
        const [from, to] = [standing?.from ?? 1, standing?.to ?? n];
        if (kind !== undefined) moves.push({ ...here, type: 'recordFinding', code: kind.code, pieces: 1, ...(findingNeedsPiece(work, kind.class) || b % 2 === 0 ? { ordinals: [from + (b % Math.max(1, to - from + 1))] } : {}) });
        moves.push({ ...here, type: 'completeSample', looked: to });
        const finding = findings[b % Math.max(1, findings.length)];
        if (finding !== undefined) moves.push(...Array.from({ length: 3 }, (): Command => ({ ...here, type: 'withdrawFinding', finding: finding.slip, reason: 'dust' })));
      } else if (characteristic.kind === 'counted') {
        moves.push({ ...here, type: 'takeLook', look: looks.length + 1, found: b % 7 === 0 ? 1 : 0, ...(b % 7 === 0 ? { code: characteristic.kinds[0]?.code ?? '' } : {}) });
      } else if (basis.by === 'everyPiece' && characteristic.kind === 'measured') {
        const from = (weights?.running.n ?? 0) + 1;
        const size = Math.min(n - from + 1, 1 + (b % 60));
        if (size > 0) moves.push({ ...here, type: 'takeWeights', fromPiece: from, values: Array.from({ length: size }, (_, at) => (characteristic.target ?? 9) * (at === 0 && b % 5 === 0 ? 1.02 : 1)), gauge: 'BAL-21' });
      } else {
        const ordinal = readings.length < n ? Array.from({ length: n }, (_, at) => at + 1).find((each) => !readings.some((reading) => reading.ordinal === each)) ?? 1 : 1 + (b % n);
        const off = b % 11 === 0;
        if (characteristic.kind === 'confirmed') moves.push({ ...here, type: 'takeReading', ordinal, value: !off, despite: b % 4 === 0 ? '' : 'read on the strip' });
        else if (characteristic.kind === 'graded') moves.push({ ...here, type: 'takeReading', ordinal, value: (off ? characteristic.scale.at(-1) : characteristic.scale[0]) ?? '' });
        else if (characteristic.kind === 'measured' && characteristic.entry.how !== 'direct') {
          const layers = plannedLayersUm(gate.work, characteristic);
          const inputs = inputsGiving(characteristic.entry, (off ? 2 : 1) * (characteristic.target ?? 1), { layersUm: layers === null || !off ? layers : layers.map((each) => 2 * each) });
          if (inputs !== null) moves.push({ ...here, type: 'takeReading', ordinal, value: null, inputs, sure: true, ...(characteristic.gaugeKind === null ? {} : { gauge: gaugeFor(characteristic.gaugeKind) }) });
        }
        else if (characteristic.kind === 'measured') moves.push({ ...here, type: 'takeReading', ordinal, value: off ? (characteristic.upper ?? 1) : (characteristic.target ?? 1), sure: true, ...(characteristic.gaugeKind === null ? {} : { gauge: gaugeFor(characteristic.gaugeKind) }) });
        if (readings.length > 0) moves.push({ ...here, type: 'correctReading', ordinal: readings[0]?.ordinal ?? 1, value: characteristic.kind === 'measured' ? characteristic.upper ?? 0 : true, reason: 'misread', sure: true });
      }
    }
  }
  return moves;
}

function gaugeFor(kind: string): string {
  return ({ micrometer: 'MIC-11', 'edge microscope': 'OPT-31', 'density balance': 'DEN-41', 'coercivity meter': 'COE-42', 'hardness tester': 'HAR-43', 'crater microscope': 'CRA-44' } as Record<string, string>)[kind] ?? 'MIC-11';
}

function dispositionOf(kind: Disposition['kind']): Disposition {
  switch (kind) {
    case 'rework': return { kind, instruction: 'again' };
    case 'concession': return { kind, statement: 'as it is' };
    case 'regrade': return { kind, toProduct: 'CNMG-D1' };
    case 'return': return { kind, to: 'maker' };
    default: return { kind };
  }
}
