/** Where a lot's pieces are. At every step: opened = destroyed + scrapped + splitOff + boxed + returned + remaining. */
export interface PieceBalance {
  readonly opened: number;
  readonly destroyed: number;
  readonly scrapped: number;
  readonly splitOff: number;
  readonly boxed: number;
  readonly returned: number;
}

/** Pieces that are still loose in the lot. */
export function remainingPieces(balance: PieceBalance): number {
  return balance.opened - balance.destroyed - balance.scrapped - balance.splitOff - balance.boxed - balance.returned;
}

/** The balance of a lot just opened with this many pieces. */
export function openBalance(opened: number): PieceBalance {
  return { opened, destroyed: 0, scrapped: 0, splitOff: 0, boxed: 0, returned: 0 };
}

/** Moves pieces out of the loose ones into `to`; a negative count brings them back. Never judges: decide has asked before. */
export function movePieces(balance: PieceBalance, to: Exclude<keyof PieceBalance, 'opened'>, pieces: number): PieceBalance {
  return { ...balance, [to]: balance[to] + pieces };
}
