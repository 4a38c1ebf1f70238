import type { GateRecord, Subject, Switching } from '../../shared/traveller/index.ts';

/**
 * A subject without what no list shows: readings, demands, verdicts' numbers. The very fold of the traveller goes on from it, over the slips
 * that change a list, so the lists cannot come to other conclusions than the kiosk; entries of a sample are not folded here.
 */
export function slimSubject<S extends Subject>(subject: S): S {
  return { ...subject, gates: subject.gates.map(slimGate), corrections: [], concessions: [] };
}

function slimGate(gate: GateRecord): GateRecord {
  return gate.work.length === 0 && gate.verdicts.length === 0 && gate.plan === null && gate.sorted.length === 0 ? gate : { ...gate, plan: null, seed: null, work: [], verdicts: [], sorted: [] };
}

/** A switching state without the long list of all that was counted; enough to go on from, except for a recount. */
export function slimSwitching(switching: Switching): Switching {
  return { ...switching, events: [] };
}
