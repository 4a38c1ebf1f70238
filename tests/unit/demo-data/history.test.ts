import { describe, expect, it } from 'vitest';
import { makeHistory } from '../../../demo-data/history.ts';
import { PRODUCTS } from '../../../demo-data/plant-records.ts';
import { readDesignation } from '../../../shared/carbide/index.ts';

const END = '2026-11-28T12:00:00.000Z';
const history = makeHistory({ seed: 'lindenrath', endIso: END });

describe('the invented plant’s history', () => {
  it('goes forward and never past the present', () => {
    const times = history.map(({ at }) => at);
    expect(times).toEqual([...times].sort());
    expect(times.at(-1)?.localeCompare(END)).toBeLessThanOrEqual(0);
  });

  it('makes four products of different shapes in two grades', () => {
    const made = new Set(history.flatMap(({ changes }) => changes.flatMap(({ bodies }) => bodies.flatMap((body) => (body.type === 'lotOpened' ? [body.product.id] : [])))));
    expect([...made].sort()).toEqual(PRODUCTS.map(({ id }) => id).sort());
    const shapes = PRODUCTS.map(({ designation }) => {
      const read = readDesignation(designation);
      return 'problems' in read ? null : read.designation.shape;
    });
    expect(new Set(shapes).size).toBe(4);
    expect(shapes).not.toContain(null);
    expect(new Set(PRODUCTS.map(({ grade }) => grade)).size).toBe(2);
  });
});
