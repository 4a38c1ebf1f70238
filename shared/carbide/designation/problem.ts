/** Positions of a designation; 11 and 12 (kind and length of a tipped edge) are refused, 13 is the maker's sign. */
export type DesignationPosition = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 13;

/** Why a position cannot be. */
export type DesignationFault =
  /** Nothing stands there yet. */
  | 'missing'
  /** Begun, but signs are lacking. */
  | 'incomplete'
  /** Not one of the letters or codes of that position. */
  | 'unknown'
  /** A shape of an earlier edition: the hexagon F of unequal sides. */
  | 'shapeDropped'
  /** Letters between position 4 and the size. */
  | 'tooManyLetters'
  /** No standard inscribed circle of this shape has an edge of this length. */
  | 'noSuchSize'
  /** A round insert with a corner radius or a wiper: 00 or M0 is wanted. */
  | 'roundHasNoCorner'
  /** M0 on an insert that is not round. */
  | 'onlyRound'
  /** A round insert whose digits are no inch diameter though 00 says so, or no metric one though M0 says so. */
  | 'diameterOfOtherSeries'
  /** The radius is larger than that of the inscribed circle. */
  | 'radiusTooLarge'
  /** A letter of an earlier edition: Q for the double-chamfered edge. */
  | 'letterOfEarlierEdition'
  /** Chamfer size without a chamfered edge before it. */
  | 'chamferWithoutEdge'
  /** Width 0, or an angle that is not 1 … 89°. */
  | 'noSuchChamfer'
  /** Signs that belong to no position, such as those of a tipped edge, whose tables are not in hand. */
  | 'notRead';

/** One thing that cannot be: where, what stands there, why, and what might stand there instead (none: no list can be given). */
export type DesignationProblem = {
  readonly position: DesignationPosition;
  readonly text: string;
  readonly fault: DesignationFault;
  readonly allowed: readonly string[];
};
