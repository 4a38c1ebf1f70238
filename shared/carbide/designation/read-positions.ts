import type { InsertDesignation } from './designation.ts';
import { DESIGNATION_TABLES } from './evidence.ts';
import { explainDesignation } from './explain-designation.ts';
import type { PositionMeaning } from './explain-designation.ts';
import type { DesignationPosition, DesignationProblem } from './problem.ts';
import { readParts } from './read-parts.ts';

/** One position of a text that may be half typed or wrong: what stands there, what it says, and what is wrong with it. */
export type ReadPosition = {
  readonly position: DesignationPosition;
  readonly text: string;
  /** Null where nothing that can be read stands there. */
  readonly meaning: PositionMeaning | null;
  readonly problems: readonly DesignationProblem[];
};

const ALWAYS: readonly DesignationPosition[] = [1, 2, 3, 4, 5, 6, 7];

/** Explains what of a text can be read while it is being typed: positions 1 to 7 always, the others where something stands. Read wholly, it says what explainDesignation says. */
export function readPositions(text: string): readonly ReadPosition[] {
  const { split, shape, clearance, toleranceClass, fixing, size, thickness, corner, tail, problems } = readParts(text);
  // Positions that cannot be read are stood in for, so that the others can be explained; what is stood in is not shown.
  const stoodIn: InsertDesignation = {
    tables: DESIGNATION_TABLES, shape: shape ?? 'S', clearance: clearance ?? 'N', toleranceClass: toleranceClass ?? 'M', fixing: fixing ?? 'N', size: size ?? '12', thickness: thickness ?? '04',
    corner: corner ?? { kind: 'wiper', angle: 'Z', clearance: 'Z' }, edge: tail.edge, hand: tail.hand, chamfer: tail.chamfer, makersSign: tail.makersSign,
  };
  const isRead: Readonly<Record<number, boolean>> = {
    1: shape !== null, 2: clearance !== null, 3: toleranceClass !== null, 4: fixing !== null, 5: shape !== null && size !== null, 6: thickness !== null, 7: corner !== null,
  };
  const explained = explainDesignation(stoodIn);
  const typed = [...split.letters, split.surplus + split.size, split.thickness, split.corner];
  const positions = [...new Set([...ALWAYS, ...explained.map(({ position }) => position), ...problems.map(({ position }) => position)])].sort((one, other) => one - other);
  return positions.map((position) => {
    const here = problems.filter((problem) => problem.position === position);
    const found = isRead[position] === false ? undefined : explained.find((each) => each.position === position);
    return { position, text: typed[position - 1] ?? found?.text ?? here[0]?.text ?? '', meaning: found?.meaning ?? null, problems: here };
  });
}
