/** A limit or target with its words. */
export interface StripLine {
  readonly value: number;
  readonly text: string;
}

/** What a sample's readings are drawn against; `null` where there is none. */
export interface StripLimits {
  readonly lower: StripLine | null;
  readonly upper: StripLine | null;
  readonly guardLower: StripLine | null;
  readonly guardUpper: StripLine | null;
  readonly target: StripLine | null;
}

/** Where a value stands: a fraction of the height from the bottom, 0 … 1, and whether it lies beyond what is drawn. */
export interface StripPlace {
  readonly at: number;
  readonly beyond: 'no' | 'above' | 'below';
}

/**
 * The vertical scale of a sample strip. The room between the limits takes the middle three fifths, so limits never touch the edge; with one
 * limit or none the readings themselves open the scale. A reading beyond the scale is drawn at its edge and says so.
 * @param limits what is drawn as lines
 * @param values the readings, in the limits' unit
 */
export function stripScale(limits: StripLimits, values: readonly number[]): (value: number) => StripPlace {
  const [low, high] = span(limits, values);
  return (value) => {
    const at = (value - low) / (high - low);
    if (at > 0.97) return { at: 0.97, beyond: 'above' };
    if (at < 0.03) return { at: 0.03, beyond: 'below' };
    return { at, beyond: 'no' };
  };
}

function span({ lower, upper, target, guardLower, guardUpper }: StripLimits, values: readonly number[]): readonly [number, number] {
  if (lower !== null && upper !== null && upper.value > lower.value) {
    const margin = (upper.value - lower.value) / 3;
    return [lower.value - margin, upper.value + margin];
  }
  const drawn = [lower, upper, target, guardLower, guardUpper].flatMap((line) => (line === null ? [] : [line.value]));
  const all = [...drawn, ...values];
  if (all.length === 0) return [0, 1];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const margin = most > least ? (most - least) / 4 : Math.max(Math.abs(most) / 100, 1);
  return [least - margin, most + margin];
}
