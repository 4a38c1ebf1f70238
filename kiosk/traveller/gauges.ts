import type { GaugeCard } from '../../shared/traveller/index.ts';
import { link, LinkFault } from '../link/index.ts';

/** A gauge as the catalogue lists it. */
export type ListedGauge = GaugeCard & { readonly withdrawn: string | null; /** The recall that stopped it. */ readonly outOfTolerance: string | null };

/** Why a gauge may not give a reading that counts today; null when it may. */
export function gaugeFault({ withdrawn, outOfTolerance, calibrationDue }: ListedGauge, today: string): 'withdrawn' | 'outOfTolerance' | 'overdue' | null {
  if (withdrawn !== null) return 'withdrawn';
  if (outOfTolerance !== null) return 'outOfTolerance';
  return calibrationDue < today ? 'overdue' : null;
}

let listed: Promise<readonly ListedGauge[]> | null = null;
/** Chosen gauge by kind and bench: chosen once a session and remembered while the page lives. */
const chosen = new Map<string, string>();

/** All gauges of the plant, fetched once and again after they changed. Empty where they cannot be fetched. */
export function gaugesOfPlant(): Promise<readonly ListedGauge[]> {
  if (listed === null) {
    const asked = link.ask<{ gauges: readonly ListedGauge[] }>('/api/catalogue').then(({ gauges }) => gauges);
    listed = asked.catch((error: unknown) => {
      listed = null;
      if (error instanceof LinkFault) return [];
      throw error;
    });
  }
  return listed;
}
/** Forgets the list, after the catalogue has changed. */
export function forgetGauges(): void {
  listed = null;
}

/** Gauges of this kind, those of the bench first. */
export function gaugesOfKind(gauges: readonly ListedGauge[], kind: string, bench: string): readonly ListedGauge[] {
  return gauges.filter(({ gaugeKind }) => gaugeKind === kind).sort((a, b) => Number(isOf(b, bench)) - Number(isOf(a, bench)) || a.id.localeCompare(b.id));
}

/** The gauge in use for this kind: the one chosen, or the only one that can be. */
export function gaugeInUse(gauges: readonly ListedGauge[], kind: string, bench: string, today: string): ListedGauge | null {
  const fit = gaugesOfKind(gauges, kind, bench).filter((gauge) => gaugeFault(gauge, today) === null);
  const remembered = fit.find(({ id }) => id === chosen.get(`${bench}/${kind}`));
  if (remembered !== undefined) return remembered;
  const here = fit.filter((gauge) => isOf(gauge, bench));
  return (here.length === 1 ? here[0] : fit.length === 1 ? fit[0] : undefined) ?? null;
}

/** True where the gauge belongs to the bench or is used there too. */
function isOf({ bench: own, benches = [] }: ListedGauge, bench: string): boolean {
  return own === bench || benches.includes(bench);
}

/** Remembers a choice. */
export function chooseGauge(kind: string, bench: string, id: string): void {
  chosen.set(`${bench}/${kind}`, id);
}
