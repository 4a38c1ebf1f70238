import { stagesOf } from '../attributes/index.ts';
import type { AttributesPlan } from '../attributes/index.ts';
import { limitNumber } from '../switching/index.ts';
import type { AcceptedKind } from './accepted-kinds.ts';
import { passOn } from './pass-on.ts';
import type { Run } from './road-to-reduced.ts';

const NOTHING = 1e-11; // a share of a run too small to follow

/**
 * The run approximated. Of the window's lots two totals found are remembered, that of the older half and that of the newer. The lot that
 * drops out, and the one that grows old, is taken to be any of its half, weighed by how such totals come about; whether a total is
 * within its limit is weighed by the units that such totals come with. What is forgotten is how the earlier windows failed.
 * @param window lots in a window
 */
export function exchangeableWindow(plan: AttributesPlan, window: number, kinds: readonly AcceptedKind[], rejected: number): Run {
  const mostFound = Math.max(...kinds.map(({ found }) => found));
  const shares = Array.from({ length: mostFound + 1 }, (_, found) => kinds.reduce((sum, kind) => sum + (kind.found === found ? kind.share : 0), 0));
  const [older, newer] = [Math.ceil(window / 2), Math.floor(window / 2)];
  const [leaves, agesOut] = [leavingShares(older, shares), leavingShares(newer, shares)];
  const within = withinLimit(plan, window, kinds);
  const [rows, width] = [older * mostFound + 1, newer * mostFound + 1];

  let now: Float64Array = new Float64Array(rows * width);
  let [lots, running] = [0, 1];
  const accepted = shares.reduce((sum, share) => sum + share, 0);
  const oneLotOn = (): Float64Array => {
    const left = new Float64Array(rows * width);
    forEachCell(now, width, (old, recent, mass) => {
      for (const { found, share } of leaves[old] ?? []) left[(old - found) * width + recent] = (left[(old - found) * width + recent] ?? 0) + mass * share;
    });
    const aged = new Float64Array(rows * width);
    forEachCell(left, width, (old, recent, mass) => {
      for (const { found, share } of agesOut[recent] ?? []) aged[(old + found) * width + recent - found] = (aged[(old + found) * width + recent - found] ?? 0) + mass * share;
    });
    const after = new Float64Array(rows * width);
    forEachCell(aged, width, (old, recent, mass) => {
      for (const [found, share] of shares.entries()) after[old * width + recent + found] = (after[old * width + recent + found] ?? 0) + mass * share;
    });
    return after;
  };
  const firstWindow = (): Float64Array => {
    const [old, recent] = [totals(older, shares), totals(newer, shares)];
    return Float64Array.from({ length: rows * width }, (_, at) => (old[Math.floor(at / width)] ?? 0) * (recent[at % width] ?? 0));
  };
  const step = (): { reached: number; goesOn: number } => {
    lots += 1;
    running *= accepted;
    if (lots < window) return { reached: 0, goesOn: running };
    now = lots === window ? firstWindow() : oneLotOn();
    let [reached, goesOn] = [0, 0];
    forEachCell(now, width, (old, recent, mass) => {
      const share = mass * (within[old + recent] ?? 0);
      reached += share;
      goesOn += mass - share;
      now[old * width + recent] = mass - share;
    });
    return { reached, goesOn };
  };
  return { ...passOn(step, rejected, 3 * window, 1e-5), exact: false };
}

function forEachCell(mass: Float64Array, width: number, visit: (old: number, recent: number, mass: number) => void): void {
  for (let at = 0; at < mass.length; at += 1) {
    const here = mass[at] ?? 0;
    if (here > NOTHING) visit(Math.floor(at / width), at % width, here);
  }
}

/** The chances of each total found in so many lots, all accepted. */
function totals(lots: number, shares: readonly number[]): readonly number[] {
  let sums: readonly number[] = [1];
  for (let lot = 0; lot < lots; lot += 1) {
    const longer = Array.from({ length: sums.length + shares.length - 1 }, () => 0);
    for (const [sum, chance] of sums.entries()) for (const [found, share] of shares.entries()) longer[sum + found] = (longer[sum + found] ?? 0) + chance * share;
    sums = longer;
  }
  return sums;
}

/** For each total of so many lots: what any one of them may have brought, and how likely. */
function leavingShares(lots: number, shares: readonly number[]): readonly (readonly { readonly found: number; readonly share: number }[])[] {
  const [all, others] = [totals(lots, shares), totals(lots - 1, shares)];
  return all.map((ways, total) => {
    if (ways === 0) return [];
    return shares.map((share, found) => ({ found, share: (share * (others[total - found] ?? 0)) / ways })).filter(({ share }) => share > NOTHING);
  });
}

/** For each total found in a window: the chance that the units it came with allow it. */
function withinLimit(plan: AttributesPlan, window: number, kinds: readonly AcceptedKind[]): readonly number[] {
  const [first, second] = stagesOf(plan);
  const mostExtra = Math.max(...kinds.map(({ stage }) => stage - 1));
  const extraWidth = window * mostExtra + 1;
  const width = window * Math.max(...kinds.map(({ found }) => found)) + 1;
  let sums = new Float64Array(width * extraWidth);
  sums[0] = 1;
  for (let lot = 0; lot < window; lot += 1) {
    const longer = new Float64Array(width * extraWidth);
    forEachCell(sums, extraWidth, (total, extra, mass) => {
      for (const { found, stage, share } of kinds) {
        const to = (total + found) * extraWidth + extra + stage - 1;
        longer[to] = (longer[to] ?? 0) + mass * share;
      }
    });
    sums = longer;
  }
  const limits = Array.from({ length: extraWidth }, (_, extra) => limitNumber(plan.aqlPercent, window * (first?.sampleSize ?? 0) + extra * (second?.sampleSize ?? 0)));
  return Array.from({ length: width }, (_, total) => {
    let [all, allowed] = [0, 0];
    for (const [extra, limit] of limits.entries()) {
      const mass = sums[total * extraWidth + extra] ?? 0;
      all += mass;
      if (typeof limit === 'number' && total <= limit) allowed += mass;
    }
    return all === 0 ? 0 : allowed / all;
  });
}
