import type { OwnTable } from '../../sampling/attributes/index.ts';

/** Loads the plant's own copy of a master table, as CSV. What is loaded under an id stands for good; a corrected copy takes another. */
export interface LoadTable { readonly type: 'loadTable'; readonly table: string; readonly name: string; readonly severity: 'normal' | 'tightened' | 'reduced'; readonly csv: string; readonly reason: string }
export type TableCommand = LoadTable;

export type TableSlip = { readonly type: 'tableLoaded'; readonly table: OwnTable; readonly reason: string };

/** A plant's own copy of a master table. */
export interface TableState { readonly kind: 'table'; readonly stream: string; readonly version: number; readonly table: OwnTable; readonly loadedBy: string; readonly at: string; readonly reason: string }
