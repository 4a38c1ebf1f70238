import type { Chamfer } from './designation.ts';
import { EDGES, HANDS, letterOf } from './letters.ts';
import type { EdgeLetter, HandLetter } from './letters.ts';
import type { DesignationProblem } from './problem.ts';

/** What may stand behind the corner: edge, hand, chamfer, and behind a dash the maker's sign. */
export type DesignationTail = {
  readonly edge: EdgeLetter | null;
  readonly hand: HandLetter | null;
  readonly chamfer: Chamfer | null;
  readonly makersSign: string | null;
  readonly problems: readonly DesignationProblem[];
};

const MOST_SIGNS = 16;
const CHAMFERED: readonly EdgeLetter[] = ['T', 'S', 'K', 'P'];

/**
 * Reads positions 8 to 10 and 13, all of them optional. Edge and hand have no letter in common, so either may stand without the other.
 * Positions 11 and 12, a tipped edge, are refused: their table is not in hand.
 */
export function readTail(rest: string, sign: string | null): DesignationTail {
  const problems: DesignationProblem[] = [];
  const edge = letterOf(EDGES, rest.slice(0, 1));
  const afterEdge = edge === null ? rest : rest.slice(1);
  const hand = letterOf(HANDS, afterEdge.slice(0, 1));
  const afterHand = hand === null ? afterEdge : afterEdge.slice(1);
  const digits = /^\d*/.exec(afterHand)?.[0] ?? '';
  const chamfer = readChamfer(digits, edge, problems);
  const left = afterHand.slice(digits.length);
  if (left !== '') problems.push(complaintOfRest(left, edge, hand, digits));
  return { edge, hand, chamfer, makersSign: readSign(sign, problems), problems };
}

function readChamfer(digits: string, edge: EdgeLetter | null, problems: DesignationProblem[]): Chamfer | null {
  if (digits === '') return null;
  const code = digits.slice(0, 5);
  const complain = (fault: DesignationProblem['fault'], allowed: readonly string[] = []): null => {
    problems.push({ position: 10, text: digits, fault, allowed });
    return null;
  };
  if (edge === null || !CHAMFERED.includes(edge)) return complain('chamferWithoutEdge', CHAMFERED);
  if (digits.length < 5) return complain('incomplete');
  if (digits.length > 5) return complain('notRead');
  const chamfer = { widthMm: Number(code.slice(0, 3)) / 100, angleDeg: Number(code.slice(3)) };
  return chamfer.widthMm === 0 || chamfer.angleDeg === 0 || chamfer.angleDeg > 89 ? complain('noSuchChamfer') : chamfer;
}

/** Where what is left over would have had to stand. */
function complaintOfRest(text: string, edge: EdgeLetter | null, hand: HandLetter | null, digits: string): DesignationProblem {
  if (digits !== '') return { position: 11, text, fault: 'notRead', allowed: [] };
  if (edge === null && hand === null) return { position: 8, text, fault: text.startsWith('Q') ? 'letterOfEarlierEdition' : 'unknown', allowed: text.startsWith('Q') ? ['K'] : [...Object.keys(EDGES), ...Object.keys(HANDS)] };
  if (hand === null) return { position: 9, text, fault: 'unknown', allowed: Object.keys(HANDS) };
  return { position: 10, text, fault: 'notRead', allowed: [] };
}

function readSign(sign: string | null, problems: DesignationProblem[]): string | null {
  if (sign === null) return null;
  if (/^[A-Z0-9][A-Z0-9./+-]*$/.test(sign) && sign.length <= MOST_SIGNS) return sign;
  problems.push({ position: 13, text: sign, fault: sign === '' ? 'missing' : 'unknown', allowed: [] });
  return null;
}
