import { describe, expect, it } from 'vitest';
import { INCH_CIRCLES, insertDimensions, insertDrawing, INSERT_DRAWING, insertOutline, readDesignation, SHAPE_LETTERS, SHAPES, sizeCode } from '../../../shared/carbide/index.ts';
import type { InsertDesignation, InsertOutline } from '../../../shared/carbide/index.ts';

function read(text: string): InsertDesignation {
  const outcome = readDesignation(text);
  if (!outcome.ok) throw new Error(`${text}: ${JSON.stringify(outcome.problems)}`);
  return outcome.designation;
}
function outlineOf(text: string, circleMm?: number): InsertOutline {
  const outline = insertOutline(read(text), circleMm);
  if (outline === null) throw new Error(`${text} has no outline`);
  return outline;
}
const REGULAR = SHAPE_LETTERS.filter((shape) => SHAPES[shape].sides !== null);
const cases = REGULAR.flatMap((shape) => INCH_CIRCLES.slice(1).flatMap((circle) => ['00', '04', '08'].map((corner) => ({ shape, circleMm: circle.nominalMm, corner, text: `${shape}NMG${sizeCode(shape, circle) ?? ''}04${corner}` }))));

describe('the drawn outline', () => {
  it.each(cases)('$text at d $circleMm: the drawn corner stands m away, the drawn edge is l long', ({ text, circleMm }) => {
    // The drawing rounds corners by tangent arcs and knows nothing of the formulas of m and l.
    const outline = outlineOf(text, circleMm);
    const { controlDimension, edgeLengthMm } = insertDimensions(read(text), circleMm);
    const { corner, mFrom, edge } = outline;
    if (corner === null || mFrom === null || edge === null || controlDimension === null) throw new Error('not drawn');
    expect(Math.hypot(corner.tip.x - mFrom.x, corner.tip.y - mFrom.y)).toBeCloseTo(controlDimension.mm, 9);
    expect(Math.hypot(edge[0].x - edge[1].x, edge[0].y - edge[1].y)).toBeCloseTo(edgeLengthMm ?? 0, 9);
  });

  it.each(cases.filter(({ corner }) => corner === '08'))('$text at d $circleMm: every side touches the inscribed circle', ({ text, circleMm }) => {
    const { plan, circleMm: exact } = outlineOf(text, circleMm);
    let at = plan.start;
    for (const step of plan.steps) {
      const [dx, dy] = [step.to.x - at.x, step.to.y - at.y];
      if (step.kind === 'line' && Math.hypot(dx, dy) > 1e-6) expect(Math.abs(dx * at.y - dy * at.x) / Math.hypot(dx, dy)).toBeCloseTo(exact / 2, 6);
      at = step.to;
    }
    expect(at).toEqual(plan.start);
  });

  it('draws a hole, countersinks and a chip breaker only where position 4 says so', () => {
    expect(outlineOf('SNUN120408')).toMatchObject({ hole: null, groove: null });
    expect(outlineOf('SNMA120408').hole?.countersinks).toBe(0);
    expect(outlineOf('SCMT120408').hole?.countersinks).toBe(1);
    expect(outlineOf('SCMU120408').hole?.countersinks).toBe(2);
    expect(outlineOf('SNMG120408').groove).not.toBeNull();
    expect(outlineOf('SNMX120408')).toMatchObject({ hole: null, groove: null });
  });
  it('narrows the section by the clearance', () => {
    // By hand: 4.76 · tan 7° = 0.5845 at each side.
    expect(outlineOf('CCMT120408').section?.seatMm).toBeCloseTo(12.7 - 2 * 0.58445, 3);
    expect(outlineOf('CNMG120408').section?.seatMm).toBe(12.7);
    expect(outlineOf('CGMT040304', 3.97).section?.seatMm).toBeCloseTo(3.96875 - 2 * 3.18 * Math.tan(Math.PI / 6), 9);
    expect(outlineOf('CGMT040604', 3.97).section).toBeNull();
  });
  it('is not drawn where the circle is unknown', () => {
    expect(insertOutline(read('LNMG150408'))).toBeNull();
    expect(insertOutline(read('CCMT040204'))).toBeNull();
  });
});

describe('the drawing', () => {
  it.each(['CNMG120408', 'TNMG160404', 'VNMG160404', 'WNMG080412', 'RCMT1204M0', 'SEKN1203AFTN', 'OFMT050404', 'PNMG110408'])('%s stays within its frame', (text) => {
    for (const mark of insertDrawing(outlineOf(text))) {
      const points = mark.kind === 'text' ? [[mark.at.x, mark.at.y]] : [...mark.data.replaceAll(/A [\d.]+ [\d.]+ 0 [01] [01]/g, '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
      for (const [x = Number.NaN, y = Number.NaN] of points) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(INSERT_DRAWING.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(INSERT_DRAWING.height);
      }
    }
  });
  it('has m, l, r and the angle of a rhombus, and none of them for a round insert', () => {
    const drawn = (text: string) => insertDrawing(outlineOf(text)).flatMap((mark) => (mark.kind === 'text' ? [mark.dimension] : [])).sort();
    expect(drawn('CNMG120408')).toEqual(['angle', 'clearance', 'd', 'l', 'm', 'r', 's']);
    expect(drawn('RCMT1204M0')).toEqual(['clearance', 'd', 's']);
    expect(drawn('SEKN1203AFTN')).toEqual(['angle', 'clearance', 'd', 'l', 'r', 's']);
  });
});
