import type { AskedInput } from '../traveller/index.ts';

/** What is read at a piece before its value is worked out. */
export const inputWords = {
  /** `layer`: what lies above this diameter of a crater; empty at the surface. */
  names: {
    outerDiameter: () => 'Outer diameter', innerDiameter: () => 'Inner diameter', greenSize: () => 'Green size', sinteredLength: () => 'Sintered length', massInAir: () => 'Mass in air',
    massInWater: () => 'Mass in water', waterTemperature: () => 'Water temperature', saturation: () => 'Saturation read',
    ringDiameter: ({ nth, of }, layer) => (nth === 1 ? 'Diameter at surface' : nth === of ? 'Diameter at substrate' : `Diameter under ${layer}`),
  } satisfies Readonly<Record<AskedInput['what'], (asked: AskedInput, layer: string) => string>>,
  layer: (nth: number) => `layer ${nth}`,
  keypad: (name: string, ordinal: number, where: 'place' | 'piece') => `${name}, ${where} ${ordinal}`,
  noted: (figures: string) => `noted: ${figures}`,
  again: 'This piece again',
  from: (die: string) => `pressed in a die of ${die} mm`, about: (green: string) => `pressed to about ${green} mm`,
  sameWater: (text: string) => `Water still ${text} °C`,
  layersTable: { caption: 'Thickness of each layer, µm', layer: 'Layer', limits: 'Limits', piece: (ordinal: number) => `Piece ${ordinal}`, none: '–' },
  saturation: {
    caption: 'Where the readings lie in the window',
    standing: {
      low: 'too low: short of carbon, towards η phase', warnLow: 'warning, low: towards η phase', normal: 'within the window',
      warnHigh: 'warning, high: towards free carbon', high: 'too high: too much carbon, towards free carbon',
    },
    line: (ordinal: number, percent: string, standing: string) => `${ordinal}: ${percent} %, ${standing}`,
  },
} as const;
