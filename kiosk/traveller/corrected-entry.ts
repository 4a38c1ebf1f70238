import { askedInputs, inputsFrom, type Characteristic, type ReadingInputs } from '../../shared/traveller/index.ts';

/** What a corrected reading enters; null while a field is empty or no number. `typed`: one text, or one for each figure that is read. */
export function correctedEntry(characteristic: Characteristic, typed: readonly string[], parse: (text: string) => number | null): { readonly value: number | string | boolean | null; readonly inputs?: ReadingInputs } | null {
  const [first = ''] = typed;
  if (first.trim() === '') return null;
  switch (characteristic.kind) {
    case 'graded': return { value: first };
    case 'confirmed': return { value: first === 'yes' };
    case 'counted': return null;
    case 'measured': {
      const asked = askedInputs(characteristic.entry);
      const figures = (asked.length === 0 ? [first] : typed).map(parse);
      const [value] = figures;
      if (figures.some((figure) => figure === null) || value === undefined) return null;
      if (asked.length === 0) return { value };
      const inputs = inputsFrom(characteristic.entry, figures.filter((figure) => figure !== null));
      return inputs === null ? null : { value: null, inputs };
    }
  }
}
