/** The colours of our papers; each also reads on a grey-scale print. Contrast on white: ink 16:1, soft 6:1, alarm 8:1. */
export const ink = { ink: '#1b2024', soft: '#545d64', rule: '#aab2b7', hair: '#d5dadd', wash: '#f1f2ef', alarm: '#8c1f14', paper: '#ffffff' } as const;
export type InkName = keyof typeof ink;

/** Points in a millimetre. */
export const mm = 72 / 25.4;
