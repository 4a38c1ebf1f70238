import fc from 'fast-check';
import { expect, it } from 'vitest';
import { binomialExactly } from '../../../shared/sampling/chance/index.ts';
import { spread } from '../../../shared/sampling/risk/spread.ts';

/** Shares from even to falling by a hundred orders; samples from one piece to more than the band of open counts is wide. */
const asked = fc.record({
  powers: fc.array(fc.integer({ min: -1000, max: 0 }), { minLength: 2, maxLength: 80 }),
  steep: fc.constantFrom(0, 0.001, 0.01, 0.1),
  pieces: fc.integer({ min: 1, max: 200 }),
  p: fc.constantFrom(1e-6, 0.001, 0.01, 0.1, 0.4, 0.9, 0.999),
  shift: fc.integer({ min: 0, max: 3 }),
});

it('a long reach of the run is left out only where no result loses more than 1e-17 of itself', () => {
  fc.assert(fc.property(asked, ({ powers, steep, pieces, p, shift }) => {
    const shares = Float64Array.from(powers, (power) => 10 ** (power * steep));
    const run = Array.from({ length: shares.length + 40 }, (_, k) => binomialExactly(k, pieces, p));
    const after = new Float64Array(Math.min(shares.length + 20, shares.length + pieces) - shift);
    spread(shares, run, after, shift);
    for (const [to, result] of after.entries()) {
      const whole = shares.reduce((sum, share, from) => sum + share * (run[to + shift - from] ?? 0), 0);
      if (whole > 1e-290) expect(Math.abs(result / whole - 1)).toBeLessThanOrEqual(1e-14);
      else expect(result).toBeLessThanOrEqual(1e-289);
    }
  }), { seed: 20_260_312, numRuns: 2000 });
});
