import { ADHESION_CLASSES, porosityLevels, porosityRank, type PorosityType } from '../../../shared/carbide/index.ts';
import type { RatingReference } from '../../../shared/traveller/index.ts';
import { ratingReferenceWords as words } from '../../../shared/words/rating-references.en.ts';
import type { RatingPicture } from '../../parts/gh-rating-picture.ts';
import { format } from '../speak.ts';

/** A rating with its drawn reference and what it shows. */
export interface RatingShown { readonly picture: RatingPicture; readonly text: string }

/** The reference of one rating; null for a rating of the plant's own that no picture is drawn for. */
export function ratingShown(reference: RatingReference, rating: string): RatingShown | null {
  if (reference === 'adhesion') {
    const grade = ADHESION_CLASSES.find((each) => each === rating);
    return grade === undefined ? null : { picture: { of: 'adhesion', step: STEPS[grade] }, text: words.adhesion[grade] };
  }
  const type = TYPES[reference];
  const step = porosityRank(type, rating);
  const level = step === null ? undefined : porosityLevels(type)[step];
  if (step === null || level === undefined) return null;
  return { picture: { of: type, step, volumePercent: level.volumePercent }, text: step === 0 ? words.none[type] : levelText(level, step) };
}

const STEPS = { '0': 0, '1': 1, '2': 2, '3': 3 } as const;
const TYPES: Readonly<Record<Exclude<RatingReference, 'adhesion'>, PorosityType>> = { porosityA: 'A', porosityB: 'B', porosityC: 'C' };

function levelText({ volumePercent, poresPerCm2 }: { readonly volumePercent: number | null; readonly poresPerCm2: number | null }, step: number): string {
  if (volumePercent === null) return words.carbon[step] ?? '';
  return poresPerCm2 === null ? words.pores(format().number(volumePercent)) : words.poresAndCount(format().number(volumePercent), format().count(poresPerCm2));
}
