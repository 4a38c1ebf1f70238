import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { darkRuns, type ModuleMatrix } from '../codes/module-matrix.ts';
import type { LabelMark } from './label-layout.ts';

/** Where a code may stand: right-aligned, between top and bottom, no wider than `mostMm` with its quiet zone. Millimetres. */
export interface CodePlace {
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly mostMm: number;
  readonly dotsPerMm: number;
}

/** Least module of a label, millimetres (common practice; usual for box labels 0.25 … 0.38, from memory). */
const leastModuleMm = 0.25;
/** A scanner held at arm's length reads this; larger only eats paper. */
const mostModuleMm = 0.65;
/** Modules left white on every side. The standard asks for one (ISO/IEC 16022, from memory); two forgive a crooked label. */
const quietModules = 2;

/**
 * The code as bars, each module a whole number of printer dots and every corner on a dot, so that no printer rounds them unequal.
 * @throws OutsideDomain when even the least module does not fit
 */
export function placeCode(matrix: ModuleMatrix, place: CodePlace): readonly LabelMark[] {
  const sideMm = Math.min(place.mostMm, place.bottom - place.top);
  const across = matrix.modules + 2 * quietModules;
  const dots = Math.min(Math.floor((sideMm * place.dotsPerMm) / across), Math.floor(mostModuleMm * place.dotsPerMm));
  const moduleMm = dots / place.dotsPerMm;
  if (moduleMm < leastModuleMm) throw new OutsideDomain('matrix.modules', `small enough for ${sideMm} mm at ${leastModuleMm} mm a module`, matrix.modules);
  const onDot = (mm: number): number => Math.round(mm * place.dotsPerMm) / place.dotsPerMm;
  const left = onDot(place.right - matrix.modules * moduleMm);
  const top = onDot(place.top + (place.bottom - place.top - matrix.modules * moduleMm) / 2);
  return darkRuns(matrix).map(({ x, y, length }) => ({
    kind: 'bar', x: left + x * moduleMm, y: top + y * moduleMm, widthMm: length * moduleMm, heightMm: moduleMm, ink: 'black',
  }));
}
