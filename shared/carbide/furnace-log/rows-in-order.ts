import type { FurnaceLog, LogFinding } from './furnace-log.ts';

export interface LogRow { readonly atMin: number; readonly temperatureC: number; readonly pressureMbar: number | null }

/**
 * The rows whose time goes on, and what is wrong with time: longer without a row than allowed (`gap`), earlier than a row before (`backwards`, with
 * how far), the same moment again with the same values (`repeated`: harmless) or with others (`contradicting`).
 */
export function inOrder({ atMin, temperatureC, pressureMbar }: FurnaceLog, largestGapMin: number): { readonly rows: readonly LogRow[]; readonly findings: readonly LogFinding[] } {
  const rows: LogRow[] = [];
  const findings: LogFinding[] = [];
  const tally = { repeated: [] as number[], contradicting: [] as number[] };
  /** Farthest the time of the present run of rows stands behind the last one kept. */
  let back: { from: number; worst: number } | null = null;
  const endBack = (toMin: number): void => {
    if (back !== null) findings.push({ kind: 'backwards', segment: null, fromMin: back.from, toMin, value: rounded(back.worst), limit: 0 });
    back = null;
  };
  atMin.forEach((at, index) => {
    const row: LogRow = { atMin: at, temperatureC: temperatureC[index] ?? Number.NaN, pressureMbar: pressureMbar?.[index] ?? null };
    const last = rows.at(-1);
    if (last === undefined || at > last.atMin) {
      endBack(at);
      if (last !== undefined && at - last.atMin > largestGapMin) findings.push({ kind: 'gap', segment: null, fromMin: last.atMin, toMin: at, value: rounded(at - last.atMin), limit: largestGapMin });
      rows.push(row);
    } else if (at === last.atMin) {
      const same = row.temperatureC === last.temperatureC && row.pressureMbar === last.pressureMbar;
      tally[same ? 'repeated' : 'contradicting'].push(at);
    } else back = { from: last.atMin, worst: Math.max(back?.worst ?? 0, last.atMin - at) };
  });
  endBack(rows.at(-1)?.atMin ?? 0);
  for (const kind of ['contradicting', 'repeated'] as const) {
    const [first] = tally[kind];
    if (first !== undefined) findings.push({ kind, segment: null, fromMin: first, toMin: tally[kind].at(-1) ?? first, value: tally[kind].length, limit: 0 });
  }
  return { rows, findings };
}

function rounded(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
