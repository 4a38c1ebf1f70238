import { CLEARANCES, insertDimensions } from '../carbide/index.ts';
import type { ChipBreaker, DesignationEvidence, DesignationFault, DesignationPosition, DesignationProblem, DrawnDimension, Hole, InsertDesignation, LimitedSize, NotInHand, PositionMeaning, ShapeForm } from '../carbide/index.ts';
import type { Format } from './format.ts';

const forms: Readonly<Record<ShapeForm, string>> = {
  hexagon: 'Hexagon', octagon: 'Octagon', pentagon: 'Pentagon', square: 'Square', triangle: 'Triangle', rhombus: 'Rhombus', trigon: 'Trigon', rectangle: 'Rectangle', parallelogram: 'Parallelogram', round: 'Round',
};
const holes: Readonly<Record<Hole, string>> = {
  none: 'no hole', cylindrical: 'cylindrical hole', oneCountersink40: 'hole with one countersink of 40° to 60°', twoCountersinks40: 'hole with two countersinks of 40° to 60°',
  oneCountersink70: 'hole with one countersink of 70° to 90°', twoCountersinks70: 'hole with two countersinks of 70° to 90°',
};
const breakers: Readonly<Record<ChipBreaker, string>> = { none: 'no chip breaker', oneFace: 'chip breaker on one face', bothFaces: 'chip breakers on both faces' };

/** The positions of a designation, what they say, and what cannot be. */
export const designationWords = {
  positions: {
    1: 'Shape', 2: 'Normal clearance', 3: 'Tolerance class', 4: 'Hole and chip breaker', 5: 'Size', 6: 'Thickness', 7: 'Corner', 8: 'Cutting edge', 9: 'Cutting direction', 10: 'Chamfer', 11: 'Tipped edge', 13: 'Maker’s sign',
  } satisfies Readonly<Record<DesignationPosition, string>>,
  sizes: { d: 'Inscribed circle d', m: 'Control dimension m', s: 'Thickness s' } satisfies Readonly<Record<LimitedSize, string>>,
  otherSizes: { l: 'Cutting edge l', r: 'Corner radius r', angle: 'Corner angle ε', clearance: 'Normal clearance α', long: 'Longer side' },
  evidence: {
    seen: 'read in a public text', memory: 'from memory of the standard', memoryAgrees: 'from memory, agrees with reproductions read', memoryUncertain: 'from memory, in doubt', derived: 'derived here from geometry',
    derivedChecked: 'derived here, agrees with printed tables', givenByPlant: 'given by the plant',
  } satisfies Readonly<Record<DesignationEvidence, string>>,
  notInHand: {
    shapeWithoutTable: 'No table of limits for this shape is held.', classWithoutTable: 'No table of this class for this shape is held.', sizeNotInTable: 'The table held has no row for this inscribed circle.',
    changedByEdition: 'This limit changed between the editions of 2004 and 2017, and which one is remembered is not known.', circleUnknown: 'It depends on the inscribed circle, which is not known.',
  } satisfies Readonly<Record<NotInHand, string>>,
  edition: (standard: string, edition: number) => `${standard}:${edition}`,
};

const edges = { sharp: 'sharp edge', rounded: 'rounded edge', chamfered: 'chamfered edge', chamferedAndRounded: 'chamfered and rounded edge', doubleChamfered: 'double chamfered edge', doubleChamferedAndRounded: 'double chamfered and rounded edge' } as const;
const hands = { right: 'right hand', left: 'left hand', both: 'both directions' } as const;

