import type { Characteristic, ReadingInputs } from '../../shared/traveller/index.ts';

/** What a corrected reading enters; null while a field is empty or no number. */
export function correctedEntry(characteristic: Characteristic, first: string, second: string, parse: (text: string) => number | null): { readonly value: number | string | boolean | null; readonly inputs?: ReadingInputs } | null {
  if (first.trim() === '') return null;
  switch (characteristic.kind) {
    case 'graded': return { value: first };
    case 'confirmed': return { value: first === 'yes' };
    case 'counted': return null;
    case 'measured': {
      const value = parse(first);
      if (value === null) return null;
      switch (characteristic.entry.how) {
        case 'direct': return { value };
        case 'shrinkage': return { value: null, inputs: { sinteredMm: value } };
        case 'crater': {
          const innerMm = parse(second);
          return innerMm === null ? null : { value: null, inputs: { outerMm: value, innerMm } };
        }
      }
    }
  }
}
