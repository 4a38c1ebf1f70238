import type { Slip, SlipBody } from '../traveller/index.ts';

/** A slip as it travels to kiosks and programs: the fold's slip, its place in the journal and its hash. */
export interface StampedSlip<Body = SlipBody> extends Slip<Body> {
  readonly position: number;
  readonly clientId: string;
  readonly hash: string;
}
