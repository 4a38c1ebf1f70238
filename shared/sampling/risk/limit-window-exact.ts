import type { AcceptedKind } from './accepted-kinds.ts';
import { passOn } from './pass-on.ts';
import type { Run } from './road-to-reduced.ts';

const MOST_STATES = 40_000;
const NOTHING = 1e-24; // a share of a run too small to follow

/** The states of a window and where each count leads: `next[state · kinds + found]`, −1 for reduced inspection. State 0 is an empty run. */
interface Layout {
  readonly states: number;
  readonly kinds: number;
  readonly next: Int32Array;
}

const layouts = new Map<string, Layout | null>();

/**
 * The exact run for a single plan. Of the last lots only the sums of the latest one, two, … count, and each only up to the limit: what is over
 * it stays over it. So a state is a rising row of such sums, and a run too short for a window has sums over the limit.
 * @param window lots in a window
 * @param limit the most that may be found in them
 * @returns null where there are too many states
 */
export function exactWindow(window: number, limit: number, kinds: readonly AcceptedKind[], rejected: number): Run | null {
  const mostFound = Math.min(limit + 1, Math.max(...kinds.map(({ found }) => found)));
  const layout = layoutOf(window, limit, mostFound);
  if (layout === null) return null;
  const shares = new Float64Array(layout.kinds);
  for (const { found, share } of kinds) shares[Math.min(found, mostFound)] = (shares[Math.min(found, mostFound)] ?? 0) + share;
  let now = new Float64Array(layout.states);
  let after = new Float64Array(layout.states);
  now[0] = 1;
  const step = (): { reached: number; goesOn: number } => {
    after.fill(0);
    let [reached, goesOn] = [0, 0];
    for (let state = 0, from = 0; state < layout.states; state += 1, from += layout.kinds) {
      const mass = now[state] ?? 0;
      if (mass < NOTHING) continue;
      for (let kind = 0; kind < layout.kinds; kind += 1) {
        const moved = mass * (shares[kind] ?? 0);
        const to = layout.next[from + kind] ?? -1;
        if (to < 0) reached += moved;
        else {
          after[to] = (after[to] ?? 0) + moved;
          goesOn += moved;
        }
      }
    }
    [now, after] = [after, now];
    return { reached, goesOn };
  };
  return { ...passOn(step, rejected, 4 * window, 1e-12), exact: true };
}

/** Laid out once for each window, limit and largest count, of which the tables have a few dozen. */
function layoutOf(window: number, limit: number, mostFound: number): Layout | null {
  const name = `${window} ${limit} ${mostFound}`;
  const known = layouts.get(name);
  if (known !== undefined) return known;
  const layout = (limit + 2) ** (window - 1) < Number.MAX_SAFE_INTEGER ? layOut(window, limit, mostFound) : null;
  layouts.set(name, layout);
  return layout;
}

function layOut(window: number, limit: number, mostFound: number): Layout | null {
  const over = limit + 1;
  const empty = Array.from({ length: window - 1 }, () => over);
  const numbers = new Map<number, number>([[codeOf(empty, over), 0]]);
  const rows: (readonly number[])[] = [empty];
  const next: number[] = [];
  for (let state = 0; state < rows.length; state += 1) {
    const sums = rows[state] ?? empty;
    for (let found = 0; found <= mostFound; found += 1) {
      if ((sums.at(-1) ?? over) + found <= limit) {
        next.push(-1);
        continue;
      }
      const moved = [Math.min(over, found), ...sums.slice(0, -1).map((sum) => Math.min(over, sum + found))];
      const code = codeOf(moved, over);
      const at = numbers.get(code) ?? rows.length;
      if (at === rows.length) {
        if (at >= MOST_STATES) return null;
        numbers.set(code, at);
        rows.push(moved);
      }
      next.push(at);
    }
  }
  return { states: rows.length, kinds: mostFound + 1, next: Int32Array.from(next) };
}

function codeOf(sums: readonly number[], over: number): number {
  return sums.reduce((code, sum) => code * (over + 1) + sum, 0);
}
