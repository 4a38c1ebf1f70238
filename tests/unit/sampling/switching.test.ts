import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { lastMove, startSwitching, switchingAfter } from '../../../shared/sampling/switching/index.ts';
import type { LotJudged, SwitchingEvent, SwitchingState } from '../../../shared/sampling/switching/index.ts';

// Rules: ISO 2859-1:1999 9.3, 9.4 (memory); MIL-STD-105E 4.7, 4.8, 4.10.1.4 (seen). "decided here" = the texts are silent.

describe('switching of a stream of lots', () => {
  it('starts on normal with nothing assumed about steadiness or wish', () => {
    expect(startSwitching('ISO 2859-1')).toMatchObject({ severity: 'normal', score: 0, steady: false, reducedAllowed: false, enteredBy: null });
  });

  it('moves to reduced when the missing word is given after the score was earned (9.3.3.1)', () => {
    const earned = lots(startSwitching('ISO 2859-1'), 'AAAAAAAAAA');
    expect([earned.severity, earned.score]).toEqual(['normal', 30]);
    const steady = switchingAfter(earned, { type: 'steadySet', steady: true });
    expect(steady.severity).toBe('normal');
    const reduced = switchingAfter(steady, { type: 'reducedAllowedSet', allowed: true });
    expect(lastMove(steady, reduced)).toMatchObject({ from: 'normal', to: 'reduced', why: 'scoreReached30' });
    expect(lastMove(steady, reduced)?.lots).toHaveLength(10);
  });

  it.each<[SwitchingEvent, SwitchingEvent]>([
    [{ type: 'steadySet', steady: true }, { type: 'reducedAllowedSet', allowed: true }],
    [{ type: 'reducedAllowedSet', allowed: true }, { type: 'steadySet', steady: true }],
  ])('needs both words for reduced, whichever comes first', (one, other) => {
    for (const start of [startSwitching('ISO 2859-1'), startSwitching('MIL-STD-105E', 1)]) {
      const half = lots(switchingAfter(start, one), 'AAAAAAAAAAAA');
      expect(half.severity).toBe('normal');
      expect(switchingAfter(half, other).severity).toBe('reduced');
    }
  });

  it.each<[SwitchingEvent, string]>([
    [{ type: 'steadySet', steady: false }, 'notSteady'],
    [{ type: 'reducedAllowedSet', allowed: false }, 'reducedWithdrawn'],
    [{ ...lot('gap', true), inGap: true }, 'endedInGap'],
    [lot('bad', false), 'notAcceptedOnReduced'],
  ])('leaves reduced on %o (9.3.4; the gap: 105E 4.10.1.4)', (event, why) => {
    const reduced = lots(approved(), 'AAAAAAAAAA');
    expect(reduced.severity).toBe('reduced');
    const after = switchingAfter(reduced, event);
    expect(lastMove(reduced, after)).toMatchObject({ from: 'reduced', to: 'normal', why });
    expect(after.score).toBe(0);
  });

  it('scores 3 for a multiple plan that accepts by its third sample, and starts again when it took more or was not accepted (9.3.3.2)', () => {
    const multiple = (accepted: boolean, byThirdSample: boolean): SwitchingEvent => ({ ...lot('multiple', accepted), plan: { kind: 'multiple', byThirdSample } });
    const two = [multiple(true, true), multiple(true, true)].reduce(switchingAfter, startSwitching('ISO 2859-1'));
    expect(two.score).toBe(6);
    expect(switchingAfter(two, multiple(true, false))).toMatchObject({ score: 0, severity: 'normal', acceptedInRow: 3 });
    expect(switchingAfter(two, multiple(false, true)).score).toBe(0);
    expect(Array.from({ length: 10 }, () => multiple(true, true)).reduce(switchingAfter, approved()).severity).toBe('reduced');
  });

  it('does not count the lot that ended reduced inspection as one of two in five (decided here)', () => {
    const back = switchingAfter(lots(approved(), 'AAAAAAAAAA'), lot('bad', false));
    expect(lots(back, 'R').severity).toBe('normal');
    expect(lots(back, 'RAR').severity).toBe('tightened');
  });

  it('stops after five not accepted in one run on tightened, and resumes on tightened with nothing counted', () => {
    const stopped = lots(startSwitching('ISO 2859-1'), 'RR' + 'RAAAARRAAR' + 'R');
    expect(stopped.severity).toBe('discontinued');
    expect(stopped.enteredBy?.lots).toHaveLength(5);
    const resumed = switchingAfter(stopped, { type: 'resumed' });
    expect(resumed).toMatchObject({ severity: 'tightened', acceptedInRow: 0, notAcceptedOnTightened: 0 });
  });

  it('changes nothing for a lot judged while the stream is discontinued', () => {
    const stopped = lots(startSwitching('ISO 2859-1'), 'RRRRRRR');
    expect(stopped.severity).toBe('discontinued');
    expect(switchingAfter(stopped, lot('late', true))).toBe(stopped);
  });

  it('does not count a lot that was opened under another severity (decided here)', () => {
    const tightened = lots(startSwitching('ISO 2859-1'), 'RR');
    expect(switchingAfter(tightened, { ...lot('late', false), inspectedOn: 'normal' })).toBe(tightened);
    expect(switchingAfter(tightened, { ...lot('own', false), inspectedOn: 'tightened' }).notAcceptedOnTightened).toBe(1);
  });

  it('stays where it is when resumed without having been discontinued, as a corrected verdict can leave behind', () => {
    const start = startSwitching('ISO 2859-1');
    expect(switchingAfter(start, { type: 'resumed' })).toBe(start);
  });

  it('moves a stream judged by variables between normal, tightened and discontinued only', () => {
    const plan = { kind: 'variables' } as const;
    for (const start of [approved(), approved('MIL-STD-105E')]) {
      let state: SwitchingState = start;
      for (let n = 1; n <= 45; n += 1) state = switchingAfter(state, { ...lot(`V-${n}`, true), plan });
      expect(state.severity).toBe('normal');
      for (const n of [1, 2]) state = switchingAfter(state, { ...lot(`W-${n}`, false), plan });
      expect(state.severity).toBe('tightened');
    }
  });

  it('takes in more than ten lots where Table VIII shows a star (note to Table VIII, seen)', () => {
    // n 5 at AQL 2.5: ten lots are 50 units, a star; the first number stands at 80 units, so the sixteenth lot decides.
    let state = approved('MIL-STD-105E', 2.5);
    let judgedLots = 0;
    while (state.severity === 'normal' && judgedLots < 30) {
      judgedLots += 1;
      state = switchingAfter(state, { ...lot(`L-${judgedLots}`, true), sampleSize: 5 });
    }
    expect([state.severity, judgedLots]).toEqual(['reduced', 16]);
    expect(state.enteredBy).toMatchObject({ why: 'withinLimitNumber' });
    expect(state.enteredBy?.lots).toHaveLength(16);
  });

  it('asks for the AQL where limit numbers are used', () => {
    expect(() => startSwitching('MIL-STD-105E')).toThrow(OutsideDomain);
    expect(startSwitching('ISO 2859-1').aqlPercent).toBeNull();
  });
});

function approved(rule: 'ISO 2859-1' | 'MIL-STD-105E' = 'ISO 2859-1', aqlPercent = 1): SwitchingState {
  const steady = switchingAfter(startSwitching(rule, aqlPercent), { type: 'steadySet', steady: true });
  return switchingAfter(steady, { type: 'reducedAllowedSet', allowed: true });
}

/** A = accepted, R = not accepted, one letter a lot. */
function lots(state: SwitchingState, run: string): SwitchingState {
  return [...run].reduce((before, letter, at) => switchingAfter(before, lot(`${run}-${at + 1}`, letter === 'A')), state);
}

function lot(name: string, accepted: boolean): LotJudged {
  const plan = { kind: 'single', ac: 3, tighterAccepted: accepted } as const;
  return { type: 'lotJudged', lot: name, original: true, accepted, plan, sampleSize: 80, found: accepted ? 0 : 4 };
}
