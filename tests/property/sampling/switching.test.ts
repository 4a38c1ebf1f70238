import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lastMove, startSwitching, switchingAfter } from '../../../shared/sampling/switching/index.ts';
import type { LotJudged, SwitchingEvent } from '../../../shared/sampling/switching/index.ts';

const aLot: fc.Arbitrary<LotJudged> = fc.record({
  type: fc.constant('lotJudged' as const),
  lot: fc.string({ minLength: 1, maxLength: 4 }),
  original: fc.boolean(),
  accepted: fc.oneof({ weight: 6, arbitrary: fc.constant(true) }, { weight: 1, arbitrary: fc.constant(false) }),
  plan: fc.oneof(
    fc.record({ kind: fc.constant('single' as const), ac: fc.nat({ max: 5 }), tighterAccepted: fc.boolean() }),
    fc.constant({ kind: 'variables' as const }),
  ),
  sampleSize: fc.constantFrom(5, 50, 80),
  found: fc.nat({ max: 3 }),
});

const anEvent: fc.Arbitrary<SwitchingEvent> = fc.oneof(
  { weight: 12, arbitrary: aLot },
  { weight: 1, arbitrary: fc.record({ type: fc.constant('steadySet' as const), steady: fc.boolean() }) },
  { weight: 1, arbitrary: fc.record({ type: fc.constant('reducedAllowedSet' as const), allowed: fc.boolean() }) },
  { weight: 1, arbitrary: fc.constant({ type: 'resumed' as const }) },
);

const aStart = fc.constantFrom('ISO 2859-1' as const, 'MIL-STD-105E' as const).map((rule) => startSwitching(rule, 1));
const ALLOWED = new Set(['normal>tightened', 'normal>reduced', 'tightened>normal', 'tightened>discontinued', 'reduced>normal', 'discontinued>tightened']);

it('a lot that came back never changes anything', () => {
  fc.assert(fc.property(aStart, fc.array(anEvent, { maxLength: 60, size: 'max' }), aLot, (start, events, lot) => {
    const state = events.reduce(switchingAfter, start);
    expect(switchingAfter(state, { ...lot, original: false })).toEqual(state);
  }));
});

it('a stream is where the sequence without its resubmitted lots would be', () => {
  fc.assert(fc.property(aStart, fc.array(anEvent, { maxLength: 80, size: 'max' }), (start, events) => {
    const originals = events.filter((event) => event.type !== 'lotJudged' || event.original);
    expect(events.reduce(switchingAfter, start)).toEqual(originals.reduce(switchingAfter, start));
  }));
});

it('every move is one of the six the rules know, and names its reason and its lots', () => {
  const seen = new Set<string>();
  fc.assert(fc.property(aStart, fc.array(anEvent, { maxLength: 150, size: 'max' }), (start, events) => {
    let state = start;
    for (const event of events) {
      const after = switchingAfter(state, event);
      const move = lastMove(state, after);
      expect(move === null).toBe(state.severity === after.severity);
      if (move !== null) {
        expect(ALLOWED).toContain(`${move.from}>${move.to}`);
        expect([move.from, move.to]).toEqual([state.severity, after.severity]);
        if (event.type === 'lotJudged') expect(move.lots.at(-1)).toBe(event.lot);
        seen.add(move.why);
      }
      state = after;
    }
  }), { numRuns: 400, seed: 20 });
  expect(seen).toContain('twoOfFiveNotAccepted');
  expect(seen).toContain('fiveAcceptedOnTightened');
});

it('tightened begins exactly when a second lot in five or fewer in a row is not accepted', () => {
  fc.assert(fc.property(fc.array(fc.boolean(), { maxLength: 40, size: 'max' }), (verdicts) => {
    let state = startSwitching('ISO 2859-1');
    const since: boolean[] = []; // counted from the verdicts, not read back from the state
    for (const accepted of verdicts) {
      const plan = { kind: 'single', ac: 1, tighterAccepted: accepted } as const;
      since.push(accepted);
      state = switchingAfter(state, { type: 'lotJudged', lot: 'L', original: true, accepted, plan, sampleSize: 8, found: accepted ? 0 : 2 });
      const due = since.slice(-5).filter((good) => !good).length >= 2;
      expect(state.severity).toBe(due ? 'tightened' : 'normal');
      if (due) return;
    }
  }));
});
