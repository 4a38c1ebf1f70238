import type { PlanState } from '../../../shared/traveller/index.ts';

/** The versions of plans whose rules name a table, those in force and those that still wait to be signed. */
export function namedBy(table: string, plans: readonly PlanState[]): readonly { readonly plan: string; readonly planVersion: number }[] {
  return plans.flatMap(({ id, versions }) => versions.filter(({ inForce, approvals }) => inForce || approvals.length < 2).flatMap(({ plan, planVersion }) => {
    const rules = plan.gates.flatMap(({ characteristics }) => characteristics.map(({ sampling }) => sampling));
    const names = rules.some((rule) => rule.rule === 'attributes' && Object.values(rule.ownTables ?? {}).includes(table));
    return names ? [{ plan: id, planVersion }] : [];
  }));
}
