import type { ValueEntry } from '../plan/characteristic.ts';
import type { ReadingInputs } from './slips.ts';

/** One figure to be read at the piece before its value can be worked out. `nth` and `of` count diameters from the surface. */
export interface AskedInput {
  readonly what: 'outerDiameter' | 'innerDiameter' | 'ringDiameter' | 'greenSize' | 'sinteredLength' | 'massInAir' | 'massInWater' | 'waterTemperature' | 'saturation';
  readonly unit: string;
  readonly nth: number;
  readonly of: number;
}

/** What is read at one piece, in turn; empty where the value itself is entered, or where another characteristic's crater gives it. */
export function askedInputs(entry: ValueEntry): readonly AskedInput[] {
  const asked = (...figures: readonly (readonly [AskedInput['what'], string])[]): AskedInput[] => figures.map(([what, unit], at) => ({ what, unit, nth: at + 1, of: figures.length }));
  switch (entry.how) {
    case 'direct': case 'craterLayer': return [];
    case 'crater':
      if (entry.layers === undefined) return asked(['outerDiameter', 'mm'], ['innerDiameter', 'mm']);
      return asked(...Array.from({ length: entry.layers + 1 }, () => ['ringDiameter', 'mm'] as const));
    case 'shrinkage': return entry.greenRead === true ? asked(['greenSize', 'mm'], ['sinteredLength', 'mm']) : asked(['sinteredLength', 'mm']);
    case 'archimedes': return asked(['massInAir', 'g'], ['massInWater', 'g'], ['waterTemperature', '°C']);
    case 'saturation': return asked(['saturation', entry.unit]);
  }
}

/** The figures of one piece, in the order they are asked for, as a reading keeps them; null while some are missing or where none are asked for. */
export function inputsFrom(entry: ValueEntry, figures: readonly number[]): ReadingInputs | null {
  const [first, second, third] = figures;
  if (first === undefined || figures.length !== askedInputs(entry).length) return null;
  switch (entry.how) {
    case 'direct': case 'craterLayer': return null;
    case 'crater':
      if (entry.layers !== undefined) return { diametersMm: figures };
      return second === undefined ? null : { outerMm: first, innerMm: second };
    case 'shrinkage':
      if (entry.greenRead !== true) return { sinteredMm: first };
      return second === undefined ? null : { greenMm: first, sinteredMm: second };
    case 'archimedes': return second === undefined || third === undefined ? null : { massInAirG: first, massInWaterG: second, waterTemperatureC: third };
    case 'saturation': return { saturation: first, unit: entry.unit };
  }
}
