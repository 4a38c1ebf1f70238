/** Where a slipped decimal point or a wrong sign would explain an unlikely value: the one likely value, else null. */
export function likelierValue(value: number, least: number, most: number): number | null {
  const fits = [-value, ...[10, 100, 1000, 0.1, 0.01, 0.001].map((factor) => Number((value * factor).toPrecision(12)))].filter((each) => each >= least && each <= most);
  return fits.length === 1 ? fits[0] ?? null : null;
}
