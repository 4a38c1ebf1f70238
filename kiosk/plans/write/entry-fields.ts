import { RATING_REFERENCES, SATURATION_UNITS, type Characteristic, type Graded, type Measured, type ValueEntry } from '../../../shared/traveller/index.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { choiceField, maybeNumberField, numberField, textField, wholeField, yesNoField, type EditField } from './edit-field.ts';

const words = planWritingWords.characteristic;
const HOWS = ['direct', 'crater', 'craterLayer', 'shrinkage', 'archimedes', 'saturation'] as const satisfies readonly ValueEntry['how'][];

/** How a value comes to be, and what belongs to that way. */
export function entryFields(measured: Measured): readonly EditField<Characteristic>[] {
  const { entry } = measured;
  const put = (changed: ValueEntry): Characteristic => ({ ...measured, entry: changed });
  const how = choiceField<Characteristic>('entry', words.entry, 'tiles', entry.how, HOWS.map((value) => ({ value, text: words.entries[value] })), (chosen) => put(chosen === entry.how ? entry : beginning(chosen)));
  switch (entry.how) {
    case 'direct': case 'archimedes': return [how];
    case 'crater': return [
      how, numberField('entry.ball', words.ball, entry.ballDiameterMm, (ballDiameterMm) => put({ ...entry, ballDiameterMm }), { above: 0 }, { unit: 'mm' }),
      maybeNumberField('entry.layers', words.layers, entry.layers ?? null, (layers) => put({ how: 'crater', ballDiameterMm: entry.ballDiameterMm, ...(layers === null ? {} : { layers }) }), { least: 2, most: 12 }, { hint: words.layersHint }),
    ];
    case 'craterLayer': return [
      how, textField('entry.of', words.layerOf, entry.of, (of) => put({ ...entry, of }), { most: 64 }),
      wholeField('entry.layer', words.layer, entry.layer, (layer) => put({ ...entry, layer }), { least: 1, most: 12 }),
    ];
    case 'shrinkage': return [
      how, numberField('entry.die', words.die, entry.dieMm, (dieMm) => put({ ...entry, dieMm }), { above: 0 }, { unit: 'mm' }),
      yesNoField('entry.green', words.greenRead, entry.greenRead === true, words.greenReadYes, words.greenReadNo, (read) => put({ how: 'shrinkage', dieMm: entry.dieMm, ...(read ? { greenRead: true as const } : {}) })),
    ];
    case 'saturation': {
      const { warnLowPercent = null, warnHighPercent = null, ...rest } = entry;
      const withWarnings = (low: number | null, high: number | null): Characteristic => put({ ...rest, ...(low === null ? {} : { warnLowPercent: low }), ...(high === null ? {} : { warnHighPercent: high }) });
      return [
        how, choiceField('entry.unit', words.saturationUnit, 'choice', entry.unit, SATURATION_UNITS.map((unit) => ({ value: unit, text: unit })), (chosen) => put({ ...entry, unit: SATURATION_UNITS.find((unit) => unit === chosen) ?? entry.unit })),
        numberField('entry.cobalt', words.cobalt, Number((100 * entry.cobaltFraction).toFixed(6)), (percent) => put({ ...entry, cobaltFraction: Number((percent / 100).toFixed(8)) }), { above: 0, most: 100 }, { unit: '%' }),
        maybeNumberField('entry.warnLow', words.warnLow, warnLowPercent, (low) => withWarnings(low, warnHighPercent), { least: 0, most: 100 }, { unit: '%' }),
        maybeNumberField('entry.warnHigh', words.warnHigh, warnHighPercent, (high) => withWarnings(warnLowPercent, high), { least: 0, most: 100 }, { unit: '%' }),
      ];
    }
  }
}

/** Which drawn pictures stand beside the ratings. */
export function referenceField(graded: Graded): EditField<Characteristic> {
  const { reference, ...rest } = graded;
  return choiceField('reference', words.reference, 'choice', reference ?? 'none', (['none', ...RATING_REFERENCES] as const).map((value) => ({ value, text: words.references[value] })), (chosen) => {
    const named = RATING_REFERENCES.find((each) => each === chosen);
    return named === undefined ? rest : { ...rest, reference: named };
  });
}

function beginning(how: string): ValueEntry {
  switch (HOWS.find((each) => each === how)) {
    case 'crater': return { how: 'crater', ballDiameterMm: 30 };
    case 'craterLayer': return { how: 'craterLayer', of: 'thickness', layer: 1 };
    case 'shrinkage': return { how: 'shrinkage', dieMm: 25 };
    case 'archimedes': return { how: 'archimedes' };
    case 'saturation': return { how: 'saturation', unit: 'µT·m³/kg', cobaltFraction: 0.08 };
    case 'direct': case undefined: return { how: 'direct' };
  }
}