/** What one position says, as a phrase. */
export function meaningOf(meaning: PositionMeaning, format: Format): string {
  const mm = (value: number, decimals?: number): string => `${format.number(value, decimals)} mm`;
  const degrees = (value: number | null): string => (value === null ? 'another angle, as drawn' : `${format.number(value)}°`);
  switch (meaning.kind) {
    case 'shape': return meaning.shape.includedAngleDeg === null ? forms[meaning.shape.form] : `${forms[meaning.shape.form]}, corner of ${degrees(meaning.shape.includedAngleDeg)}`;
    case 'clearance': return degrees(meaning.angleDeg);
    case 'toleranceClass': return `Class ${meaning.toleranceClass}`;
    case 'fixing': return meaning.fixing === null ? 'As drawn' : capital(`${holes[meaning.fixing.hole]}, ${breakers[meaning.fixing.chipBreaker]}`);
    case 'size': {
      const { inscribedCircle, fittingCircles, longSideWholeMm, edgeLengthMm } = meaning.dimensions;
      if (longSideWholeMm !== null) return `Longer side ${format.number(longSideWholeMm)} mm and a fraction; the code gives no inscribed circle`;
      if (inscribedCircle === null) return `Inscribed circle ${format.either(fittingCircles.map(({ nominalMm }) => mm(nominalMm)))}: the digits fit each`;
      const circle = `${edgeLengthMm === null ? 'Diameter' : 'inscribed circle'} ${mm(inscribedCircle.nominalMm)}${inscribedCircle.inch === null ? '' : ` (${inscribedCircle.inch} in)`}`;
      return edgeLengthMm === null ? circle : `Edge ${mm(edgeLengthMm, 1)}, ${circle}`;
    }
    case 'thickness': return mm(meaning.thickness.nominalMm);
    case 'radius': return meaning.radius.nominalMm === 0 ? 'Sharp corner' : `Radius ${mm(meaning.radius.nominalMm)}`;
    case 'round': return meaning.isMetric ? 'Round, metric diameter' : 'Round, diameter converted from inches';
    case 'wiper': return `Wiper: cutting edge angle ${degrees(meaning.angleDeg)}, its clearance ${degrees(meaning.clearanceDeg)}`;
    case 'edge': return capital(edges[meaning.edge]);
    case 'hand': return capital(hands[meaning.hand]);
    case 'chamfer': return `${mm(meaning.chamfer.widthMm, 2)} wide under ${degrees(meaning.chamfer.angleDeg)}`;
    case 'makersSign': return 'The maker’s own, such as a chip former';
  }
}

/** What stands beside each dimension line of the drawing: the letter and its size. @param chosenCircleMm as for insertDimensions */
export function dimensionTexts(designation: InsertDesignation, format: Format, chosenCircleMm?: number): Readonly<Record<DrawnDimension, string>> {
  const { inscribedCircle, edgeLengthMm, controlDimension, thickness, cornerRadius, includedAngleDeg } = insertDimensions(designation, chosenCircleMm);
  const clearance = CLEARANCES[designation.clearance];
  return {
    d: `d ${inscribedCircle === null ? '–' : format.number(inscribedCircle.nominalMm)}`, m: `m ${controlDimension === null ? '–' : format.number(controlDimension.mm, 3)}`, l: `l ${edgeLengthMm === null ? '–' : format.number(edgeLengthMm, 1)}`,
    s: `s ${format.number(thickness.nominalMm)}`, r: cornerRadius === null ? 'wiper' : `r ${format.number(cornerRadius.nominalMm)}`, angle: `ε ${includedAngleDeg === null ? '–' : `${format.number(includedAngleDeg)}°`}`,
    clearance: `α ${clearance === null ? 'as drawn' : `${format.number(clearance)}°`}`,
  };
}

const MOST_LISTED = 18;
const faults: Readonly<Record<DesignationFault, string>> = {
  missing: 'nothing stands there yet', incomplete: 'signs are lacking', unknown: 'it is none of those that may stand there', shapeDropped: 'the hexagon of unequal sides is no longer one of the shapes',
  tooManyLetters: 'four letters come before the size', noSuchSize: 'no standard inscribed circle of this shape has such an edge', roundHasNoCorner: 'a round insert has no corner: 00 says a diameter from inches, M0 a metric one',
  onlyRound: 'M0 is for round inserts', diameterOfOtherSeries: 'no diameter of that series has these size digits', radiusTooLarge: 'the radius is larger than the inscribed circle’s', letterOfEarlierEdition: 'Q was the letter of an earlier edition for the double chamfered edge',
  chamferWithoutEdge: 'a chamfer’s size needs a chamfered edge before it', noSuchChamfer: 'a chamfer has a width above 0 and an angle of 1° to 89°', notRead: 'these signs belong to no position that is read here',
};

/** Why a position cannot be, as a sentence; what might stand there is added where it can be listed. */
export function problemText({ fault, allowed }: DesignationProblem, format: Format): string {
  const listed = allowed.length === 0 || allowed.length > MOST_LISTED ? '' : ` Possible: ${format.either(allowed)}.`;
  return `${capital(faults[fault])}.${listed}`;
}

/** The position of a problem with what stands there: "Position 5 (size), “13”". */
export function problemPlace({ position, text }: DesignationProblem): string {
  const place = `Position ${position} (${designationWords.positions[position].toLowerCase()})`;
  return text === '' ? place : `${place}, “${text}”`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
