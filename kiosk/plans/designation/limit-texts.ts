import { insertDimensions, insertLimits, LIMITED_SIZES } from '../../../shared/carbide/index.ts';
import type { InsertDesignation, InsertDimensions, InsertSizeLimits, LimitChoices, LimitedSize, MeasuredWhen } from '../../../shared/carbide/index.ts';
import { readNumber } from '../../desk/show.ts';

/** What a person has put in beside the designation, as typed. */
export interface LimitTexts {
  readonly circle: string;
  readonly when: MeasuredWhen['when'];
  readonly coating: string;
  readonly given: Readonly<Record<LimitedSize, string>>;
}
export const NO_LIMIT_TEXTS: LimitTexts = { circle: '', when: 'beforeCoating', coating: '8', given: { d: '', m: '', s: '' } };

/** A designation with what was put in: dimensions, limits, which sizes are asked for. */
export interface WorkedDesignation {
  readonly designation: InsertDesignation;
  readonly choices: LimitChoices;
  readonly measured: MeasuredWhen;
  readonly circle: number | null;
  readonly dimensions: InsertDimensions;
  readonly limits: Readonly<Record<LimitedSize, InsertSizeLimits>>;
  /** Sizes whose ± is not in hand, given or not. */
  readonly asked: readonly LimitedSize[];
  /** False while something asked for is lacking or cannot be read. */
  readonly isWhole: boolean;
}

/** Works a designation out with what was put in; what cannot be read is left out of account and makes it not whole. */
export function workedDesignation(designation: InsertDesignation, texts: LimitTexts): WorkedDesignation {
  const dimensions = insertDimensions(designation, readNumber(texts.circle) ?? undefined);
  const circle = dimensions.inscribedCircle?.nominalMm ?? null;
  const coatingUm = coatingOf(texts);
  const measured: MeasuredWhen = texts.when === 'afterCoating' && coatingUm !== null ? { when: 'afterCoating', coatingUm } : { when: 'beforeCoating' };
  const bare: LimitChoices = { measured, ...(circle === null ? {} : { chosenCircleMm: circle }) };
  const asked = LIMITED_SIZES.filter((size) => {
    const { targetMm, tolerance } = insertLimits(designation, bare)[size];
    return targetMm !== null && tolerance.kind === 'notInHand';
  });
  const givenMm = Object.fromEntries(asked.flatMap((size) => {
    const value = givenOf(texts, size);
    return value === null ? [] : [[size, value]];
  }));
  const choices: LimitChoices = { ...bare, givenMm };
  const isWhole = asked.every((size) => givenOf(texts, size) !== null) && dimensions.circleUnknown !== 'severalFit' && (texts.when === 'beforeCoating' || coatingUm !== null);
  return { designation, choices, measured, circle, dimensions, limits: insertLimits(designation, choices), asked, isWhole };
}

/** The coating's thickness, µm; null where none can be read. */
export function coatingOf({ coating }: LimitTexts): number | null {
  const value = readNumber(coating);
  return value !== null && value >= 0 && value <= 100 ? value : null;
}
/** A given ±, mm; null where none can be read. */
export function givenOf({ given }: LimitTexts, size: LimitedSize): number | null {
  const value = readNumber(given[size]);
  return value !== null && value > 0 ? value : null;
}
