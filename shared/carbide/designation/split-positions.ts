/** The text of each position, before it is judged; an empty text where nothing stands. */
export type SplitDesignation = {
  readonly letters: readonly [string, string, string, string];
  /** Letters between the fourth and the size, which belong nowhere. */
  readonly surplus: string;
  readonly size: string;
  readonly thickness: string;
  readonly corner: string;
  /** What stands behind the corner, up to the dash. */
  readonly rest: string;
  /** What stands behind the dash; null without a dash. */
  readonly sign: string | null;
};

const LONGEST = 60;

/** Capitals, without blanks; every kind of dash a plain one. */
export function normaliseDesignation(text: string): string {
  return text.normalize('NFKC').replace(/\s+/gu, '').replace(/[\u2010-\u2015\u2212]/gu, '-').toUpperCase();
}

/**
 * Cuts a normalised designation into its positions. Decoding goes by position, never by letter: E, F and N mean different things in different
 * places. Where letters stand before the size in a wrong number, the digits are found first, so that one slip makes one complaint.
 */
export function splitPositions(normalised: string): SplitDesignation {
  const text = normalised.slice(0, LONGEST);
  const dash = text.indexOf('-');
  const body = dash < 0 ? text : text.slice(0, dash);
  const sign = dash < 0 ? null : text.slice(dash + 1);
  const letterRun = /^[A-Z]*(?=\d\d(?:[\dT]|$))/.exec(body)?.[0];
  const headEnd = letterRun === undefined ? 4 : letterRun.length;
  const head = body.slice(0, headEnd);
  const tail = body.slice(headEnd);
  const digits = tail.slice(4);
  const corner = /^005(?!\d)/.test(digits) ? '005' : digits.slice(0, 2);
  return {
    letters: [head.slice(0, 1), head.slice(1, 2), head.slice(2, 3), head.slice(3, 4)],
    surplus: head.slice(4), size: tail.slice(0, 2), thickness: tail.slice(2, 4), corner, rest: digits.slice(corner.length), sign,
  };
}
