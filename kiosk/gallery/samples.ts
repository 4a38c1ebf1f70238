import type { Carrier, StripLimits, StripPiece } from '../parts/index.ts';

/* Invented figures for the gallery only. */
const standingWords: Readonly<Record<StripPiece['standing'], string>> = {
  in: 'within limits', guard: 'in the guard band', out: 'outside limits', missing: 'missing', waiting: 'still to come', next: 'next',
};

/** The limits of an invented thickness, 4.76 mm with guard bands. */
export const thicknessLimits: StripLimits = {
  lower: { value: 4.735, text: '4.735' },
  upper: { value: 4.785, text: '4.785' },
  guardLower: { value: 4.74, text: '4.740' },
  guardUpper: { value: 4.78, text: '4.780' },
  target: { value: 4.76, text: '4.760' },
};

/** A strip's pieces from short notation: a number with its standing, or a standing alone. */
export function piecesOf(notes: readonly (readonly [number, StripPiece['standing']] | StripPiece['standing'])[]): StripPiece[] {
  return notes.map((note, at) => {
    const [value, standing] = typeof note === 'string' ? [null, note] : note;
    return { label: `${at + 1}`, value, text: value === null ? '–' : value.toFixed(3), standing, standingWord: standingWords[standing] };
  });
}

/** Eighty readings along a slow drift. */
export const longSample = piecesOf(
  Array.from({ length: 80 }, (_, at) => {
    const value = 4.757 + 0.0003 * at + 0.006 * Math.sin(at * 2.1) + 0.003 * Math.cos(at * 5.3);
    return [value, value > 4.785 ? 'out' : value > 4.78 ? 'guard' : 'in'] as const;
  }),
);

/** Trays of invented draws. */
export const trays: readonly Carrier[] = [
  { name: '2', rows: 8, columns: 10, take: [{ row: 1, column: 4, text: '1' }, { row: 3, column: 9, text: '2' }, { row: 6, column: 2, text: '3' }, { row: 8, column: 10, text: '4' }] },
  { name: '5', rows: 8, columns: 10, take: [{ row: 2, column: 2, text: '5' }, { row: 5, column: 7, text: '6' }, { row: 7, column: 1, text: '7' }] },
];
