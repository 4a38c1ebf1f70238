/** `lot` is the lot's number, e.g. `L26-0417`. */
export interface OpenLot { readonly type: 'openLot'; readonly lot: string; readonly product: string; readonly batch: string; readonly quantity: number; readonly trayCapacity: number; readonly order?: string }
export interface RecordSort { readonly type: 'recordSort'; readonly lot: string; readonly gate: string; readonly looked: number; readonly removed: readonly { readonly code: string; readonly pieces: number }[] }
export interface DestroyPieces { readonly type: 'destroyPieces'; readonly lot: string; readonly pieces: number; readonly reason: string }
export interface ScrapPieces { readonly type: 'scrapPieces'; readonly lot: string; readonly pieces: number; readonly reason: string }
export interface SplitLot { readonly type: 'splitLot'; readonly lot: string; readonly into: string; readonly pieces: number; readonly reason: string }
/** Signed by a releaser; a co-signer is needed when the releaser worked the last gate. */
export interface ReleaseLot { readonly type: 'releaseLot'; readonly lot: string }
/** Signed. */
export interface WithdrawRelease { readonly type: 'withdrawRelease'; readonly lot: string; readonly reason: string }
export interface PackBox { readonly type: 'packBox'; readonly lot: string; readonly pieces: number }
export interface PrintLabel { readonly type: 'printLabel'; readonly lot: string; readonly box: string; /** Asked for from the second print on. */ readonly reason?: string }
/** The label's code as a scanner read it back. */
export interface ReadLabel { readonly type: 'readLabel'; readonly lot: string; readonly box: string; readonly payload: string }
export interface VoidBox { readonly type: 'voidBox'; readonly lot: string; readonly box: string; readonly reason: string }
export interface ShipBox { readonly type: 'shipBox'; readonly lot: string; readonly box: string; readonly shipment: string; readonly order: string; readonly consignee: string }
/** Signed. An opened lot goes on under another version of its plan; nothing else ever moves it. */
export interface MoveLotToPlan { readonly type: 'moveLotToPlan'; readonly lot: string; readonly planVersion: number; readonly reason: string }
export type LotOwnCommand = OpenLot | RecordSort | DestroyPieces | ScrapPieces | SplitLot | ReleaseLot | WithdrawRelease | PackBox | PrintLabel | ReadLabel | VoidBox | ShipBox | MoveLotToPlan;
