import { requireWhole } from '../../ground/outside-domain.ts';
import { aqlColumn } from './aqls.ts';
import { tableLines } from './sampling-tables.ts';
import type { OwnTable } from './sampling-tables.ts';
import type { AttributesPlan } from './single-plan.ts';

/**
 * Would the lot have passed the next smaller AQL too? This feeds the switching score, which is kept on normal
 * inspection: the tighter plan is the neighbour on the left in the normal table, in the row of the letter really used.
 * Where that neighbour holds no plan (Ac 0 and 1) the score asks only whether the lot was accepted, and so does this function; the
 * same answer stands for letter S, which the normal table does not have.
 * @param tables the plant's own copies of master tables: where one stands in for the normal single table, the neighbour is read there
 * @throws OutsideDomain unless `found` is a whole number, 0 or more
 * @see ISO 2859-1:1999 9.3.3.2 (from memory); which row counts after an arrow is left open there, this is the natural reading
 * @example tighterWouldAccept(planWithAc3, 3) // false: one step tighter has Ac 2
 */
export function tighterWouldAccept(plan: Pick<AttributesPlan, 'letter' | 'aqlPercent' | 'ac'>, found: number, tables: readonly OwnTable[] = []): boolean {
  requireWhole('found', found, 0, Number.MAX_SAFE_INTEGER);
  const own = tables.find(({ severity, samples }) => severity === 'normal' && samples === 'single');
  const row = (own?.rows ?? tableLines('single', 'normal'))?.find(({ letter }) => letter === plan.letter);
  const tighter = row?.cells[aqlColumn(plan.aqlPercent) - 1];
  return found <= (typeof tighter === 'object' ? Math.min(tighter[0]?.ac ?? plan.ac, plan.ac) : plan.ac);
}
