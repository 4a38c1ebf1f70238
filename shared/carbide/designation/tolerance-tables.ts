import type { Evidence } from './evidence.ts';
import type { ToleranceClass } from './letters.ts';
import type { ShapeLetter } from './shapes.ts';

/** ± of one class, mm; `bySize` where it depends on the shape and the circle. */
export type ClassRow = { readonly d: number | 'bySize'; readonly m: number | 'bySize'; readonly s: number };

/** @see ISO 1832 position 3 (memory; high trust) */
export const CLASS_ROWS: Readonly<Record<ToleranceClass, ClassRow>> = {
  A: { d: 0.025, m: 0.005, s: 0.025 }, F: { d: 0.013, m: 0.005, s: 0.025 }, C: { d: 0.025, m: 0.013, s: 0.025 }, H: { d: 0.013, m: 0.013, s: 0.025 },
  E: { d: 0.025, m: 0.025, s: 0.025 }, G: { d: 0.025, m: 0.025, s: 0.13 },
  J: { d: 'bySize', m: 0.005, s: 0.025 }, K: { d: 'bySize', m: 0.013, s: 0.025 }, L: { d: 'bySize', m: 0.025, s: 0.025 },
  M: { d: 'bySize', m: 'bySize', s: 0.13 }, N: { d: 'bySize', m: 'bySize', s: 0.025 }, U: { d: 'bySize', m: 'bySize', s: 0.13 },
};

/** ± by circle, mm: `d` of J K L M N, `dU` of U, `m` of M N, `mU` of U; null where the table is not in hand. */
export type SizeRow = { readonly nominalMm: number; readonly d: number; readonly dU: number | null; readonly m: number; readonly mU: number | null; readonly evidence: Evidence };

type Figures = readonly [d: number, dU: number | null, m: number, mU: number | null];
const row = (nominalMm: number, [d, dU, m, mU]: Figures, evidence: Evidence = 'memory'): SizeRow => ({ nominalMm, d, dU, m, mU, evidence });
const [SMALL, MIDDLE, LARGE, WIDE, WIDEST]: readonly [Figures, Figures, Figures, Figures, Figures] = [
  [0.05, 0.08, 0.08, 0.13], [0.08, 0.13, 0.13, 0.2], [0.1, 0.18, 0.15, 0.27], [0.13, 0.25, 0.18, 0.38], [0.15, 0.25, 0.2, 0.38],
];

const REGULAR: readonly SizeRow[] = [
  row(4.76, SMALL), row(5.56, SMALL), row(6, SMALL), row(6.35, SMALL, 'memoryAgrees'), row(7.94, SMALL), row(8, SMALL), row(9.525, SMALL, 'memoryAgrees'), row(10, SMALL),
  row(12, MIDDLE), row(12.7, MIDDLE, 'memoryAgrees'), row(15.875, LARGE, 'memoryAgrees'), row(16, LARGE), row(19.05, LARGE, 'memoryAgrees'), row(20, LARGE),
  row(25, WIDE), row(25.4, WIDE, 'memoryAgrees'), row(31.75, WIDEST), row(32, WIDEST),
];
const RHOMBUS_55: readonly SizeRow[] = [
  row(5.56, [0.05, null, 0.11, null]), row(6.35, [0.05, null, 0.11, null], 'memoryAgrees'), row(7.94, [0.05, null, 0.11, null]), row(9.525, [0.05, null, 0.11, null], 'memoryAgrees'),
  row(12.7, [0.08, null, 0.15, null], 'memoryAgrees'), row(15.875, [0.1, null, 0.18, null], 'memoryAgrees'), row(19.05, [0.1, null, 0.18, null], 'memoryAgrees'),
];
const RHOMBUS_35: readonly SizeRow[] = [
  row(6.35, [0.05, null, 0.16, null], 'memoryAgrees'), row(7.94, [0.05, null, 0.16, null]), row(9.525, [0.05, null, 0.16, null], 'memoryAgrees'), row(12.7, [0.08, null, 0.2, null]),
];

/** Shape V with d 12.7: its ± of m changed between the editions of 2004 and 2017, and the remembered 0.20 may be either. */
export const M_CHANGED_BY_EDITION = { shape: 'V', nominalMm: 12.7 } as const;

/**
 * The table that a shape's size-dependent limits stand in; null for L, A, B and K, whose limits are not in hand.
 * @see ISO 1832 (memory; each row says whether it agrees with reproductions seen)
 */
export function sizeRows(shape: ShapeLetter): readonly SizeRow[] | null {
  switch (shape) {
    case 'D': return RHOMBUS_55;
    case 'V': return RHOMBUS_35;
    case 'L': case 'A': case 'B': case 'K': return null;
    default: return REGULAR;
  }
}
