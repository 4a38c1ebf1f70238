import type { Cell } from '../equipment/charge-map.ts';

/** Where a lot lies: in words, or on the cells of the equipment's map; then `places` stays empty and is filled from the map. */
export interface PlacedLot { readonly lot: string; readonly places: readonly string[]; readonly cells?: readonly Cell[] }
/** `specification` is the grade of a furnace charge, the coating layer of a coating charge. `equipmentId` names the record whose map the lots are placed on. */
export interface OpenCharge { readonly type: 'openCharge'; readonly charge: string; readonly kind: 'furnace' | 'coating'; readonly specification: string; readonly programme: string; readonly equipment: string; readonly equipmentId?: string; readonly members: readonly PlacedLot[] }
/** `attachment` is the digest of a file that was handed to the server before. */
export interface AttachFurnaceLog { readonly type: 'attachFurnaceLog'; readonly charge: string; readonly attachment: string; readonly fileName: string }
export type ChargeOwnCommand = OpenCharge | AttachFurnaceLog;
