import type { ClosedOutline, InsertOutline, PlanePoint } from './insert-outline.ts';

/** What a dimension of the drawing is: circle, control dimension, edge length, thickness, corner radius, included angle, clearance. */
export type DrawnDimension = 'd' | 'm' | 'l' | 's' | 'r' | 'angle' | 'clearance';

/** One mark of the drawing, in its own units. Who draws it brings ink and words. */
export type DrawingMark =
  /** SVG path data: the insert's outline, thin lines, dashed ones, and filled arrow heads. */
  | { readonly kind: 'path'; readonly data: string; readonly line: 'outline' | 'thin' | 'hidden' | 'solid' }
  | { readonly kind: 'text'; readonly dimension: DrawnDimension; readonly at: PlanePoint; readonly anchor: 'start' | 'middle' | 'end'; readonly turnDeg: number };

/** Size of the drawing in its own units; texts are about `textHeight` high. */
export const INSERT_DRAWING = { width: 190, height: 112, textHeight: 4.6 } as const;

const PLAN: PlanePoint = { x: 60, y: 54 };
const SECTION: PlanePoint = { x: 138, y: 52 };
const ROOM = { width: 74, height: 64, circle: 46 };
/** Between the insert and its dimension line, and what an extension line runs past it. */
const AWAY = 9;
const PAST = 2;
const HEAD = 2.4;

/**
 * The drawing of an insert with its dimension lines: plan to the left, section across the inscribed circle to the right, one scale for both.
 * @returns marks from back to front
 */
export function insertDrawing(outline: InsertOutline): readonly DrawingMark[] {
  const { extent, circleMm } = outline;
  const scale = Math.min(ROOM.width / (extent.right - extent.left), ROOM.height / (extent.bottom - extent.top), ROOM.circle / circleMm);
  const middle = { x: (extent.left + extent.right) / 2, y: (extent.top + extent.bottom) / 2 };
  const place = ({ x, y }: PlanePoint): PlanePoint => ({ x: PLAN.x + (x - middle.x) * scale, y: PLAN.y + (y - middle.y) * scale });
  return [...planMarks(outline, scale, place), ...circleMarks(outline, place), ...cornerMarks(outline, place), ...edgeMarks(outline, place), ...sectionMarks(outline, scale)];
}

type Place = (point: PlanePoint) => PlanePoint;

function planMarks({ plan, groove, hole, circleMm, corner }: InsertOutline, scale: number, place: Place): DrawingMark[] {
  const centre = place({ x: 0, y: 0 });
  const round = (diameterMm: number, line: 'thin' | 'hidden'): DrawingMark => path(circleData(centre, (diameterMm / 2) * scale), line);
  return [
    ...(corner === null ? [] : [round(circleMm, 'hidden')]), ...(groove === null ? [] : [path(outlineData(groove, scale, place), 'thin')]),
    ...(hole === null ? [] : [round(hole.diameterMm, 'thin'), ...(hole.countersinks === 0 ? [] : [round(hole.countersinkMm, 'thin')])]),
    path(outlineData(plan, scale, place), 'outline'),
  ];
}

/** d at the left, between the highest and the lowest point of the circle. */
function circleMarks({ circleMm, extent }: InsertOutline, place: Place): DrawingMark[] {
  const [top, bottom, left] = [place({ x: 0, y: -circleMm / 2 }), place({ x: 0, y: circleMm / 2 }), place({ x: extent.left, y: 0 }).x - AWAY];
  return [
    path(lineData(top, { x: left - PAST, y: top.y }), 'thin'), path(lineData(bottom, { x: left - PAST, y: bottom.y }), 'thin'),
    ...measure({ x: left, y: bottom.y }, { x: left, y: top.y }), text('d', { x: left - 1.6, y: (top.y + bottom.y) / 2 }, 'middle', -90),
  ];
}

/** m, radius and angle at the dimensioned corner. */
function cornerMarks({ corner, mFrom, extent }: InsertOutline, place: Place): DrawingMark[] {
  if (corner === null) return [];
  const tip = place(corner.tip);
  const isUp = Math.abs(corner.vertex.x) < 1e-9;
  const elbow = isUp ? { x: tip.x + 11, y: tip.y - 6 } : { x: tip.x + 4, y: tip.y - 13 };
  const leader: DrawingMark[] = [path(lineData(tip, elbow), 'thin'), text('r', { x: elbow.x + 1, y: elbow.y - 1.2 }, 'start'), text('angle', { x: elbow.x + 1, y: elbow.y - 7 }, 'start')];
  if (mFrom === null) return leader;
  const from = place(mFrom);
  if (isUp) {
    const right = place({ x: extent.right, y: 0 }).x + AWAY;
    return [
      ...leader, path(lineData(tip, { x: right + PAST, y: tip.y }), 'thin'), path(lineData(from, { x: right + PAST, y: from.y }), 'thin'),
      ...measure({ x: right, y: from.y }, { x: right, y: tip.y }), text('m', { x: right - 1.6, y: (from.y + tip.y) / 2 }, 'middle', -90),
    ];
  }
  const below = place({ x: 0, y: extent.bottom }).y + AWAY;
  return [
    ...leader, path(lineData(from, { x: from.x, y: below + PAST }), 'thin'), path(lineData(tip, { x: tip.x, y: below + PAST }), 'thin'),
    ...measure({ x: from.x, y: below }, { x: tip.x, y: below }), text('m', { x: (from.x + tip.x) / 2, y: below + 7.5 }, 'middle'),
  ];
}

