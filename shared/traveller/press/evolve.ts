import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { PressSlip, PressState } from './slips.ts';

/** A press after one more slip. @throws BrokenThread on a thread that does not begin with its registration */
export function evolvePress(press: PressState | null, { body, stream, version, at, by }: Slip<PressSlip>): PressState {
  if (body.type === 'pressRegistered') return { kind: 'press', stream, version, card: body.press, running: null, afterSeq: null, count: 1 };
  if (press === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  switch (body.type) {
    case 'pressChanged': return { ...press, version, card: body.press, ...(body.count === undefined ? {} : { count: body.count, afterSeq: null }) };
    case 'pressSet': {
      const { lot, gate, characteristic, afterSeq } = body;
      return { ...press, version, afterSeq, running: lot === null || gate === null || characteristic === null ? null : { lot, gate, characteristic, since: at, by } };
    }
  }
}
