/** `specification` is the grade of a furnace charge, the coating layer of a coating charge. */
export interface OpenCharge { readonly type: 'openCharge'; readonly charge: string; readonly kind: 'furnace' | 'coating'; readonly specification: string; readonly programme: string; readonly equipment: string; readonly members: readonly { readonly lot: string; readonly places: readonly string[] }[] }
export type ChargeOwnCommand = OpenCharge;
