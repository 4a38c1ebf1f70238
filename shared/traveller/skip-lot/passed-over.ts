import { diceFrom } from '../../sampling/draw/dice.ts';
import { shouldSkip } from '../../sampling/skip-lot/index.ts';
import type { Verdict } from '../gate/verdict.ts';
import type { Demand } from '../gate/demand.ts';
import type { GateRecord } from '../gate/work.ts';
import type { Pen } from '../pen.ts';
import type { AttributesRule } from '../plan/characteristic.ts';
import { skipStream, streamParts } from '../stream.ts';

/** What names one count. */
interface At { readonly product: string; readonly gate: string; readonly characteristic: string }

/**
 * The basis of a lot that is passed over, or null where it is inspected. Only an original inspection on normal is ever passed over; the dice
 * fall by the seed that the slip of the opened gate records.
 * @see Perry, Journal of Quality Technology 5 (1973) 123, SkSP-2
 */
export function passedOver(pen: Pen, at: At, { skipLot }: AttributesRule, standing: { readonly original: boolean; readonly allNormal: boolean; readonly seed: string }): Extract<Demand['basis'], { by: 'skipped' }> | null {
  const known = pen.state(skipStream(at.product, at.gate, at.characteristic));
  if (skipLot === undefined || !standing.original || !standing.allNormal || known?.kind !== 'skip') return null;
  const { state, lots } = known;
  if (state.clearance !== skipLot.clearance || state.oneIn !== skipLot.oneIn) return null;
  // The middle of the face rolled: its lower edge, 1/49 times 49, may fall short of 1 by a last digit.
  const chance = (diceFrom(`${standing.seed} / skip ${at.characteristic}`).roll(state.oneIn) - 0.5) / state.oneIn;
  return shouldSkip(state, chance) ? { by: 'skipped', clearance: state.clearance, oneIn: state.oneIn, lots } : null;
}

/** Counts a lot again whose verdict a correction has turned, with the product it was inspected as: it may be another by now. */
export function recountForSkipping(pen: Pen, lot: string, gate: GateRecord, { original, results }: Verdict): void {
  if (!original) return;
  for (const { characteristic, accepted } of results) {
    const product = productInspected(gate, characteristic);
    if (product === null) continue;
    const stream = skipStream(product, gate.id, characteristic);
    const known = pen.state(stream);
    const before = known?.kind === 'skip' ? known.counted.findLast((each) => each.lot === lot && !each.skipped) : undefined;
    if (before !== undefined && before.accepted !== accepted) pen.write(stream, { type: 'skipRecounted', lot, accepted });
  }
}

/** The product whose switching state gave the severity; null where none did: such a lot was not inspected, or knows no severity. */
function productInspected(gate: GateRecord, characteristic: string): string | null {
  const basis = gate.work.find(({ demand }) => demand.characteristic.id === characteristic)?.demand.basis;
  const switching = basis?.by === 'attributes' ? basis.classes[0]?.switching : null;
  return streamParts(switching ?? '')?.id.split('/')[0] ?? null;
}

/**
 * Counts a first-inspection verdict where the plan lets lots be passed over. A lot not accepted brings back the inspection of every lot, also
 * where it was opened under a version of the plan that passes none over.
 */
export function countForSkipping(pen: Pen, product: string, lot: string, gate: GateRecord, { original, results }: Verdict): void {
  if (!original) return;
  for (const { characteristic, accepted, detail } of results) {
    const sampling = gate.work.find(({ demand }) => demand.characteristic.id === characteristic)?.demand.characteristic.sampling;
    if (sampling?.rule !== 'attributes') continue;
    const stream = skipStream(product, gate.id, characteristic);
    const known = pen.state(stream);
    if (sampling.skipLot === undefined) {
      if (known?.kind === 'skip' && !accepted) pen.write(stream, { type: 'skipCounted', lot, accepted, skipped: false });
      continue;
    }
    const { clearance, oneIn } = sampling.skipLot;
    if (known?.kind !== 'skip' || known.state.clearance !== clearance || known.state.oneIn !== oneIn) pen.write(stream, { type: 'skipStarted', product, gate: gate.id, characteristic, clearance, oneIn });
    pen.write(stream, { type: 'skipCounted', lot, accepted, skipped: detail.by === 'skipped' });
  }
}
