import { html, nothing } from 'lit';
import { isSaturationWindow, saturationStanding, type SaturationStanding, type SaturationWindow } from '../../../shared/carbide/index.ts';
import type { CharacteristicWork, Measured } from '../../../shared/traveller/index.ts';
import { format, travellerWords } from '../speak.ts';

/** The window of a characteristic that reads a saturation; null for any other, and where one limit is open. */
export function windowOf({ entry, lower, upper }: Measured): SaturationWindow | null {
  if (entry.how !== 'saturation' || lower === null || upper === null) return null;
  const window = { lowPercent: lower, warnLowPercent: entry.warnLowPercent ?? lower, warnHighPercent: entry.warnHighPercent ?? upper, highPercent: upper };
  return isSaturationWindow(window) ? window : null;
}

/** Which way each saturation read so far lies; nothing where no saturation is read. */
export function saturationLines(work: CharacteristicWork, characteristic: Measured): unknown {
  const window = windowOf(characteristic);
  const { saturation } = travellerWords().measure.input;
  const readings = work.readings.flatMap(({ ordinal, value }): { ordinal: number; value: number; standing: SaturationStanding }[] => (window === null || typeof value !== 'number' ? [] : [{ ordinal, value, standing: saturationStanding(value, window) }]));
  if (readings.length === 0) return nothing;
  return html`<ul class="bands" aria-label=${saturation.caption}>${readings.map(({ ordinal, value, standing }) => html`<li class=${standing}>${saturation.line(ordinal, format().number(value, characteristic.decimals), saturation.standing[standing])}</li>`)}</ul>`;
}
