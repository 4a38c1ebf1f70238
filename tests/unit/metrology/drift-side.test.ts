import { describe, expect, it } from 'vitest';
import { driftRun, driftSide } from '../../../shared/metrology/drift/index.ts';

describe('drift', () => {
  it('is told with the ninth value in a row on one side, and not with the eighth', () => {
    expect(driftSide(Array(driftRun - 1).fill(9.9), 9.8)).toBeNull();
    expect(driftSide(Array(driftRun).fill(9.9), 9.8)).toBe('above');
    expect(driftSide(Array(driftRun).fill(9.7), 9.8)).toBe('below');
  });
  it('is ended by a value on the target or beyond it', () => {
    const run = Array<number>(driftRun).fill(9.9);
    expect(driftSide([...run.slice(1), 9.8], 9.8)).toBeNull();
    expect(driftSide([9.7, ...run], 9.8)).toBe('above');
    expect(driftSide([...run, 9.7], 9.8)).toBeNull();
  });
});
