import type { Subject } from '../../shared/traveller/index.ts';
import { SUBJECT_KINDS } from '../../shared/traveller/index.ts';
import { poolSummaries } from '../../shared/metrology/summary/index.ts';
import { processSchema } from '../../shared/wire/gauge-views.ts';
import { newestOf } from '../readmodels/process-of.ts';
import { found, malformed, type Answer } from './answer.ts';
import type { Question, Reader } from './route.ts';

/** Lots looked back on, and those of them that are looked through for a verdict. */
const [mostLots, mostLooked] = [12, 40];

/** What is known of a process from its last lots. */
export const processReader: Reader = {
  path: '/api/process', summary: 'Mean and s of a measured characteristic over its last lots, the gauge’s scatter among it', answer: processSchema,
  query: { kind: SUBJECT_KINDS.join(', '), owner: 'product, grade or specification', gate: 'id of the gate', characteristic: 'id of the characteristic', without: 'a stream that is left out, such as the lot in hand' }, read: readProcess,
};

async function readProcess({ plant, query }: Question): Promise<Answer> {
  const kind = SUBJECT_KINDS.find((each) => each === query.get('kind'));
  if (kind === undefined) return malformed('kind', `must be one of: ${SUBJECT_KINDS.join(', ')}`);
  const [owner, gate, characteristic, without] = [query.get('owner') ?? '', query.get('gate') ?? '', query.get('characteristic') ?? '', query.get('without')];
  const parts: { readonly id: string; readonly n: number; readonly mean: number; readonly s: number | null }[] = [];
  for (const stream of newestOf(plant.journal.reader, kind, owner, mostLooked)) {
    if (stream === without || parts.length >= mostLots) continue;
    const { state } = await plant.door.states.fresh(stream);
    const summary = state !== null && 'gates' in state ? firstSummary(state, gate, characteristic) : null;
    if (state !== null && 'id' in state && summary !== null) parts.push({ id: state.id, ...summary });
  }
  const pooled = poolSummaries(parts);
  return found({ lots: parts.map(({ id }) => id), n: pooled?.n ?? 0, mean: pooled?.mean ?? null, s: pooled?.s ?? null });
}

/** Of the first inspection: a re-inspection sees pieces that were sorted. */
function firstSummary({ gates }: Subject, gate: string, characteristic: string): { readonly n: number; readonly mean: number; readonly s: number | null } | null {
  const verdict = gates.find(({ id }) => id === gate)?.verdicts.find(({ from, verdict: { original } }) => original && from === null)?.verdict;
  const detail = verdict?.results.find((result) => result.characteristic === characteristic)?.detail;
  return detail !== undefined && 'summary' in detail ? { n: detail.summary.n, mean: detail.summary.mean, s: detail.summary.s } : null;
}
