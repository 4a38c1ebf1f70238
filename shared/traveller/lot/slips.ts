import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import type { Verdict } from '../gate/verdict.ts';
import type { Signature } from '../stamp.ts';
import type { Cell } from '../equipment/charge-map.ts';
import type { CameAgain, LotProduct, PressTarget, RouteStep } from './lot.ts';

/** What has happened to an insert lot. */
export type LotSlip = GateSlip | CommonSlip
  | { readonly type: 'lotOpened'; readonly lot: string; readonly product: LotProduct; readonly plan: string; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly batch: string; readonly quantity: number; readonly trayCapacity: number; readonly order: string | null; readonly press: PressTarget; readonly splitFrom: string | null; readonly demo: boolean }
  /** Corrected powder, and the lot is not pressed yet: it is pressed to this. */
  | { readonly type: 'pressTargetRevised'; readonly press: PressTarget }
  /** Corrected powder, and the lot was pressed to the earlier target: this is what it would have been. */
  | { readonly type: 'pressTargetOutdated'; readonly press: PressTarget }
  | { readonly type: 'chargeJoined'; readonly charge: string; readonly gate: string; readonly places: readonly string[]; /** Where the charge has a map. */ readonly cells?: readonly Cell[]; /** Where the lot had come to the gate before. */ readonly again?: CameAgain; /** The member of the charge that a part was split from. */ readonly member?: string }
  | { readonly type: 'gateVerdictInherited'; readonly gate: string; readonly from: string; readonly verdict: Verdict; readonly revised: boolean }
  | { readonly type: 'gateReopened'; readonly gate: string; readonly from: string; readonly disposition: 'retest' | 'reSinter' | 'recoat' | 'rework' | 'concession'; readonly statement: string | null; /** The hold lifted by it; null where a concession is taken along without one. */ readonly hold: string | null; readonly signature: Signature }
  | { readonly type: 'lotSorted'; readonly gate: string; readonly looked: number; readonly removed: readonly { readonly code: string; readonly pieces: number }[] }
  | { readonly type: 'piecesDestroyed'; readonly pieces: number; readonly gate: string | null; readonly reason: string }
  | { readonly type: 'piecesScrapped'; readonly pieces: number; readonly gate: string | null; readonly reason: string }
  | { readonly type: 'piecesSplitOff'; readonly into: string; readonly pieces: number; readonly reason: string }
  | { readonly type: 'lotMovedToPlan'; readonly plan: string; readonly from: number; readonly planVersion: number; readonly route: readonly RouteStep[]; readonly reason: string; readonly signature: Signature }
  | { readonly type: 'lotReleased'; readonly certificate: string; readonly quantity: number; readonly signatures: readonly Signature[] }
  | { readonly type: 'releaseWithdrawn'; readonly certificate: string; readonly reason: string; readonly signature: Signature }
  | { readonly type: 'boxPacked'; readonly box: string; readonly pieces: number }
  | { readonly type: 'labelPrinted'; readonly box: string; readonly copy: number; readonly reason: string | null; readonly payload: string }
  | { readonly type: 'labelRead'; readonly box: string; readonly payload: string }
  | { readonly type: 'boxVoided'; readonly box: string; readonly reason: string }
  | { readonly type: 'boxShipped'; readonly box: string; readonly shipment: string; readonly order: string; readonly consignee: string };
