import { cornerRadius, USUAL_RADIUS_CODES } from './corner.ts';
import type { InsertCorner } from './corner.ts';
import { CLEARANCES, FIXINGS, letterOf, TOLERANCE_CLASSES, WIPER_ANGLES, WIPER_CLEARANCES } from './letters.ts';
import type { ClearanceLetter, FixingLetter, ToleranceClass } from './letters.ts';
import type { DesignationFault, DesignationPosition, DesignationProblem } from './problem.ts';
import { readTail } from './read-tail.ts';
import type { DesignationTail } from './read-tail.ts';
import { SHAPE_LETTERS, SHAPES } from './shapes.ts';
import type { ShapeLetter } from './shapes.ts';
import { circlesOfSize, sizeCodesOf } from './sizes.ts';
import { normaliseDesignation, splitPositions } from './split-positions.ts';
import type { SplitDesignation } from './split-positions.ts';
import { THICKNESSES } from './thickness.ts';
import type { ThicknessCode } from './thickness.ts';

/** Each position by itself: null where it cannot be. */
export type DesignationParts = {
  readonly split: SplitDesignation;
  readonly shape: ShapeLetter | null;
  readonly clearance: ClearanceLetter | null;
  readonly toleranceClass: ToleranceClass | null;
  readonly fixing: FixingLetter | null;
  readonly size: string | null;
  readonly thickness: ThicknessCode | null;
  readonly corner: InsertCorner | null;
  readonly tail: DesignationTail;
  readonly problems: readonly DesignationProblem[];
};

type Complain = (position: DesignationPosition, text: string, fault: DesignationFault, allowed?: readonly string[]) => null;

/** Reads what of a text can be read, position by position, with every problem in the order of the positions. */
export function readParts(text: string): DesignationParts {
  const problems: DesignationProblem[] = [];
  const complain: Complain = (position, found, fault, allowed = []) => {
    problems.push({ position, text: found, fault, allowed });
    return null;
  };
  const split = splitPositions(normaliseDesignation(text));
  const shape = readShape(split.letters[0], complain);
  const clearance = readLetter(2, CLEARANCES, split.letters[1], complain);
  const toleranceClass = readOne(3, TOLERANCE_CLASSES, split.letters[2], complain);
  const fixing = readLetter(4, FIXINGS, split.letters[3], complain);
  const size = readSize(shape, split.surplus, split.size, complain);
  const thickness = split.thickness.length === 1 ? complain(6, split.thickness, 'incomplete', Object.keys(THICKNESSES).sort()) : readLetter(6, THICKNESSES, split.thickness, complain);
  const corner = readCorner(shape, size, split.corner, complain);
  const tail = readTail(split.rest, split.sign);
  return { split, shape, clearance, toleranceClass, fixing, size, thickness, corner, tail, problems: [...problems, ...tail.problems] };
}

function readOne<Letter extends string>(position: DesignationPosition, letters: readonly Letter[], text: string, complain: Complain): Letter | null {
  return letters.find((letter) => letter === text) ?? complain(position, text, text === '' ? 'missing' : 'unknown', letters);
}

function readLetter<Letter extends string>(position: DesignationPosition, table: Readonly<Record<Letter, unknown>>, text: string, complain: Complain): Letter | null {
  return letterOf(table, text) ?? complain(position, text, text === '' ? 'missing' : 'unknown', Object.keys(table).sort());
}

function readShape(text: string, complain: Complain): ShapeLetter | null {
  return text === 'F' ? complain(1, text, 'shapeDropped', SHAPE_LETTERS) : readOne(1, SHAPE_LETTERS, text, complain);
}

function readSize(shape: ShapeLetter | null, surplus: string, text: string, complain: Complain): string | null {
  const allowed = shape === null ? [] : sizeCodesOf(shape);
  if (surplus !== '') complain(5, surplus, 'tooManyLetters', allowed);
  if (text === '') return complain(5, text, 'missing', allowed);
  if (text.length < 2) return complain(5, text, /^\d$/.test(text) ? 'incomplete' : 'unknown', allowed);
  if (!/^\d\d$/.test(text)) return complain(5, text, 'unknown', allowed);
  if (shape === null) return text;
  // L, A, B and K: the longer side, which no table ties to a circle.
  const isThere = allowed.length > 0 ? allowed.includes(text) : text !== '00';
  return isThere ? text : complain(5, text, 'noSuchSize', allowed);
}

function readCorner(shape: ShapeLetter | null, size: string | null, text: string, complain: Complain): InsertCorner | null {
  const isRound = shape !== null && SHAPES[shape].form === 'round';
  const allowed: readonly string[] = isRound ? ['00', 'M0'] : USUAL_RADIUS_CODES;
  if (text === '') return complain(7, text, 'missing', allowed);
  if (text.length < 2) return complain(7, text, 'incomplete', allowed);
  if (isRound) return readRoundCorner(size, text, complain);
  if (text === 'M0') return complain(7, text, 'onlyRound', allowed);
  if (/^(\d\d|005)$/.test(text)) return readRadius(shape, size, text, complain);
  const angle = letterOf(WIPER_ANGLES, text.slice(0, 1));
  const clearance = letterOf(WIPER_CLEARANCES, text.slice(1));
  return angle === null || clearance === null ? complain(7, text, 'unknown', allowed) : { kind: 'wiper', angle, clearance };
}

function readRoundCorner(size: string | null, text: string, complain: Complain): InsertCorner | null {
  if (text !== '00' && text !== 'M0') return complain(7, text, /^(\d\d|005|[A-Z]{2})$/.test(text) && text !== 'MO' ? 'roundHasNoCorner' : 'unknown', ['00', 'M0']);
  const isMetric = text === 'M0';
  if (size !== null && !circlesOfSize('R', size).some(({ inch }) => (inch === null) === isMetric)) return complain(7, text, 'diameterOfOtherSeries', [isMetric ? '00' : 'M0']);
  return { kind: isMetric ? 'roundMetric' : 'roundInch' };
}

function readRadius(shape: ShapeLetter | null, size: string | null, code: string, complain: Complain): InsertCorner | null {
  const largest = shape === null || size === null ? Infinity : Math.max(...circlesOfSize(shape, size).map(({ exactMm }) => exactMm / 2));
  // Sides of L, A, B and K may differ as they like: no circle limits their corner, the longer side does.
  const most = shape !== null && size !== null && largest === -Infinity ? (Number(size) + 1) / 2 : largest;
  if (cornerRadius(code).usedMm <= most) return { kind: 'radius', code };
  return complain(7, code, 'radiusTooLarge', USUAL_RADIUS_CODES.filter((usual) => cornerRadius(usual).usedMm <= most));
}
