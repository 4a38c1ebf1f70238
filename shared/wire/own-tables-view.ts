import { z } from 'zod';
import type { TableState } from '../traveller/index.ts';

/** A plant's own copy of a master table, with who loaded it, when and why. */
export interface LoadedCopy { readonly table: TableState['table']; readonly at: string; readonly by: string; readonly reason: string }

const cell = z.union([z.enum(['down', 'up', 'single', 'double', 'unreachable']), z.array(z.object({ ac: z.int().nullable(), re: z.int() }))]);
const row = z.object({ letter: z.string(), sizes: z.array(z.int()), cells: z.array(cell) });
const table = z.object({ id: z.string(), name: z.string(), severity: z.enum(['normal', 'tightened', 'reduced']), samples: z.enum(['single', 'double', 'multiple']), rows: z.array(row) });
export const ownTablesSchema = z.object({ tables: z.array(z.object({ table, at: z.string(), by: z.string(), reason: z.string() })) });
