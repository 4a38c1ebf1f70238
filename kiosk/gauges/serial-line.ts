/** Longest line that is still one of a gauge; more without an end is noise at the wrong speed. */
const longestLine = 200;

/** Puts the pieces a serial port delivers together to lines, whether they end with CR, LF or both. */
export class LineJoiner {
  #rest = '';

  /** @returns the lines that this piece has ended, empty ones left out */
  take(piece: string): readonly string[] {
    const parts = (this.#rest + piece).split(/[\r\n]+/);
    this.#rest = (parts.pop() ?? '').slice(-longestLine);
    return parts.filter((line) => line.trim() !== '');
  }
}
