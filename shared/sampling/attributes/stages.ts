/** One sample of a plan that may take several. Acceptance and rejection numbers are cumulative: they are held against all found so far. */
export interface Stage {
  /** Pieces of this sample alone. */
  readonly sampleSize: number;
  /** Accept at this many or fewer; null where acceptance is not possible yet. */
  readonly ac: number | null;
  /** Reject at this many or more. */
  readonly re: number;
}

/** A plan of one sample or more. Its last stage always decides. */
export interface StagedPlan {
  readonly stages: readonly Stage[];
}
