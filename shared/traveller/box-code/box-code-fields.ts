/**
 * What the two-dimensional code of a box says. Identifiers: ISO/IEC 15418 (ANSI MH10.8.2).
 * Text fields hold only `A–Z`, `0–9` and `-`, so that a keyboard of any layout passes them on unharmed.
 */
export interface BoxCodeFields {
  /** `1P`, the item as the plant numbers it, 1 … 25 characters, no spaces. */
  readonly item: string;
  /** `1T`, the lot, 1 … 20 characters. */
  readonly lot: string;
  /** `S`, the box's own number, unique for all time, 1 … 20 characters. */
  readonly serial?: string;
  /** `Q`, pieces in the box, 1 … 99 999 999. */
  readonly quantity: number;
  /** `9D`, the day of packing, `YYYY-MM-DD`. One day at least must stand: this or `producedOn`. */
  readonly packedOn?: string;
  /** `16D`, the day of production, `YYYY-MM-DD`. */
  readonly producedOn?: string;
  /** `4L`, country of origin, two letters of ISO 3166-1. */
  readonly country?: string;
}

/** The identifiers a box of this plant carries, in the order they are written. */
export const boxIdentifiers = ['1P', '1T', 'S', 'Q', '9D', '16D', '4L'] as const;
export type BoxIdentifier = (typeof boxIdentifiers)[number];

/** Which field stands behind each identifier, and how long its value may be (common practice, no source: the standard sets no maximum). */
export const boxFieldOf: Readonly<Record<BoxIdentifier, { readonly field: keyof BoxCodeFields; readonly most: number }>> = {
  '1P': { field: 'item', most: 25 },
  '1T': { field: 'lot', most: 20 },
  S: { field: 'serial', most: 20 },
  Q: { field: 'quantity', most: 8 },
  '9D': { field: 'packedOn', most: 8 },
  '16D': { field: 'producedOn', most: 8 },
  '4L': { field: 'country', most: 2 },
};

/** ISO/IEC 15434: the separators of a message. */
export const recordSeparator = '\u001e';
export const groupSeparator = '\u001d';
export const endOfTransmission = '\u0004';
export const messageHeader = `[)>${recordSeparator}`;

/** Why one value cannot stand in the code. */
export type BoxValueFault =
  | { readonly code: 'emptyValue'; readonly identifier: BoxIdentifier }
  | { readonly code: 'valueTooLong'; readonly identifier: BoxIdentifier; readonly most: number; readonly length: number }
  | { readonly code: 'characterNotAllowed'; readonly identifier: BoxIdentifier; readonly character: string }
  | { readonly code: 'quantityNotWhole'; readonly value: string }
  | { readonly code: 'noSuchDay'; readonly identifier: BoxIdentifier; readonly value: string }
  | { readonly code: 'countryNotTwoLetters'; readonly value: string };

/** Why a scanned text is not the code of a box. Each is a different mistake of a printer, a scanner or a person. */
export type BoxCodeFault =
  | BoxValueFault
  | { readonly code: 'separatorsLost' }
  | { readonly code: 'noMessageHeader' }
  | { readonly code: 'formatIsNot06'; readonly format: string }
  | { readonly code: 'noSeparatorAfterFormat' }
  | { readonly code: 'noEndOfTransmission' }
  | { readonly code: 'noFormatTrailer' }
  | { readonly code: 'separatorBeforeTrailer' }
  | { readonly code: 'severalRecords' }
  | { readonly code: 'textAfterEnd' }
  | { readonly code: 'emptyField' }
  | { readonly code: 'identifierInLowerCase'; readonly identifier: string }
  | { readonly code: 'identifierNotOurs'; readonly text: string }
  | { readonly code: 'identifierTwice'; readonly identifier: BoxIdentifier }
  | { readonly code: 'identifierMissing'; readonly identifier: BoxIdentifier };
