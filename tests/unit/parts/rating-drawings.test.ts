import { describe, expect, it } from 'vitest';
import { porosityLevels } from '../../../shared/carbide/index.ts';
import { adhesionPicture, INDENT } from '../../../kiosk/parts/adhesion-drawing.ts';
import { FIELD_UM, porositySpots } from '../../../kiosk/parts/porosity-drawing.ts';

/** Area of a polygon by its corners (shoelace formula). */
const area = (points: readonly { readonly x: number; readonly y: number }[]) => Math.abs(points.reduce((sum, { x, y }, at) => {
  const next = points[(at + 1) % points.length] ?? { x, y };
  return sum + x * next.y - next.x * y;
}, 0) / 2);
const reach = ({ x, y }: { readonly x: number; readonly y: number }) => Math.hypot(x, y);

describe('drawn references of adhesion', () => {
  const pictures = ([0, 1, 2, 3] as const).map(adhesionPicture);

  it('show nothing, cracks, flaked fields at the rim, and the whole rim flaked (ISO 26443, words of secondary text)', () => {
    expect(pictures.map(({ cracks, flaked, ring }) => [cracks.length > 0, flaked.length > 0, ring !== null])).toEqual([[false, false, false], [true, false, false], [true, true, false], [false, false, true]]);
  });

  it('flake more from class to class, and leave the rim of class 2 partly whole', () => {
    const [, , two, three] = pictures;
    const fields = (two?.flaked ?? []).reduce((sum, points) => sum + area(points), 0);
    const ring = area(three?.ring ?? []) - Math.PI * INDENT ** 2;
    expect(fields).toBeGreaterThan(0);
    expect(ring).toBeGreaterThan(fields);
    expect((three?.ring ?? []).every((point) => reach(point) > INDENT)).toBe(true);
    // Each field takes up some of the rim; together they take less than two thirds of it.
    const taken = (two?.flaked ?? []).map((points) => points.slice(0, 7)).reduce((sum, rim) => sum + rim.slice(1).reduce((arc, point, at) => arc + Math.hypot(point.x - (rim[at]?.x ?? 0), point.y - (rim[at]?.y ?? 0)), 0), 0);
    expect(taken).toBeLessThan((2 / 3) * 2 * Math.PI * INDENT);
  });

  it('begin every crack at the rim, stay in the picture, and are the same every time', () => {
    for (const { cracks, flaked, ring } of pictures) {
      for (const crack of cracks) expect(reach(crack[0] ?? { x: 0, y: 0 })).toBeCloseTo(INDENT - 1, 6);
      expect([...cracks.flat(), ...flaked.flat(), ...(ring ?? [])].every(({ x, y }) => Math.abs(x) < 100 && Math.abs(y) < 100)).toBe(true);
    }
    expect(([0, 1, 2, 3] as const).map(adhesionPicture)).toEqual(pictures);
  });
});

describe('drawn references of porosity', () => {
  it.each(['A', 'B'] as const)('fill the share of the area that a level of %s stands for (ISO 4499-4, figures from memory)', (type) => {
    for (const [step, { volumePercent }] of porosityLevels(type).entries()) {
      const spots = porositySpots(type, step, volumePercent);
      const filled = spots.reduce((sum, { diameterUm }) => sum + (Math.PI / 4) * diameterUm ** 2, 0);
      const largest = (Math.PI / 4) * (type === 'A' ? 10 : 25) ** 2;
      expect(filled).toBeGreaterThanOrEqual(((volumePercent ?? 0) / 100) * FIELD_UM[type] ** 2);
      expect(filled).toBeLessThan(((volumePercent ?? 0) / 100) * FIELD_UM[type] ** 2 + largest);
      expect(spots.every(({ diameterUm }) => (type === 'A' ? diameterUm <= 10 : diameterUm >= 10 && diameterUm <= 25))).toBe(true);
    }
  });

  it('show more free carbon from level to level, and none at C00', () => {
    const counts = porosityLevels('C').map((_, step) => porositySpots('C', step, null).length);
    expect(counts[0]).toBe(0);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(new Set(counts).size).toBe(5);
  });
});
