import { archimedesDensity, craterThicknessUm, fullSaturation, linearShrinkage, relativeSaturationPercent } from '../../carbide/index.ts';
import { refuse } from '../pen.ts';
import type { Measured } from '../plan/characteristic.ts';
import type { WantedEntry } from '../refusal.ts';
import type { ReadingInputs } from './slips.ts';

/** The value that follows from what was read, stated to the characteristic's decimals; the inputs stay on the slip as read. */
export function workOut(characteristic: Measured, value: number | string | boolean | null, inputs: ReadingInputs | undefined): number {
  const { entry, name, decimals, unit } = characteristic;
  const wanted = (what: WantedEntry, of: string): never => refuse({ code: 'wrongKindOfEntry', characteristic: name, wanted: what, unit: of });
  if (entry.how === 'craterLayer') return wanted('craterOfAnother', entry.of);
  if (value !== null) return wanted('whatWasRead', '');
  switch (entry.how) {
    case 'direct': return wanted('number', unit);
    case 'crater': {
      if (entry.layers !== undefined) {
        if (inputs === undefined || !('diametersMm' in inputs) || inputs.diametersMm.length !== entry.layers + 1) return wanted('layerDiameters', 'mm');
        const { diametersMm } = inputs;
        requireShrinking(name, diametersMm, entry.ballDiameterMm);
        return roundTo(craterThicknessUm({ ballDiameterMm: entry.ballDiameterMm, outerMm: diametersMm[0] ?? Number.NaN, innerMm: diametersMm.at(-1) ?? Number.NaN }).exactUm, decimals);
      }
      if (inputs === undefined || !('outerMm' in inputs)) return wanted('craterDiameters', 'mm');
      requireShrinking(name, [inputs.outerMm, inputs.innerMm], entry.ballDiameterMm);
      return roundTo(craterThicknessUm({ ballDiameterMm: entry.ballDiameterMm, ...inputs }).exactUm, decimals);
    }
    case 'shrinkage': {
      const greenRead = entry.greenRead === true;
      if (inputs === undefined || !('sinteredMm' in inputs) || (inputs.greenMm !== undefined) !== greenRead) return wanted(greenRead ? 'greenAndSintered' : 'sinteredLength', 'mm');
      const { sinteredMm, greenMm = entry.dieMm } = inputs;
      if (!Number.isFinite(greenMm)) return refuse({ code: 'valueImpossible', characteristic: name, value: greenMm, why: 'notFinite', detail: '' });
      if (!(sinteredMm > 0 && sinteredMm < greenMm)) return refuse({ code: 'valueImpossible', characteristic: name, value: sinteredMm, why: 'largerThanDie', detail: String(greenMm) });
      return roundTo(100 * linearShrinkage(greenMm, sinteredMm), decimals);
    }
    case 'archimedes': {
      if (inputs === undefined || !('massInAirG' in inputs)) return wanted('weighings', '');
      const { massInAirG, massInWaterG, waterTemperatureC } = inputs;
      if (!(massInWaterG >= 0 && massInWaterG < massInAirG)) return refuse({ code: 'valueImpossible', characteristic: name, value: massInWaterG, why: 'gainsInWater', detail: `${massInWaterG} < ${massInAirG} g` });
      if (!(waterTemperatureC >= 0 && waterTemperatureC <= 40)) return refuse({ code: 'valueImpossible', characteristic: name, value: waterTemperatureC, why: 'waterTemperature', detail: '0 … 40' });
      return roundTo(archimedesDensity(inputs), decimals);
    }
    case 'saturation': {
      if (inputs === undefined || !('saturation' in inputs)) return wanted('saturation', entry.unit);
      const most = fullSaturation(1, inputs.unit).value;
      if (!(inputs.saturation > 0 && inputs.saturation <= most)) return refuse({ code: 'valueImpossible', characteristic: name, value: inputs.saturation, why: 'notASaturation', detail: `${Number(most.toFixed(1))} ${inputs.unit}` });
      return roundTo(relativeSaturationPercent({ value: inputs.saturation, unit: inputs.unit }, entry.cobaltFraction), decimals);
    }
  }
}

/** Diameters of a crater from the surface inward lie each inside the one before, and all inside the ball. */
function requireShrinking(name: string, diametersMm: readonly number[], ballDiameterMm: number): void {
  const wrong = diametersMm.find((each, at) => !(each >= 0 && each < (diametersMm[at - 1] ?? ballDiameterMm)));
  if (wrong !== undefined) refuse({ code: 'valueImpossible', characteristic: name, value: wrong, why: 'craterNotConcentric', detail: [...[...diametersMm].reverse(), ballDiameterMm].join(' < ') });
}

/** Rounds half away from the lower neighbour, as a bench would write it. */
export function roundTo(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals;
}
