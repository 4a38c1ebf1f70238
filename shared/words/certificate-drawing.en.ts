/** What the drawing page of a certificate says. Figures come in written. */
export const certificateDrawingWords = {
  heading: (designation: string) => `Drawing from the designation ${designation}`,
  unreadable: (designation: string) => `“${designation}” is no designation of ISO 1832 that can be read; the product is made to the plant’s own drawing, and none is derived here.`,
  positions: { at: 'Position', signs: 'Signs', what: 'What it is', says: 'What it says' },
  figure: (designation: string, sizes: string) => `Plan and section of ${designation}: ${sizes}`,
  noFigure: 'There is no drawing: the code does not settle the inscribed circle.',
  sizes: { size: 'Size', target: 'Target mm', plusMinus: '± mm', lower: 'Least mm', upper: 'Greatest mm', source: 'How it is known' }, none: '–',
  absent: 'The code does not give it.',
  notes: (edition: string) => [
    `Targets and limits are those of ${edition} for this designation, before coating. The tables are held from memory of the standard, compared in part with public texts as said beside each; edge length and control dimension m are worked out from geometry.`,
    'The limits this lot was judged by stand in the table of measured characteristics of this certificate; the plan may set others, such as limits after coating.',
    'This page follows from the designation alone. The seal is over the certificate’s data, which holds the designation, and not over this page. Hole and chip breaker are drawn without their dimensions; the code gives none.',
  ],
} as const;
