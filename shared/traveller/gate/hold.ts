import type { Nearness } from '../equipment/near.ts';

/** Why a subject stands still. */
export type HoldCause =
  | { readonly by: 'verdict'; readonly gate: string }
  | { readonly by: 'charge'; readonly gate: string; readonly charge: string; /** Failed positions of the charge that the lot lay near; empty: none. Absent on older slips and where no position failed. */ readonly near?: readonly { readonly position: string; readonly how: Nearness }[] }
  /** A gauge that gave readings was found out of tolerance. */
  | { readonly by: 'recall'; readonly gauge: string; readonly recall: string }
  /** The weights of this characteristic drift, and the plan says that this holds. */
  | { readonly by: 'drift'; readonly gate: string; readonly characteristic: string }
  /** A control chart that may hold has signalled with this gate's verdict; `chart` is its stream. */
  | { readonly by: 'chart'; readonly gate: string; readonly chart: string }
  | { readonly by: 'person' };

/** Holds that rest on a verdict, a charge's or the subject's own: they end by working it off. */
export function isOfVerdict(cause: HoldCause): cause is Extract<HoldCause, { readonly by: 'verdict' | 'charge' }> {
  return cause.by === 'verdict' || cause.by === 'charge';
}

export interface Hold {
  readonly id: string;
  readonly cause: HoldCause;
  readonly reason: string;
  readonly at: string;
  readonly by: string;
  readonly lifted: null | { readonly at: string; readonly by: string; readonly disposition: Disposition; readonly reason: string };
}

/** Of a charge: only these lots are done again; the others stay in it and are conceded or tested again. */
export interface SomeMembers { readonly lots: readonly string[]; readonly rest: { readonly by: 'retest' } | { readonly by: 'concession'; readonly statement: string } }

/** What an engineer may decide about a held subject. */
export type Disposition =
  /** Look at every piece, take the bad ones out, then inspect again. */
  | { readonly kind: 'sort' }
  | { readonly kind: 'rework'; readonly instruction: string }
  /** Test again on a new sample, for a reason written beforehand. */
  | { readonly kind: 'retest' }
  | { readonly kind: 'reSinter'; readonly some?: SomeMembers }
  | { readonly kind: 'recoat'; readonly some?: SomeMembers }
  /** Accept as it is, limited and stated on the certificate. */
  | { readonly kind: 'concession'; readonly statement: string }
  | { readonly kind: 'regrade'; readonly toProduct: string }
  | { readonly kind: 'scrap' }
  | { readonly kind: 'return'; readonly to: string }
  /** The ground for the hold is gone; only where no gate stands rejected. */
  | { readonly kind: 'clear' };
export type DispositionKind = Disposition['kind'];
