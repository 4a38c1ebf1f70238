import type { Characteristic, Finding, Reading, Slip, SlipBody, Subject } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { OwnEntry } from '../link/traveller-store.ts';
import type { StateName } from '../parts/state-name.ts';

/** One row of the slip stack: a confirmed slip, or an own entry on its way or refused. */
export type SlipRow =
  | { readonly key: string; readonly standing: 'normal' | 'corrected'; readonly slip: StampedSlip; readonly own: null }
  | { readonly key: string; readonly standing: 'sending' | 'kept'; readonly slip: Slip; readonly own: OwnEntry }
  | { readonly key: string; readonly standing: 'sending' | 'kept' | 'refused'; readonly slip: null; readonly own: OwnEntry };

/** Confirmed slips with what is on its way behind them. */
export function slipRows(slips: readonly StampedSlip[], own: readonly OwnEntry[]): SlipRow[] {
  const corrected = correctedSlips(slips);
  const rows: SlipRow[] = slips.map((slip) => ({ key: String(slip.version), standing: corrected.has(slip.version) ? 'corrected' : 'normal', slip, own: null }));
  for (const entry of own) {
    const { clientId, standing, slips: foretold } = entry;
    if (standing === 'refused' || foretold.length === 0) rows.push({ key: clientId, standing, slip: null, own: entry });
    else foretold.forEach((slip, at) => rows.push({ key: `${clientId}/${at}`, standing, slip, own: entry }));
  }
  return rows;
}

/** Versions of slips that a later one has corrected or withdrawn. */
function correctedSlips(slips: readonly StampedSlip[]): ReadonlySet<number> {
  const readings = new Map<string, number>();
  const corrected = new Set<number>();
  for (const { body, version } of slips) {
    if (body.type === 'readingTaken') readings.set(`${body.gate}/${body.characteristic}/${body.ordinal}`, version);
    if (body.type === 'readingCorrected') corrected.add(readings.get(`${body.gate}/${body.characteristic}/${body.ordinal}`) ?? 0);
    if (body.type === 'findingWithdrawn') corrected.add(body.finding);
  }
  return corrected;
}

/** The strong mark a slip carries; null for the many that carry none. */
export function slipMark(body: SlipBody): StateName | null {
  switch (body.type) {
    case 'verdictGiven': case 'verdictRevised': case 'gateVerdictInherited': return body.verdict.accepted ? 'accepted' : 'rejected';
    case 'held': return 'hold';
    case 'disposed': return body.disposition.kind === 'concession' ? 'concession' : body.disposition.kind === 'scrap' ? 'scrapped' : 'signed';
    case 'lotReleased': case 'batchReleased': return 'released';
    case 'releaseWithdrawn': return 'recalled';
    case 'chartSignalled': return 'caution';
    default: return null;
  }
}

/** What of a slip may still be put right: a reading that stands, or a finding. */
export type Correctable =
  | { readonly what: 'reading'; readonly gate: string; readonly characteristic: Characteristic; readonly reading: Reading }
  | { readonly what: 'finding'; readonly gate: string; readonly characteristic: Characteristic; readonly finding: Finding };

/** What a correction of this slip would change; null where nothing can be corrected. */
export function correctable(subject: Subject, { body, version }: StampedSlip): Correctable | null {
  if (body.type !== 'readingTaken' && body.type !== 'findingRecorded') return null;
  if (subject.kind === 'lot' && subject.release !== null && subject.release.withdrawn === null) return null;
  const work = subject.gates.find(({ id }) => id === body.gate)?.work.find(({ demand }) => demand.characteristic.id === body.characteristic);
  if (work === undefined) return null;
  const { characteristic } = work.demand;
  if (body.type === 'readingTaken') {
    const reading = work.readings.find(({ slip }) => slip === version);
    return reading === undefined ? null : { what: 'reading', gate: body.gate, characteristic, reading };
  }
  const finding = work.findings.find(({ slip, withdrawn }) => slip === version && !withdrawn);
  return finding === undefined ? null : { what: 'finding', gate: body.gate, characteristic, finding };
}
