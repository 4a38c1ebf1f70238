import { skipAfter, startSkip } from '../../sampling/skip-lot/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { Skipping, SkipLotCounted, SkipSlip } from './slips.ts';

/** Folds one slip into the count. */
export function evolveSkip(skipping: Skipping | null, { body, stream, version }: Slip<SkipSlip>): Skipping {
  if (body.type === 'skipStarted') {
    const { product, gate, characteristic, clearance, oneIn } = body;
    return { kind: 'skip', stream, version, product, gate, characteristic, state: startSkip({ clearance, oneIn }), counted: [], lots: [], endedBy: skipping?.endedBy ?? null };
  }
  if (skipping === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  switch (body.type) {
    case 'skipCounted': return { ...counting(skipping, { lot: body.lot, accepted: body.accepted, skipped: body.skipped }), version };
    case 'skipRecounted': {
      const counted = skipping.counted.map((each) => (each.lot === body.lot ? { ...each, accepted: body.accepted } : each));
      return { ...counted.reduce(counting, { ...skipping, state: startSkip(skipping.state), counted: [], lots: [], endedBy: null }), version };
    }
  }
}

function counting(before: Skipping, each: SkipLotCounted): Skipping {
  const { lot, accepted, skipped } = each;
  const state = skipAfter(before.state, { accepted, original: true, skipped });
  const next = { ...before, state, counted: [...before.counted, each] };
  if (skipped) return next;
  return accepted ? { ...next, lots: [...before.lots, lot].slice(-state.clearance) } : { ...next, lots: [], endedBy: lot };
}
