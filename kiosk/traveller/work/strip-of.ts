import { judgedLimits } from '../../../shared/traveller/index.ts';
import type { CharacteristicWork, Measured } from '../../../shared/traveller/index.ts';
import type { StripLimits, StripLine, StripPiece } from '../../parts/gh-sample-strip.ts';
import { format, travellerWords } from '../speak.ts';

/** The strip of a measured sample: each place with its reading, or waiting for it. */
export function stripPieces(work: CharacteristicWork, characteristic: Measured, uncertainty: number, next: number | null): StripPiece[] {
  const words = travellerWords().measure.standings;
  const taken = new Map(work.readings.map((reading) => [reading.ordinal, reading.value]));
  return Array.from({ length: work.demand.n }, (_, at): StripPiece => {
    const ordinal = at + 1;
    const value = taken.get(ordinal);
    if (typeof value !== 'number') {
      const standing = ordinal === next ? 'next' : 'waiting';
      return { label: String(ordinal), value: null, text: '–', standing, standingWord: words[standing] };
    }
    const standing = standingOf(value, characteristic, uncertainty);
    return { label: String(ordinal), value, text: format().number(value, characteristic.decimals), standing, standingWord: words[standing] };
  });
}

/** Where a reading lies: within the specification and the limits as judged, outside both, or between them, within the guard band of a limit. */
export function standingOf(value: number, characteristic: Measured, uncertainty: number): 'in' | 'guard' | 'out' {
  const { lower, upper, acceptLower, acceptUpper } = judgedLimits(characteristic, uncertainty);
  const meets = !((lower !== null && value < lower) || (upper !== null && value > upper));
  const isAccepted = !((acceptLower !== null && value < acceptLower) || (acceptUpper !== null && value > acceptUpper));
  return meets && isAccepted ? 'in' : meets || isAccepted ? 'guard' : 'out';
}

/** The limits as the strip draws them; guard lines only where they differ. */
export function stripLimits(characteristic: Measured, uncertainty: number): StripLimits {
  const { lower, upper, acceptLower, acceptUpper } = judgedLimits(characteristic, uncertainty);
  const line = (value: number | null): StripLine | null => (value === null ? null : { value, text: format().number(value, characteristic.decimals) });
  return { lower: line(lower), upper: line(upper), guardLower: acceptLower === lower ? null : line(acceptLower), guardUpper: acceptUpper === upper ? null : line(acceptUpper), target: line(characteristic.target) };
}
