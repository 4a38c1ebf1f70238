import { describe, expect, it } from 'vitest';
import {
  CLEARANCES, controlDimension, cornerRadius, edgeLengthMm, EDGES, FIXINGS, HANDS, INCH_CIRCLES, insertDimensions, insertLimits, METRIC_CIRCLES, readDesignation, SHAPE_LETTERS,
  SHAPES, sizeCode, THICKNESSES, TOLERANCE_CLASSES, toleranceOf, WIPER_ANGLES, WIPER_CLEARANCES,
} from '../../shared/carbide/index.ts';
import type { InsertDesignation, LimitedSize, ShapeLetter, ToleranceClass } from '../../shared/carbide/index.ts';
import { readCsv } from './read-csv.ts';

// Source and tag of every table: data/README.md. "Derived" rows were worked out apart from the code under test.

function read(text: string): InsertDesignation {
  const outcome = readDesignation(text);
  if (!outcome.ok) throw new Error(`${text}: ${JSON.stringify(outcome.problems)}`);
  return outcome.designation;
}
function shapeOf(letter: string | undefined): ShapeLetter {
  const found = SHAPE_LETTERS.find((shape) => shape === letter);
  if (found === undefined) throw new Error(`no shape ${String(letter)}`);
  return found;
}
const cell = (toleranceClass: ToleranceClass, shape: ShapeLetter, dMm: number, size: LimitedSize): number | string => {
  const found = toleranceOf(toleranceClass, shape, dMm)[size];
  return found.kind === 'limit' ? found.plusMinusMm : found.kind === 'none' ? 'none' : found.why;
};

describe('letters and codes of ISO 1832 (letters and angles from memory of the standard)', () => {
  it.each(readCsv('iso1832-shapes.csv'))('shape $letter: $shape', (row) => {
    const shape = SHAPES[shapeOf(row['letter'])];
    expect(shape.includedAngleDeg ?? '').toBe(row['included_angle_deg'] === '' ? '' : Number(row['included_angle_deg']));
    expect(shape.sides ?? '-').toBe(row['parity'] || '-');
    expect(shape.edgeFactor?.toFixed(6) ?? '').toBe(row['edge_factor_l_over_d']);
    if (shape.sides !== null) expect(controlDimension(shapeOf(row['letter']), 1, 0).factor.toFixed(6)).toBe(row['k_=1/sin(angle/2)-1']);
  });
  it('has these sixteen shapes and no other', () => {
    expect([...SHAPE_LETTERS].sort()).toEqual(readCsv('iso1832-shapes.csv').map(({ letter }) => letter).sort());
  });

  it('has the clearance angles of the table', () => {
    expect(Object.fromEntries(Object.entries(CLEARANCES).map(([letter, deg]) => [letter, deg === null ? '' : String(deg)]))).toEqual(Object.fromEntries(readCsv('iso1832-clearance.csv').map((row) => [row['letter'], row['normal_clearance_deg']])));
  });

  it('has the holes and chip breakers of the table', () => {
    const holes = { none: 'none', cylindrical: 'cylindrical', oneCountersink40: 'partly cylindrical, one countersink 40-60 deg', twoCountersinks40: 'partly cylindrical, two countersinks 40-60 deg', oneCountersink70: 'partly cylindrical, one countersink 70-90 deg', twoCountersinks70: 'partly cylindrical, two countersinks 70-90 deg' };
    const breakers = { none: 'none', oneFace: 'one face', bothFaces: 'both faces' };
    const ours = Object.entries(FIXINGS).map(([letter, fixing]) => ({ letter, hole: fixing === null ? 'dimensions or details needing a drawing' : holes[fixing.hole], chip_breaker: fixing === null ? 'as drawn' : breakers[fixing.chipBreaker] }));
    expect(ours).toEqual(expect.arrayContaining(readCsv('iso1832-fixing-chipbreaker.csv')));
    expect(ours).toHaveLength(readCsv('iso1832-fixing-chipbreaker.csv').length);
  });

  it('has the wiper letters of the table', () => {
    const rows = readCsv('iso1832-wiper.csv');
    const told = (position: string) => Object.fromEntries(rows.filter((row) => row['position'] === position).map((row) => [row['letter'], row['value_deg'] === '' ? null : Number(row['value_deg'])]));
    expect(WIPER_ANGLES).toEqual(told('cutting edge angle'));
    expect(WIPER_CLEARANCES).toEqual(told('wiper normal clearance'));
  });

  it('has the edges and hands of the table', () => {
    const letters = (position: string) => readCsv('iso1832-edge-direction.csv').filter((row) => row['position'] === position).map((row) => row['letter']).sort();
    expect(Object.keys(EDGES).sort()).toEqual(letters('8'));
    expect(Object.keys(HANDS).sort()).toEqual(letters('9'));
  });

  it.each(readCsv('iso1832-thickness.csv'))('thickness $code is $s_mm mm ($evidence)', (row) => {
    const thickness = Object.entries(THICKNESSES).find(([code]) => code === row['code'])?.[1];
    expect(thickness?.nominalMm).toBe(Number(row['s_mm']));
    if (row['exact_inch_mm'] !== '') expect(Math.abs((thickness?.exactMm ?? 0) - Number(row['exact_inch_mm']))).toBeLessThan(0.0001);
  });

  it.each(readCsv('iso1832-corner.csv').filter(({ code }) => code !== 'M0'))('corner $code is $r_mm mm ($note)', (row) => {
    const radius = cornerRadius(row['code'] ?? '');
    expect(radius.nominalMm).toBe(Number(row['r_mm']));
    const printed = /= (\d\.\d+)/.exec(row['note'] ?? '')?.[1];
    expect(Math.abs(radius.usedMm - Number(printed ?? row['r_mm']))).toBeLessThan(0.000051);
  });
});

