import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CLEARANCES, EDGES, FIXINGS, formatDesignation, HANDS, INCH_CIRCLES, insertDimensions, insertLimits, METRIC_CIRCLES, readDesignation, SHAPE_LETTERS, SHAPES, sizeCode, THICKNESSES,
  TOLERANCE_CLASSES, WIPER_ANGLES, WIPER_CLEARANCES,
} from '../../../shared/carbide/index.ts';

const of = (table: Readonly<Record<string, unknown>>) => fc.constantFrom(...Object.keys(table));
const REGULAR = SHAPE_LETTERS.filter((shape) => SHAPES[shape].sides !== null);
const standard = fc.record({
  shape: fc.constantFrom(...REGULAR), circle: fc.constantFrom(...INCH_CIRCLES), clearance: of(CLEARANCES), toleranceClass: fc.constantFrom(...TOLERANCE_CLASSES), fixing: of(FIXINGS), thickness: of(THICKNESSES),
  corner: fc.oneof(fc.constantFrom('00', '01', '02', '04', '08', '12', '15'), fc.tuple(of(WIPER_ANGLES), of(WIPER_CLEARANCES)).map((letters) => letters.join(''))),
  edge: fc.oneof(fc.constant(''), of(EDGES)), hand: fc.oneof(fc.constant(''), of(HANDS)), sign: fc.oneof(fc.constant(''), fc.stringMatching(/^-[A-Z0-9]{1,3}$/)),
});

describe('any standard combination', () => {
  it('is read back to its inscribed circle, and written back to its word', () => {
    fc.assert(fc.property(standard, ({ shape, circle, clearance, toleranceClass, fixing, thickness, corner, edge, hand, sign }) => {
      const text = `${shape}${clearance}${toleranceClass}${fixing}${sizeCode(shape, circle) ?? ''}${thickness}${corner}${edge}${hand}${sign}`;
      const outcome = readDesignation(text.toLowerCase());
      if (!outcome.ok) throw new Error(`${text}: ${JSON.stringify(outcome.problems)}`);
      expect(formatDesignation(outcome.designation)).toBe(text);
      const { inscribedCircle, fittingCircles } = insertDimensions(outcome.designation, circle.nominalMm);
      expect(inscribedCircle ?? fittingCircles[0]).toEqual(circle);
    }), { seed: 1832, numRuns: 3000 });
  });

  it.each([...INCH_CIRCLES, ...METRIC_CIRCLES])('a round insert of $nominalMm is settled by its corner code', (circle) => {
    const outcome = readDesignation(`RCMT${sizeCode('R', circle) ?? ''}04${circle.inch === null ? 'M0' : '00'}`);
    expect(outcome.ok && insertDimensions(outcome.designation).inscribedCircle).toEqual(circle);
  });

  it('has limits that lie evenly about their target, wherever there are any', () => {
    fc.assert(fc.property(standard, ({ shape, circle, toleranceClass, thickness }) => {
      const outcome = readDesignation(`${shape}N${toleranceClass}G${sizeCode(shape, circle) ?? ''}${thickness}04`);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      for (const { targetMm, tolerance, lowerMm, upperMm } of Object.values(insertLimits(outcome.designation, { chosenCircleMm: circle.nominalMm }))) {
        expect(lowerMm === null).toBe(tolerance.kind !== 'limit');
        if (targetMm === null || lowerMm === null || upperMm === null || tolerance.kind !== 'limit') continue;
        expect(upperMm - targetMm).toBeCloseTo(tolerance.plusMinusMm, 9);
        expect(targetMm - lowerMm).toBeCloseTo(tolerance.plusMinusMm, 9);
      }
    }), { seed: 1833, numRuns: 1000 });
  });
});

describe('any text', () => {
  it('is read or refused with at least one position, and never throws; what is read is its own word', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'grapheme' }), fc.stringMatching(/^[A-Z]{3,5}[0-9T]{3,7}[A-Z0-9-]{0,8}$/)), (text) => {
      const outcome = readDesignation(text);
      if (!outcome.ok) expect(outcome.problems.length).toBeGreaterThan(0);
      else expect(readDesignation(formatDesignation(outcome.designation))).toEqual(outcome);
    }), { seed: 1834, numRuns: 3000 });
  });
});
