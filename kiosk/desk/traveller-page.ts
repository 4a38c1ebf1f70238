import type { Batch, Charge, Lot, Subject } from '../../shared/traveller/index.ts';
import { link } from '../link/index.ts';

/** What the server tells of one traveller. */
export interface TravellerPage<S extends Subject = Subject> { readonly state: S; readonly names: Readonly<Record<string, string>> }

/** A lot with the powder batch and the charges its verdicts come from. */
export interface LotStanding {
  readonly lot: Lot;
  readonly batch: Batch | null;
  readonly charges: readonly Charge[];
  /** Names of all who stand on any of these travellers, by badge. */
  readonly names: Readonly<Record<string, string>>;
}

/** Reads one traveller's state, without more of its slips than must be. @throws LinkFault */
export function readTraveller(kind: string, id: string): Promise<TravellerPage> {
  return link.ask<TravellerPage>(`/api/travellers/${kind}/${encodeURIComponent(id)}?tail=1`);
}

/** Reads a lot alone. @throws LinkFault, also where the number is no lot's */
export async function readLot(id: string): Promise<TravellerPage<Lot>> {
  return (await readTraveller('lot', id)) as TravellerPage<Lot>;
}

/** Reads a lot and everything upstream that can stop its release. @throws LinkFault */
export async function readLotStanding(id: string): Promise<LotStanding> {
  const page = await readLot(id);
  const streams = page.state.charges.map(({ charge }) => charge.split(':'));
  const upstream = await Promise.all([readTraveller('batch', page.state.batch), ...streams.map(([kind = '', charge = '']) => readTraveller(kind, charge))]);
  const states = upstream.map(({ state }) => state);
  return {
    lot: page.state,
    batch: states.find((state) => state.kind === 'batch') ?? null,
    charges: states.filter((state): state is Charge => state.kind === 'furnace' || state.kind === 'coating'),
    names: Object.assign({}, ...upstream.map(({ names }) => names), page.names) as Readonly<Record<string, string>>,
  };
}
