const ISO = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?\s*(Z|[+-]\d{2}:?\d{2})?$/i;
const MS_A_MINUTE = 60_000;

/**
 * Minutes since 1970 of a date and time by ISO 8601, with seconds or without; null where the text is none or names a day or hour that does
 * not exist. Without a zone it counts as UTC: only differences are used, so a change to summer time within a run shows as a gap or as time running back.
 */
export function readLogTime(text: string): number | null {
  const [found, year = '', month = '', day = '', hour = '', minute = '', second = '0', fraction = '0', zone = 'Z'] = ISO.exec(text) ?? [];
  if (found === undefined || Number(hour) > 23 || Number(minute) > 59 || Number(second) > 59) return null;
  const midnight = Date.UTC(Number(year), Number(month) - 1, Number(day));
  const is = new Date(midnight);
  if (is.getUTCMonth() + 1 !== Number(month) || is.getUTCDate() !== Number(day)) return null;
  return midnight / MS_A_MINUTE + Number(hour) * 60 + Number(minute) + Number(`${second}.${fraction}`) / 60 - offsetMin(zone);
}

function offsetMin(zone: string): number {
  const [, sign, hours = '0', minutes = '0'] = /^([+-])(\d{2}):?(\d{2})$/.exec(zone) ?? [];
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes));
}
