import { skipAfter, startSkip } from '../../sampling/skip-lot/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { Skipping, SkipSlip } from './slips.ts';

/** Folds one slip into the count. */
export function evolveSkip(skipping: Skipping | null, { body, stream, version }: Slip<SkipSlip>): Skipping {
  switch (body.type) {
    case 'skipStarted':
      return { kind: 'skip', stream, version, product: body.product, gate: body.gate, characteristic: body.characteristic, state: startSkip({ clearance: body.clearance, oneIn: body.oneIn }), lots: [], endedBy: skipping?.endedBy ?? null };
    case 'skipCounted': {
      if (skipping === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
      const state = skipAfter(skipping.state, { accepted: body.accepted, original: true, skipped: body.skipped });
      const lots = body.skipped ? skipping.lots : body.accepted ? [...skipping.lots, body.lot].slice(-state.clearance) : [];
      return { ...skipping, version, state, lots, endedBy: body.accepted || body.skipped ? skipping.endedBy : body.lot };
    }
  }
}
