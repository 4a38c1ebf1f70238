import type { Concession, RouteStep, SubjectCommon } from '../lot/lot.ts';

export interface ChargeMember { readonly lot: string; readonly pieces: number; /** Levels or places where its trays stand. */ readonly places: readonly string[] }
/** A furnace or coating charge: the fold of its traveller. Its verdict stands for that gate of every member. */
export interface Charge extends SubjectCommon {
  readonly kind: 'furnace' | 'coating';
  readonly specification: { readonly id: string; readonly name: string };
  readonly plan: string;
  readonly planVersion: number;
  readonly programme: string;
  readonly equipment: string;
  readonly members: readonly ChargeMember[];
  readonly concessions: readonly Concession[];
}
export type { RouteStep };
