/** Longest pause within one run, ms: gauges and scanners that type stay well under it, people rarely do (common practice, no source). */
export const longestPauseMs = 80;

/**
 * Tells a typed figure from a scanned code. A run is keys in quick succession; once a run holds a character no figure has, the whole run
 * is somebody else's and the figure goes back to what it was before the run.
 */
export class TypedRun {
  #lastAt = Number.NEGATIVE_INFINITY;
  #before = '';
  #foreign = false;
  #tail = '';

  /**
   * Hears of one key.
   * @param atMs when it was pressed, on any steady clock
   * @param text the figure shown before this key
   * @returns whether the run had been found to be foreign
   */
  hear(atMs: number, text: string): boolean {
    if (atMs - this.#lastAt > longestPauseMs) {
      this.#before = text;
      this.#foreign = false;
      this.#tail = '';
    }
    this.#lastAt = atMs;
    return this.#foreign;
  }

  /** Whether a key at this moment would belong to the run under way. */
  isFresh(atMs: number): boolean {
    return atMs - this.#lastAt <= longestPauseMs;
  }

  /** The run is over: what comes next begins another, however soon. */
  end(): void {
    this.#lastAt = Number.NEGATIVE_INFINITY;
  }

  /**
   * What a device typed behind the figure, this key included: blanks and its unit. Once something stands there, every further key belongs to
   * it: a second figure in one run would otherwise run into the first.
   */
  behind(key: string): string {
    return (this.#tail += key);
  }
  get hasBehind(): boolean {
    return this.#tail !== '';
  }

  /** Marks the run as foreign and gives back the figure shown before it. */
  disown(): string {
    this.#foreign = true;
    return this.#before;
  }
}
