import { describe, expect, it } from 'vitest';
import { lastMove, limitNumber, startSwitching, switchingAfter } from '../../shared/sampling/switching/index.ts';
import type { JudgedPlan, LotJudged, SwitchingRule, SwitchingState } from '../../shared/sampling/switching/index.ts';
import { AQLS, singlePlan } from '../../shared/sampling/attributes/index.ts';
import { readCsv, readHeads } from './read-csv.ts';

// Sequences derived from ISO 2859-1:1999 clause 9 (memory) and MIL-STD-105E 4.7, 4.8, 4.10.1 (seen): data/README.md.

const steps = readCsv('switching-vectors.csv');
const isoSequences = [...new Set(steps.map((step) => step['sequence'] ?? ''))].filter((name) => name.startsWith('I'));
const approvalMissing = new Set(['I12']); // its last lots stay on normal at 30 and more: no one stated steadiness or wish

describe('ISO 2859-1 lot sequences', () => {
  it.each(isoSequences)('%s moves as derived, lot by lot', (name) => {
    const sequence = steps.filter((step) => step['sequence'] === name);
    let state = startingOn(sequence[0]?.['state_before'] ?? '', !approvalMissing.has(name));
    for (const step of sequence) {
      expect(state.severity, `before lot ${step['lot']}`).toBe(step['state_before']);
      state = switchingAfter(state, judged(step));
      expect(state.severity, `after lot ${step['lot']}`).toBe(step['state_for_next_lot']);
      if (step['score_after'] !== '') expect(state.score, `score after lot ${step['lot']}`).toBe(Number(step['score_after']));
    }
  });

  it('reads all 12 sequences', () => expect(isoSequences).toHaveLength(12));
});

describe('MIL-STD-105E lot sequences', () => {
  it.each([
    { id: 'M1', aqlPercent: 1, sampleSize: 80, found: 4, ends: 'reduced' },
    { id: 'M2', aqlPercent: 1, sampleSize: 80, found: 5, ends: 'normal' },
    { id: 'M3', aqlPercent: 2.5, sampleSize: 5, found: 0, ends: 'normal' },
  ])('$id: ten accepted lots of n=$sampleSize at AQL $aqlPercent with $found found in all leave the stream on $ends', (row) => {
    expect(steps.find(({ sequence }) => sequence === row.id)?.['state_for_next_lot']).toBe(row.ends);
    let state = approved('MIL-STD-105E', row.aqlPercent);
    for (let lot = 1; lot <= 10; lot += 1) {
      expect(state.severity).toBe('normal');
      const found = lot <= row.found ? 1 : 0;
      state = switchingAfter(state, { ...lotOf(String(lot), true), sampleSize: row.sampleSize, found });
    }
    expect(state.severity).toBe(row.ends);
  });

  it.each([{ id: 'M4', d: 2 }, { id: 'M5', d: 3 }, { id: 'M6', d: 5 }])('$id: K at AQL 1.5 reduced (n 50, Ac 2, Re 5) with $d found', ({ id, d }) => {
    const ends = steps.find(({ sequence }) => sequence === id)?.['state_for_next_lot'];
    const plan = singlePlan({ lotSize: 3000, level: 'II', aqlPercent: 1.5, severity: 'reduced' });
    const lot = { ...lotOf('1', d < plan.re), inGap: d > plan.ac && d < plan.re, sampleSize: 50, found: d };
    expect(switchingAfter(startingOn('reduced', true, 'MIL-STD-105E'), lot).severity).toBe(ends);
  });

  it('M7: the fifth lot not accepted in a run on tightened inspection discontinues', () => {
    let state = startingOn('tightened', true, 'MIL-STD-105E');
    for (const lot of ['1', '2', '3', '4', '5']) {
      expect(state.severity).toBe('tightened');
      state = switchingAfter(state, lotOf(lot, false));
    }
    expect(state.severity).toBe('discontinued');
  });
});

describe('limit numbers (MIL-STD-105E Table VIII)', () => {
  it.each(readCsv('limit-numbers.csv'))('from $units_min units holds all 26 cells', (row) => {
    const heads = readHeads('limit-numbers.csv').slice(2);
    expect(heads.map(Number)).toEqual(AQLS);
    const [least, most] = [Number(row['units_min']), Number(row['units_max'] || 1e6)];
    for (const head of heads) {
      const printed = row[head] === '*' ? 'tooFewUnits' : row[head] === '' ? null : Number(row[head]);
      expect([head, limitNumber(Number(head), least), limitNumber(Number(head), most)]).toEqual([head, printed, printed]);
    }
  });
});

function approved(rule: SwitchingRule, aqlPercent: number): SwitchingState {
  const steady = switchingAfter(startSwitching(rule, aqlPercent), { type: 'steadySet', steady: true });
  return switchingAfter(steady, { type: 'reducedAllowedSet', allowed: true });
}

function startingOn(severity: string, isApproved: boolean, rule: SwitchingRule = 'ISO 2859-1'): SwitchingState {
  let state = isApproved ? approved(rule, 1) : startSwitching(rule, 1);
  if (severity === 'tightened') for (const lot of ['before 1', 'before 2']) state = switchingAfter(state, lotOf(lot, false));
  for (let lot = 1; severity === 'reduced' && state.severity !== 'reduced'; lot += 1) {
    if (lot > 40) throw new Error('reduced inspection was not reached');
    state = switchingAfter(state, { ...lotOf(`before ${lot}`, true), sampleSize: 80, found: 0 });
  }
  return state;
}

function lotOf(lot: string, accepted: boolean): LotJudged {
  const found = accepted ? 0 : 9;
  return { type: 'lotJudged', lot, original: true, accepted, plan: { kind: 'single', ac: 2, tighterAccepted: true }, sampleSize: 50, found };
}

function judged(step: Record<string, string>): LotJudged {
  const result = step['sample_result'] ?? '';
  const accepted = step['lot_decision'] === 'accepted';
  const found = Number(/d=(\d+)/.exec(result)?.[1] ?? 0);
  const original = !result.includes('RESUBMITTED');
  return { type: 'lotJudged', lot: step['lot'] ?? '', original, accepted, plan: planOf(result, found), sampleSize: 80, found };
}

function planOf(result: string, found: number): JudgedPlan {
  if (result.startsWith('double')) return { kind: 'double', onFirstSample: result.includes('first sample') };
  const ac = Number(/single Ac=(\d+)/.exec(result)?.[1]);
  const tighter = /tighter: Ac=(\d+)/.exec(result)?.[1];
  return { kind: 'single', ac, tighterAccepted: found <= Number(tighter ?? ac) };
}

it('names the lots a move rests on', () => {
  const before = switchingAfter(startSwitching('ISO 2859-1'), lotOf('L-1', false));
  const between = switchingAfter(before, lotOf('L-2', true));
  const after = switchingAfter(between, lotOf('L-3', false));
  expect(lastMove(before, between)).toBeNull();
  expect(lastMove(between, after)).toEqual({ from: 'normal', to: 'tightened', why: 'twoOfFiveNotAccepted', lots: ['L-1', 'L-3'] });
});
