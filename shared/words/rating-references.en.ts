import type { RatingReference } from '../traveller/index.ts';

const SECTION = 'Our drawing; figures of ISO 4499-4 from memory. The plates of the bought standard decide. The bar is 100 µm.';
/** What stands beside drawn references: what each rating shows, and how far the drawing may be trusted. */
export const ratingReferenceWords = {
  source: {
    adhesion: 'Our drawing, after the words of ISO 26443:2023 as seen in secondary text. Class limits are to be checked with the bought standard. Hardmetal: Rockwell scale A, 588.6 N, seen at 100 ×, three indents or more.',
    porosityA: SECTION, porosityB: SECTION, porosityC: 'Our drawing; free carbon is judged by the plates of ISO 4499-4 alone, and how much is drawn here is invented. The bar is 100 µm.',
  } satisfies Readonly<Record<RatingReference, string>>,
  adhesion: {
    '0': 'no cracks, nothing flaked', '1': 'cracks, nothing flaked', '2': 'flaked here and there at the rim', '3': 'flaked all around the rim',
  },
  pores: (volume: string) => `${volume} % by volume`,
  poresAndCount: (volume: string, count: string) => `${volume} % by volume, about ${count} pores a square centimetre`,
  none: { A: 'no pores seen', B: 'no pores seen', C: 'no free carbon seen' },
  carbon: ['', 'a few nests', 'some nests', 'many nests', 'nests everywhere'],
  choose: 'Which picture is it most like?',
} as const;
