/** The lines of a chart, told apart by letter, dash and mark; the hue only helps. */
export const LINE_LETTERS = ['A', 'B', 'C', 'D'] as const;
export type LineLetter = (typeof LINE_LETTERS)[number];
