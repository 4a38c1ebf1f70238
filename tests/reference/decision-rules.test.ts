import { describe, expect, it } from 'vitest';
import { acceptanceLimits, isWithin } from '../../shared/metrology/decision-rules/index.ts';

describe('limits of acceptance', () => {
  // JCGM 106:2012 resistor example, inputs from memory: tolerance 1499.8 … 1500.2 ohm, U = 2 u = 0.08 ohm; limits computed.
  it.each([
    { rule: 'simple' as const, guardFactor: 1, lower: 1499.8, upper: 1500.2 },
    { rule: 'guardedAcceptance' as const, guardFactor: 1, lower: 1499.88, upper: 1500.12 },
    { rule: 'guardedAcceptance' as const, guardFactor: 0.5, lower: 1499.84, upper: 1500.16 },
    { rule: 'guardedRejection' as const, guardFactor: 1, lower: 1499.72, upper: 1500.28 },
  ])('resistor, $rule with $guardFactor U: $lower to $upper', ({ rule, guardFactor, lower, upper }) => {
    const limits = acceptanceLimits({ lower: 1499.8, upper: 1500.2, uncertainty: 0.08, rule, guardFactor });
    expect(limits.lower).toBeCloseTo(lower, 9);
    expect(limits.upper).toBeCloseTo(upper, 9);
    expect(limits.nothingAcceptable).toBe(false);
  });

  it('guards by U where no factor is given, on the side that has a limit', () => {
    expect(acceptanceLimits({ lower: 10, uncertainty: 0.5, rule: 'guardedAcceptance' })).toEqual({ lower: 10.5, guardBand: 0.5, nothingAcceptable: false });
  });

  it('says when the guard bands leave no room', () => {
    expect(acceptanceLimits({ lower: 1, upper: 2, uncertainty: 0.6, rule: 'guardedAcceptance' }).nothingAcceptable).toBe(true);
  });

  it('accepts a reading on the limit', () => {
    expect([isWithin({ upper: 2 }, 2), isWithin({ upper: 2 }, 2.0001), isWithin({ lower: 1, upper: 2 }, 0.9)]).toEqual([true, false, false]);
  });

  it('refuses no limit, crossed limits and negative uncertainty', () => {
    expect(() => acceptanceLimits({ uncertainty: 0, rule: 'simple' })).toThrow(/limits/);
    expect(() => acceptanceLimits({ lower: 3, upper: 2, uncertainty: 0, rule: 'simple' })).toThrow(/lower/);
    expect(() => acceptanceLimits({ lower: 1, uncertainty: -1, rule: 'simple' })).toThrow(/uncertainty/);
  });
});
