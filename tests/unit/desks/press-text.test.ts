import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { warningsOf } from '../../../kiosk/presses/press-text.ts';
import type { PressRow } from '../../../shared/wire/presses-view.ts';

beforeAll(() => void vi.stubGlobal('document', { documentElement: { lang: 'en' } }));
afterAll(() => void vi.unstubAllGlobals());

const began = Date.parse('2026-03-02T06:00:00Z');
const row: PressRow = {
  id: 'PR-2', name: 'Press 2', bench: 'Press 2', balance: 'W-02', balanceStanding: 'counts', lot: 'A1', since: '2026-03-02T05:00:00.000Z', gateName: 'Pressing', gateStatus: 'open', onHold: false,
  unit: 'g', decimals: 3, target: 10, lower: 9.95, upper: 10.05, pieces: 100, lotSize: 1000, mean: 10, s: 0.008, least: 9.98, most: 10.02, pp: 2, ppk: 2, outside: 0, missing: 0, last: [10], waiting: 0,
  lastAt: '2026-03-02T06:00:00.000Z', drift: { state: 'steady', side: null, since: null, ewma: 10, predicted: null }, look: null, missedLooks: 0, no: null,
};
const after = (minutes: number, changed: Partial<PressRow> = {}): readonly string[] => warningsOf({ ...row, ...changed }, began + minutes * 60_000);

describe('a press that sends nothing', () => {
  it('is said to be silent from the third minute, and by the hour from the second hour', () => {
    expect([after(2.99), after(3), after(119.9), after(120)]).toEqual([[], ['No piece for 3 min'], ['No piece for 119 min'], ['No piece for 2 h']]);
  });
  it('is not while it stands, its lot is on hold or its gate is done, nor where nobody can tell', () => {
    expect([after(60, { lot: null }), after(60, { onHold: true }), after(60, { gateStatus: 'accepted' }), warningsOf(row, null)]).toEqual([[], ['The lot is on hold'], ['The gate is not open any more'], []]);
  });
  it('was set on its lot since its newest weight: that is when the silence began', () => {
    expect(after(62, { since: '2026-03-02T07:00:00.000Z' })).toEqual([]);
  });
  it('because its balance does not count says why', () => {
    expect(after(1, { balanceStanding: 'outOfTolerance' })).toEqual(['W-02: found out of tolerance: its weights do not count']);
  });
});
