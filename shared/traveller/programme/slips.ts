import type { ProgrammeLimits } from '../../carbide/furnace-log/index.ts';

/** A furnace programme's limits, found by the number charges name. Every change is a whole new text; a log keeps the limits it was held against. */
export interface ProgrammeCard extends ProgrammeLimits { readonly id: string; readonly name: string }
export interface ProgrammeState { readonly kind: 'programme'; readonly stream: string; readonly version: number; readonly card: ProgrammeCard }
export type ProgrammeSlip = { readonly type: 'programmeDefined'; readonly programme: ProgrammeCard };
export interface DefineProgramme { readonly type: 'defineProgramme'; readonly programme: ProgrammeCard }
