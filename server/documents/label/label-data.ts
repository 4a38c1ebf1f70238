import type { BoxLabelWords } from '../../../shared/words/box-label.en.ts';

/** What one box label says. Days are `YYYY-MM-DD`. */
export interface BoxLabelData {
  readonly plant: string;
  /** Designation as people read it, ISO 1832; the code carries `item`. */
  readonly designation: string;
  /** The item number in the code, `A–Z 0–9 -`, at most 25. */
  readonly item: string;
  readonly grade: string;
  /** Null for an uncoated insert. */
  readonly coating: string | null;
  readonly quantity: number;
  readonly lot: string;
  readonly boxSerial: string;
  readonly packedOn: string;
  readonly certificateNumber: string | null;
  /** ISO 3166-1, two letters. */
  readonly country?: string;
  readonly customerItem?: string;
  /** 0 for the first print, then how many times it was printed anew. */
  readonly reprint: number;
  readonly demo: boolean;
}

/** Width by height in millimetres. */
export const labelSizes = {
  '100x50': { widthMm: 100, heightMm: 50 },
  '70x35': { widthMm: 70, heightMm: 35 },
  '100x70': { widthMm: 100, heightMm: 70 },
} as const;
export type LabelSize = keyof typeof labelSizes;

/**
 * Dots a millimetre of the two usual label printers. "203 dpi" heads have exactly 8 dots a millimetre, so a module of 2 dots is 0.250 mm;
 * "300 dpi" is taken at its word, 3 dots are 0.254 mm (derived).
 */
export const dotsPerMm = { 203: 8, 300: 300 / 25.4 } as const;
export type PrinterDpi = keyof typeof dotsPerMm;

export interface LabelChoice {
  /** Default `100x50`. */
  readonly size?: LabelSize;
  /** Default 203. */
  readonly dpi?: PrinterDpi;
  /** Default English. */
  readonly words?: BoxLabelWords;
}
