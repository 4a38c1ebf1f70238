import type { Role } from '../rights.ts';
/** PINs are never on a slip; the server keeps their hashes beside the journal. */
export type PersonSlip =
  | { readonly type: 'personEnrolled'; readonly badge: string; readonly name: string; readonly roles: readonly Role[] }
  | { readonly type: 'personChanged'; readonly name: string; readonly roles: readonly Role[]; readonly active: boolean; readonly reason: string }
  | { readonly type: 'pinChanged'; /** True when the person chose it, false when the keeper set a first one. */ readonly own: boolean };
export type PersonCommand =
  | { readonly type: 'enrolPerson'; readonly badge: string; readonly name: string; readonly roles: readonly Role[]; readonly pin: string }
  | { readonly type: 'changePerson'; readonly badge: string; readonly name: string; readonly roles: readonly Role[]; readonly active: boolean; readonly reason: string }
  | { readonly type: 'changePin'; readonly badge: string; readonly pin: string };
