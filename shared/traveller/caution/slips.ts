/** Writes a caution anew: own words, or null for the tool's; `shown` false switches it off. The reason stands on the slip. */
export interface WriteCaution { readonly type: 'writeCaution'; readonly caution: string; readonly text: string | null; readonly shown: boolean; readonly reason: string }
export type CautionCommand = WriteCaution;

export type CautionSlip = { readonly type: 'cautionWritten'; readonly caution: string; readonly text: string | null; readonly shown: boolean; readonly reason: string };

/** A caution as the plant words it. Its version counts what was written; 0 is the tool's own words. */
export interface CautionState { readonly kind: 'caution'; readonly stream: string; readonly version: number; readonly caution: string; readonly text: string | null; readonly shown: boolean; readonly reason: string; readonly by: string; readonly at: string }

/** A caution as it was shown to whoever worked a gate. */
export interface CautionShown { readonly caution: string; readonly cautionVersion: number; /** The plant's own words; null for the tool's. */ readonly text: string | null }
