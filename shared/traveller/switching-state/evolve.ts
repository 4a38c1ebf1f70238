import { lastMove, startSwitching, switchingAfter } from '../../sampling/switching/index.ts';
import type { SwitchingEvent, Move } from '../../sampling/switching/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { SwitchingSlip } from './slips.ts';
import type { Switching } from './switching.ts';

/** Folds one slip into the switching state. */
export function evolveSwitching(switching: Switching | null, slip: Slip<SwitchingSlip>): Switching {
  const { body, stream, version, at } = slip;
  if (switching === null) {
    if (body.type !== 'switchingStarted') throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
    return { kind: 'switching', stream, version, product: body.product, gate: body.gate, characteristic: body.characteristic, class: body.class, rule: body.rule, aqlPercent: body.aqlPercent, begunWith: { rule: body.rule, aqlPercent: body.aqlPercent }, events: [], state: startSwitching(body.rule, body.aqlPercent), lastMove: null };
  }
  const next = { ...switching, version };
  const take = (events: readonly SwitchingEvent[], move: Move | null): Switching => ({
    ...next, events: [...switching.events, ...events], state: events.reduce(switchingAfter, switching.state), lastMove: move === null ? switching.lastMove : { ...move, at },
  });
  switch (body.type) {
    case 'switchingStarted': throw new BrokenThread(`${stream} was started twice`);
    case 'switchingRuleSet': return { ...take([{ type: 'ruleSet', rule: body.rule, aqlPercent: body.aqlPercent }], null), rule: body.rule, aqlPercent: body.aqlPercent };
    case 'lotCounted': return body.counts ? take([body.event], body.moved) : next;
    case 'lotRecounted': {
      const after = recounted(switching, body.event);
      // Counted anew, a stream may never have moved at all: then no earlier move is left standing.
      const kept = after.state.enteredBy === null ? null : switching.lastMove;
      return { ...next, ...after, lastMove: body.moved === null ? kept : { ...body.moved, at } };
    }
    case 'switchingSet':
      return take([
        ...(body.steady === null ? [] : [{ type: 'steadySet' as const, steady: body.steady }]),
        ...(body.reducedAllowed === null ? [] : [{ type: 'reducedAllowedSet' as const, allowed: body.reducedAllowed }]),
      ], body.moved);
    case 'inspectionResumed': return take([{ type: 'resumed' }], lastMove(switching.state, switchingAfter(switching.state, { type: 'resumed' })));
  }
}

/** What counted and what follows from it, with this lot's verdict in the place of its earlier one. */
export function recounted(switching: Switching, judged: Extract<SwitchingEvent, { type: 'lotJudged' }>): Pick<Switching, 'events' | 'state'> {
  const events = switching.events.map((event) => (event.type === 'lotJudged' && event.original && event.lot === judged.lot ? judged : event));
  return { events, state: events.reduce(switchingAfter, startSwitching(switching.begunWith.rule, switching.begunWith.aqlPercent)) };
}
