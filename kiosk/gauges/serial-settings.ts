/** How a port is opened. The settings of a gauge stand in its manual. */
export interface SerialSettings { readonly baudRate: number; readonly dataBits: 7 | 8; readonly parity: 'none' | 'even' | 'odd'; readonly stopBits: 1 | 2 }

export const BAUD_RATES = [1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200] as const;
/** What most bench gauges are set to as they come (common practice, no source). */
export const USUAL_SETTINGS: SerialSettings = { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1 };

const KEY = 'gatehand-serial';

/** The settings this kiosk last opened a port with. */
export function rememberedSettings(): SerialSettings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    return isSettings(kept) ? kept : USUAL_SETTINGS;
  } catch {
    // Nothing that can be read is kept: the usual ones stand.
    return USUAL_SETTINGS;
  }
}
export function rememberSettings(settings: SerialSettings): void {
  localStorage.setItem(KEY, JSON.stringify(settings));
}

function isSettings(kept: unknown): kept is SerialSettings {
  return typeof kept === 'object' && kept !== null && 'baudRate' in kept && BAUD_RATES.some((rate) => rate === kept.baudRate) && 'dataBits' in kept && (kept.dataBits === 7 || kept.dataBits === 8)
    && 'parity' in kept && ['none', 'even', 'odd'].some((parity) => parity === kept.parity) && 'stopBits' in kept && (kept.stopBits === 1 || kept.stopBits === 2);
}
