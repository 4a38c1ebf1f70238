/** Thrown at a programmer: an argument lies outside what the function is defined for. What people enter is read by shared/wire and judged by shared/traveller before it gets so far. */
export class OutsideDomain extends RangeError {
  constructor(argument: string, domain: string, value: unknown) {
    super(`${argument} must be ${domain}; it was ${String(value)}`);
    this.name = 'OutsideDomain';
  }
}

/** @throws OutsideDomain unless `value` is a whole number, least ≤ value ≤ most. */
export function requireWhole(argument: string, value: number, least: number, most: number): void {
  if (!Number.isSafeInteger(value) || value < least || value > most) throw new OutsideDomain(argument, `a whole number ${least} … ${most}`, value);
}

/** @throws OutsideDomain unless `value` is a finite number, least ≤ value ≤ most. */
export function requireFinite(argument: string, value: number, least = -Infinity, most = Infinity): void {
  if (!Number.isFinite(value) || value < least || value > most) throw new OutsideDomain(argument, `a finite number ${least} … ${most}`, value);
}