describe('size digits (edge length derived from geometry; rule of dropped decimals seen)', () => {
  it.each(readCsv('iso1832-size-codes.csv'))('$shape with d $d_nominal_mm has l $l_computed_mm and digits $size_code', (row) => {
    const shape = shapeOf(row['shape']);
    const circle = [...INCH_CIRCLES, ...METRIC_CIRCLES].find(({ nominalMm }) => nominalMm === Number(row['d_nominal_mm']));
    if (circle === undefined) throw new Error('no such circle');
    expect(Math.abs(circle.exactMm - Number(row['d_exact_mm']))).toBeLessThan(0.0001);
    const edge = edgeLengthMm(shape, circle.exactMm);
    expect(edge === null).toBe(row['l_computed_mm'] === '');
    if (edge !== null) expect(Math.abs(edge - Number(row['l_computed_mm']))).toBeLessThan(0.00051);
    expect(sizeCode(shape, circle)).toBe(row['size_code']);
  });
});

describe('control dimension m', () => {
  it.each([
    { shape: 'C', dMm: 12.7, corner: '08', printed: 3.088 }, { shape: 'C', dMm: 12.7, corner: '12', printed: 2.867 }, { shape: 'C', dMm: 12.7, corner: '04', printed: 3.307 },
    { shape: 'C', dMm: 9.525, corner: '08', printed: 2.205 }, { shape: 'C', dMm: 9.525, corner: '04', printed: 2.425 },
    { shape: 'T', dMm: 9.525, corner: '04', printed: 13.891 }, { shape: 'T', dMm: 9.525, corner: '08', printed: 13.494 },
  ] as const)('$shape $dMm $corner is printed as $printed in GOST 19057-80 or GOST 19046-80 (seen)', ({ shape, dMm, corner, printed }) => {
    expect(Math.abs(controlDimension(shape, dMm, cornerRadius(corner).usedMm).mm - printed)).toBeLessThan(0.0015);
  });

  it.each(readCsv('iso1832-m-values.csv'))('$shape d $d_mm corner $corner_code: $m_mm (derived)', (row) => {
    const radius = cornerRadius(row['corner_code'] ?? '');
    expect(Math.abs(radius.usedMm - Number(row['r_used_mm']))).toBeLessThan(0.000001);
    expect(Math.abs(controlDimension(shapeOf(row['shape']), Number(row['d_mm']), radius.usedMm).mm - Number(row['m_mm']))).toBeLessThan(0.00051);
  });
});