/** l along an edge, between its theoretical corners. */
function edgeMarks({ edge }: InsertOutline, place: Place): DrawingMark[] {
  if (edge === null) return [];
  const [one, other] = [place(edge[0]), place(edge[1])];
  const [left, right] = one.x < other.x ? [one, other] : [other, one];
  const turn = Math.atan2(right.y - left.y, right.x - left.x);
  const outward = (by: number): PlanePoint => ({ x: Math.sin(turn) * by, y: -Math.cos(turn) * by });
  const [lineLeft, lineRight] = [add(left, outward(AWAY - 2)), add(right, outward(AWAY - 2))];
  const label = add({ x: (lineLeft.x + lineRight.x) / 2, y: (lineLeft.y + lineRight.y) / 2 }, outward(1.6));
  return [
    path(lineData(left, add(left, outward(AWAY - 2 + PAST))), 'thin'), path(lineData(right, add(right, outward(AWAY - 2 + PAST))), 'thin'),
    ...measure(lineLeft, lineRight), text('l', label, 'middle', (turn * 180) / Math.PI),
  ];
}

/** The section: thickness at the right, clearance at the left flank. */
function sectionMarks({ section, hole }: InsertOutline, scale: number): DrawingMark[] {
  if (section === null) return [];
  const [top, seat, height] = [(section.topMm / 2) * scale, (section.seatMm / 2) * scale, (section.thicknessMm / 2) * scale];
  const at = (x: number, y: number): PlanePoint => ({ x: SECTION.x + x, y: SECTION.y + y });
  const right = top + AWAY;
  const bore = hole === null ? [] : [-1, 1].map((side) => {
    const [wall, sink] = [(side * hole.diameterMm * scale) / 2, (side * hole.countersinkMm * scale) / 2];
    const depth = Math.min(Math.abs(sink - wall), 0.6 * height);
    return path(polyline([...(hole.countersinks === 0 ? [at(wall, -height)] : [at(sink, -height), at(wall, -height + depth)]), ...(hole.countersinks === 2 ? [at(wall, height - depth), at(sink, height)] : [at(wall, height)])]), 'hidden');
  });
  return [
    path(`${polyline([at(-top, -height), at(top, -height), at(seat, height), at(-seat, height)])} Z`, 'outline'), ...bore,
    path(lineData(at(top, -height), at(right + PAST, -height)), 'thin'), path(lineData(at(seat, height), at(right + PAST, height)), 'thin'),
    ...measure(at(right, height), at(right, -height)), text('s', at(right + 2, 1.6), 'start'),
    path(lineData(at(-top, -height), at(-top, height + 6)), 'thin'), text('clearance', at(-top, height + 11), 'middle'),
  ];
}

const path = (data: string, line: Extract<DrawingMark, { kind: 'path' }>['line']): DrawingMark => ({ kind: 'path', data, line });
const text = (dimension: DrawnDimension, at: PlanePoint, anchor: 'start' | 'middle' | 'end', turnDeg = 0): DrawingMark => ({ kind: 'text', dimension, at, anchor, turnDeg });
const add = (one: PlanePoint, other: PlanePoint): PlanePoint => ({ x: one.x + other.x, y: one.y + other.y });
const write = (value: number): string => String(Number(value.toFixed(3)));
const pointData = ({ x, y }: PlanePoint): string => `${write(x)} ${write(y)}`;
const polyline = (points: readonly PlanePoint[]): string => points.map((point, at) => `${at === 0 ? 'M' : 'L'} ${pointData(point)}`).join(' ');
const lineData = (from: PlanePoint, to: PlanePoint): string => polyline([from, to]);

/** A dimension line with a head at both ends; where they would touch, the heads come from outside. */
function measure(from: PlanePoint, to: PlanePoint): DrawingMark[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
  const isTight = long < 3 * HEAD;
  const head = (at: PlanePoint, way: number): DrawingMark => {
    const back = { x: at.x + way * along.x * HEAD, y: at.y + way * along.y * HEAD };
    const aside = { x: -along.y * HEAD * 0.3, y: along.x * HEAD * 0.3 };
    return path(`${polyline([at, add(back, aside), { x: back.x - aside.x, y: back.y - aside.y }])} Z`, 'solid');
  };
  const beyond = isTight ? 2 * HEAD : 0;
  const line = lineData({ x: from.x - along.x * beyond, y: from.y - along.y * beyond }, { x: to.x + along.x * beyond, y: to.y + along.y * beyond });
  return [path(line, 'thin'), head(from, isTight ? -1 : 1), head(to, isTight ? 1 : -1)];
}

function circleData(centre: PlanePoint, radius: number): string {
  const r = write(radius);
  return `M ${pointData({ x: centre.x + radius, y: centre.y })} A ${r} ${r} 0 1 1 ${pointData({ x: centre.x - radius, y: centre.y })} A ${r} ${r} 0 1 1 ${pointData({ x: centre.x + radius, y: centre.y })} Z`;
}

function outlineData({ start, steps }: ClosedOutline, scale: number, place: Place): string {
  const drawn = steps.map((step) => (step.kind === 'line' ? `L ${pointData(place(step.to))}` : `A ${write(step.radiusMm * scale)} ${write(step.radiusMm * scale)} 0 0 1 ${pointData(place(step.to))}`));
  return `M ${pointData(place(start))} ${drawn.join(' ')} Z`;
}
