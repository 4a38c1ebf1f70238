import type { InsertDesignation } from './designation.ts';
import { insertDimensions } from './insert-dimensions.ts';
import type { InsertDimensions } from './insert-dimensions.ts';
import { FIXINGS } from './letters.ts';
import type { Hole } from './letters.ts';
import { SHAPES } from './shapes.ts';
import type { ShapeLetter } from './shapes.ts';

/** A place in the drawing, mm; x to the right, y downwards, the inscribed circle's centre at 0, 0. */
export type PlanePoint = { readonly x: number; readonly y: number };
/** A step along a closed outline: straight, or round with a radius and turning clockwise as it is seen. */
export type OutlineStep = { readonly kind: 'line'; readonly to: PlanePoint } | { readonly kind: 'arc'; readonly to: PlanePoint; readonly radiusMm: number };
/** A closed outline; it ends where it starts. */
export type ClosedOutline = { readonly start: PlanePoint; readonly steps: readonly OutlineStep[] };

/** What an insert looks like, in plan and in a section across the inscribed circle. */
export type InsertOutline = {
  readonly circleMm: number;
  readonly plan: ClosedOutline;
  /** Foot of the chip breaker, drawn in proportion; null without one. */
  readonly groove: ClosedOutline | null;
  /** Diameters in proportion only: the code gives none. `tops`: faces with a countersink, from the top. */
  readonly hole: { readonly diameterMm: number; readonly countersinkMm: number; readonly countersinks: 0 | 1 | 2 } | null;
  /** Theoretical sharp corner that is dimensioned, and the highest point of its rounding; null for a round insert. */
  readonly corner: { readonly vertex: PlanePoint; readonly tip: PlanePoint; readonly isRadiusKnown: boolean } | null;
  /** Where m begins: on the circle, or on the side opposite; null where there is no m. */
  readonly mFrom: PlanePoint | null;
  /** Theoretical ends of the edge that l is drawn along; null for a round insert. */
  readonly edge: readonly [PlanePoint, PlanePoint] | null;
  /** Section: widths at the cutting face and at the seat; null where the clearance would leave no seat. */
  readonly section: { readonly topMm: number; readonly seatMm: number; readonly thicknessMm: number } | null;
  readonly extent: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
};

const HOLE_SHARE = 0.4;
const COUNTERSINK_SHARE = 0.6;
const GROOVE_SHARE = 0.8;
const COUNTERSINKS: Readonly<Record<Hole, 0 | 1 | 2>> = { none: 0, cylindrical: 0, oneCountersink40: 1, oneCountersink70: 1, twoCountersinks40: 2, twoCountersinks70: 2 };

/**
 * The geometry of an insert's drawing. Hole and chip breaker are in proportion (0.4, 0.6 and 0.8 of the circle), everything else to size. The
 * dimensioned corner points to the right where m goes to the circle, upwards where it goes to the side opposite.
 * @param chosenCircleMm as for insertDimensions
 * @returns null where the inscribed circle is unknown: L, A, B and K, or digits that fit several circles
 * @see geometry derived: sides touch the inscribed circle, corners are rounded with a tangent arc
 */
export function insertOutline(designation: InsertDesignation, chosenCircleMm?: number): InsertOutline | null {
  const dimensions = insertDimensions(designation, chosenCircleMm);
  if (dimensions.inscribedCircle === null) return null;
  const circleMm = dimensions.inscribedCircle.exactMm;
  const radiusMm = dimensions.cornerRadius?.usedMm ?? 0;
  const fixing = FIXINGS[designation.fixing];
  const vertices = verticesOf(designation.shape, circleMm / 2);
  const outline = (share: number): ClosedOutline => (vertices.length === 0 ? circle((share * circleMm) / 2) : rounded(vertices.map(({ at, isCorner }) => ({ at: scaled(at, share), radiusMm: isCorner ? share * radiusMm : 0 }))));
  const [first] = vertices;
  const tip = first === undefined ? null : scaled(first.at, 1 - (radiusMm * (1 / Math.sin(halfAngle(dimensions)) - 1)) / length(first.at));
  return {
    circleMm, plan: outline(1), groove: fixing === null || fixing.chipBreaker === 'none' ? null : outline(GROOVE_SHARE),
    hole: fixing === null || fixing.hole === 'none' ? null : { diameterMm: HOLE_SHARE * circleMm, countersinkMm: COUNTERSINK_SHARE * circleMm, countersinks: COUNTERSINKS[fixing.hole] },
    corner: first === undefined || tip === null ? null : { vertex: first.at, tip, isRadiusKnown: dimensions.cornerRadius !== null },
    mFrom: dimensions.controlDimension === null ? null : dimensions.controlDimension.rule === 'even' ? { x: circleMm / 2, y: 0 } : { x: 0, y: circleMm / 2 },
    edge: edgeOf(vertices.map(({ at }) => at)), section: sectionOf(dimensions, circleMm), extent: extentOf(vertices.map(({ at }) => at), circleMm / 2),
  };
}

