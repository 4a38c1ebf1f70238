/** What is stamped on the picture of a label that was not printed. */
export const labelPreviewWords = { stamp: 'PREVIEW, NOT A LABEL' };
