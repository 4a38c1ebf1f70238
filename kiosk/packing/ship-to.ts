import { Source } from '../link/index.ts';

/** Where boxes go, given once for all that follow; kept while the kiosk's page lives. */
export interface ShipTo { readonly shipment: string; readonly order: string; readonly consignee: string }
export interface BoxOut { readonly lot: string; readonly serial: string; readonly shipment: string }

export const shipTo = new Source<ShipTo>({ shipment: '', order: '', consignee: '' });
/** The boxes that left from this kiosk in this round, latest first. */
export const boxesOut = new Source<readonly BoxOut[]>([]);