type Vertex = { readonly at: PlanePoint; readonly isCorner: boolean };
const rad = (deg: number): number => (deg * Math.PI) / 180;
const polar = (distance: number, deg: number): PlanePoint => ({ x: distance * Math.cos(rad(deg)), y: distance * Math.sin(rad(deg)) });
const scaled = ({ x, y }: PlanePoint, share: number): PlanePoint => ({ x: x * share, y: y * share });
const length = ({ x, y }: PlanePoint): number => Math.hypot(x, y);
const halfAngle = ({ includedAngleDeg }: InsertDimensions): number => rad((includedAngleDeg ?? 180) / 2);

/** Theoretical corners about a circle of this radius, clockwise as seen, the dimensioned one first. */
function verticesOf(shape: ShapeLetter, radius: number): readonly Vertex[] {
  const { form, includedAngleDeg } = SHAPES[shape];
  if (includedAngleDeg === null) return [];
  if (form === 'rhombus') {
    const [far, near] = [radius / Math.sin(rad(includedAngleDeg / 2)), radius / Math.cos(rad(includedAngleDeg / 2))];
    return [0, 90, 180, 270].map((deg) => ({ at: polar(deg % 180 === 0 ? far : near, deg), isCorner: true }));
  }
  if (form === 'trigon') {
    // Angles of 80° and 160° in turn; the blunt ones are no cutting corners and stay unrounded.
    return [0, 60, 120, 180, 240, 300].map((deg) => ({ at: polar(radius / Math.sin(rad(deg % 120 === 0 ? 40 : 80)), deg), isCorner: deg % 120 === 0 }));
  }
  const count = Math.round(360 / (180 - includedAngleDeg));
  const startDeg = count % 2 === 0 ? 0 : -90;
  return Array.from({ length: count }, (_, at) => ({ at: polar(radius / Math.cos(Math.PI / count), startDeg + (360 * at) / count), isCorner: true }));
}

/** A polygon with tangent arcs in its corners, clockwise as seen. */
function rounded(corners: readonly { readonly at: PlanePoint; readonly radiusMm: number }[]): ClosedOutline {
  const legs = corners.map(({ at, radiusMm }, index) => {
    const before = corners.at(index - 1)?.at ?? at;
    const after = corners[(index + 1) % corners.length]?.at ?? at;
    const [back, ahead] = [unit(at, before), unit(at, after)];
    const half = Math.acos(back.x * ahead.x + back.y * ahead.y) / 2;
    const tangent = radiusMm / Math.tan(half);
    return { radiusMm, from: { x: at.x + back.x * tangent, y: at.y + back.y * tangent }, to: { x: at.x + ahead.x * tangent, y: at.y + ahead.y * tangent } };
  });
  const start = legs[0]?.from ?? { x: 0, y: 0 };
  const steps = legs.flatMap(({ radiusMm, from, to }, index): OutlineStep[] => [
    ...(index === 0 ? [] : [{ kind: 'line', to: from } as const]), ...(radiusMm === 0 ? [] : [{ kind: 'arc', to, radiusMm } as const]),
  ]);
  return { start, steps: [...steps, { kind: 'line', to: start }] };
}

function circle(radiusMm: number): ClosedOutline {
  const [right, left] = [{ x: radiusMm, y: 0 }, { x: -radiusMm, y: 0 }];
  return { start: right, steps: [{ kind: 'arc', to: left, radiusMm }, { kind: 'arc', to: right, radiusMm }] };
}

function unit(from: PlanePoint, to: PlanePoint): PlanePoint {
  return scaled({ x: to.x - from.x, y: to.y - from.y }, 1 / Math.hypot(to.x - from.x, to.y - from.y));
}

/** The edge that lies most to the top and a little to the left, where its length has room beside d. */
function edgeOf(vertices: readonly PlanePoint[]): readonly [PlanePoint, PlanePoint] | null {
  const edges = vertices.map((from, index) => [from, vertices[(index + 1) % vertices.length] ?? from] as const);
  const upperLeft = ([from, to]: readonly [PlanePoint, PlanePoint]): number => -(from.x + to.x) - 2 * (from.y + to.y);
  return edges.reduce<readonly [PlanePoint, PlanePoint] | null>((best, edge) => (best === null || upperLeft(edge) > upperLeft(best) + 1e-9 ? edge : best), null);
}

function sectionOf({ thickness, clearanceDeg }: InsertDimensions, circleMm: number): InsertOutline['section'] {
  const seatMm = circleMm - 2 * thickness.nominalMm * Math.tan(rad(clearanceDeg ?? 0));
  return seatMm > 0 ? { topMm: circleMm, seatMm, thicknessMm: thickness.nominalMm } : null;
}

function extentOf(vertices: readonly PlanePoint[], radius: number): InsertOutline['extent'] {
  const points = vertices.length === 0 ? [{ x: radius, y: radius }, { x: -radius, y: -radius }] : vertices;
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
