import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evolve, samplingStanding, verdictOf } from '../../../shared/traveller/index.ts';
import type { AnyState, CharacteristicWork, GateRecord, Slip } from '../../../shared/traveller/index.ts';
import { words } from '../../../shared/words/index.ts';
import { LittlePlant, littlePlant, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';

/**
 * Slips as they were written before a plan could take several samples: three lots at final visual, each with a single sample of each class;
 * one accepted, one rejected and accepted after a correction, one still at work. Their draws are shortened to three places.
 */
const SLIPS: readonly Slip[] = JSON.parse(readFileSync(new URL('slips-before-several-samples.json', import.meta.url), 'utf8'));

const fold = (): ReadonlyMap<string, AnyState> => {
  const states = new Map<string, AnyState>();
  for (const slip of SLIPS) states.set(slip.stream, evolve(states.get(slip.stream) ?? null, slip));
  return states;
};
function finalVisual(state: AnyState | undefined): { readonly gate: GateRecord; readonly work: CharacteristicWork } {
  const gate = state?.kind === 'lot' ? state.gates.find(({ id }) => id === 'final-visual') : undefined;
  const [work] = gate?.work ?? [];
  if (gate === undefined || work === undefined) throw new Error('the lot was not at final visual');
  return { gate, work };
}

describe('slips of before', () => {
  it('fold as ever: verdicts, corrections, holds and switching stand as they were given', () => {
    const states = fold();
    const outcomes = ['lot:A1', 'lot:A2', 'lot:A3'].map((stream) => {
      const { gate } = finalVisual(states.get(stream));
      return [gate.status, gate.verdicts.map(({ verdict }) => verdict.accepted), verdictOf(gate)?.verdict.results.flatMap(({ detail }) => (detail.by === 'attributes' ? detail.classes.map(({ found, beyond, outcome }) => [found, beyond, outcome]) : []))];
    });
    expect(outcomes).toEqual([
      ['accepted', [true], [[0, 0, 'accepted'], [1, 0, 'accepted'], [2, 0, 'accepted']]],
      ['accepted', [false, true], [[0, 0, 'accepted'], [0, 2, 'accepted'], [0, 0, 'accepted']]],
      ['open', [], undefined],
    ]);
    expect(states.get('switching:CNMG-D1/final-visual/looks/critical')).toMatchObject({ events: [{ lot: 'A1', accepted: true }, { lot: 'A2', accepted: true }] });
  });

  it('stand where they stood: a whole sample is decided, one at work asks for its pieces', () => {
    const states = fold();
    expect(samplingStanding(finalVisual(states.get('lot:A1')).work)).toMatchObject({ decided: true, looked: 80, sample: 1, samples: 1 });
    expect(samplingStanding(finalVisual(states.get('lot:A3')).work)).toMatchObject({ decided: false, from: 1, to: 80, classes: [{ class: 'critical' }, { class: 'major', found: 1, acceptAt: 1, rejectAt: 2 }, { class: 'minor' }] });
  });

  it('are gone on from: the sample at work is completed and judged today', () => {
    const plant = new LittlePlant(new Map([...littlePlant(SHORT_ROUTE).states, ...fold()]));
    plant.must({ type: 'completeSample', subject: 'lot:A3', gate: 'final-visual', characteristic: 'looks', looked: 80 });
    expect(finalVisual(plant.lot('A3')).gate.status).toBe('accepted');
  });

  it('are all told in words', () => {
    const english = words('en');
    for (const slip of SLIPS) expect(english.slipSentence(slip)).not.toBe('');
  });
});
