/** What a slip tells: one sentence, and lines of detail that may be folded away. */
export interface Said {
  readonly sentence: string;
  readonly lines: readonly string[];
}
