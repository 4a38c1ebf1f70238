import { readNumber } from '../desk/show.ts';

const largestLot = 999_999_999;

/** The lot size typed; null where there is none. */
export function sizeOf(text: string): number | null {
  const size = readNumber(text);
  return size !== null && Number.isInteger(size) && size >= 2 && size <= largestLot ? size : null;
}