describe('limits of the tolerance class (memory of ISO 1832, row by row)', () => {
  it.each(readCsv('iso1832-tolerance-classes.csv'))('class $class: d $d_plusminus_mm, m $m_plusminus_mm, s $s_plusminus_mm', (row) => {
    const toleranceClass = TOLERANCE_CLASSES.find((letter) => letter === row['class']);
    if (toleranceClass === undefined) throw new Error('no such class');
    for (const size of ['d', 'm', 's'] as const) {
      const printed = row[`${size}_plusminus_mm`] ?? '';
      const found = toleranceOf(toleranceClass, 'C', 12.7)[size];
      expect(found.kind === 'limit' && found.bySize).toBe(printed.startsWith('by size'));
      if (!printed.startsWith('by size')) expect(cell(toleranceClass, 'C', 12.7, size)).toBe(Number(printed));
    }
  });

  const bySize = readCsv('iso1832-tolerance-by-size.csv').flatMap((row) => (row['shapes'] ?? '').split(' ').map((shape) => ({ row, shape, d: row['d_nominal_mm'], evidence: row['evidence'] })));
  it.each(bySize)('$shape with d $d ($evidence)', ({ row, shape }) => {
    const [letter, dMm] = [shapeOf(shape), Number(row['d_nominal_mm'])];
    const printed = (head: string, missing: string) => (row[head] === '' ? missing : Number(row[head]));
    for (const toleranceClass of ['J', 'K', 'L', 'M', 'N'] as const) expect(cell(toleranceClass, letter, dMm, 'd')).toBe(Number(row['d_JKLMN_plusminus_mm']));
    expect(cell('U', letter, dMm, 'd')).toBe(printed('d_U_plusminus_mm', 'classWithoutTable'));
    const changed = row['evidence']?.startsWith('VALUE CHANGED') === true;
    for (const toleranceClass of ['M', 'N'] as const) expect(cell(toleranceClass, letter, dMm, 'm')).toBe(shape === 'R' ? 'none' : changed ? 'changedByEdition' : Number(row['m_MN_plusminus_mm']));
    expect(cell('U', letter, dMm, 'm')).toBe(shape === 'R' ? 'none' : printed('m_U_plusminus_mm', 'classWithoutTable'));
    if (!changed) {
      const found = toleranceOf('M', letter, dMm).d;
      expect(found.kind === 'limit' && found.evidence).toBe(row['evidence'] === 'memory of ISO 1832 only' ? 'memory' : 'memoryAgrees');
    }
  });
});

// The last four stand in the same worked list in words only (derived); the rest are rows of the table.
const worked = [
  ...readCsv('iso1832-worked.csv'),
  { designation: 'DNMG150608', d_min: '12.620', d_max: '12.780', l_mm: '15.504', s_min: '6.220', s_max: '6.480', r_used_mm: '0.793750', m_mm: '6.477', m_min: '6.327', m_max: '6.627' },
  { designation: 'VNMG160404', d_min: '9.475', d_max: '9.575', l_mm: '16.606', s_min: '4.630', s_max: '4.890', r_used_mm: '0.396875', m_mm: '10.152', m_min: '9.992', m_max: '10.312' },
  { designation: 'DCGT11T304FN', d_min: '9.500', d_max: '9.550', l_mm: '11.628', s_min: '3.840', s_max: '4.100', r_used_mm: '0.396875', m_mm: '5.089', m_min: '5.064', m_max: '5.114' },
  { designation: 'CNUA160612', d_min: '15.695', d_max: '16.055', l_mm: '16.120', s_min: '6.220', s_max: '6.480', r_used_mm: '1.190625', m_mm: '3.749', m_min: '3.479', m_max: '4.019' },
] as readonly Record<string, string>[];

describe('worked designations (derived)', () => {
  it.each(worked)('$designation: d $d_min … $d_max, m $m_min … $m_max, s $s_min … $s_max', (row) => {
    const designation = read(row['designation'] ?? '');
    const [dimensions, limits] = [insertDimensions(designation), insertLimits(designation)];
    expect([limits.d.lowerMm?.toFixed(3), limits.d.upperMm?.toFixed(3)]).toEqual([row['d_min'], row['d_max']]);
    expect([limits.s.lowerMm?.toFixed(3), limits.s.upperMm?.toFixed(3)]).toEqual([row['s_min'], row['s_max']]);
    expect([limits.m.targetMm?.toFixed(3) ?? '', limits.m.lowerMm?.toFixed(3) ?? '', limits.m.upperMm?.toFixed(3) ?? '']).toEqual([row['m_mm'], row['m_min'], row['m_max']]);
    expect(dimensions.edgeLengthMm?.toFixed(3) ?? '').toBe(row['l_mm']);
    expect(dimensions.cornerRadius?.usedMm.toFixed(6) ?? '').toBe(row['r_used_mm']);
  });
});
