import type { Database } from 'better-sqlite3';
import type { EquipmentCard, GaugeCard, GradeCard, LayerCard, PlantCard, PressCard, ProductCard, ProgrammeCard, Skipping, Switching } from '../../shared/traveller/index.ts';
import type { WrittenCaution } from '../../shared/wire/cautions-view.ts';
import { pressGiver, SERVER } from '../../shared/traveller/index.ts';
import type { LoadedCopy } from '../../shared/wire/own-tables-view.ts';
import type { PersonRow, SkipRow, SwitchingRow } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';
import { gaugeRows } from './gauge-rows.ts';
import { DESK_BENCHES } from './standing.ts';

export interface PlanEntry {
  readonly id: string; readonly name: string; readonly appliesTo: string;
  readonly versions: readonly { readonly planVersion: number; readonly inForce: boolean; readonly approvals: number; readonly why: string }[];
}
/** A gauge with what is known against it. */
export type GaugeListed = GaugeCard & { readonly withdrawn: string | null; readonly outOfTolerance: string | null; readonly lastGoodAt: string | null; readonly openRecalls: number };
export interface CatalogueView {
  readonly products: readonly ProductCard[]; readonly grades: readonly GradeCard[]; readonly layers: readonly LayerCard[];
  readonly plans: readonly PlanEntry[]; readonly gauges: readonly GaugeListed[];
  readonly equipment: readonly EquipmentCard[]; readonly programmes: readonly ProgrammeCard[];
}

/** The plant's records as lists: catalogue, plans, gauges, people, switching states. */
export class Records {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  plant(): PlantCard | null {
    return this.#cards<PlantCard>('plant')[0]?.card ?? null;
  }

  catalogue(): CatalogueView {
    return {
      products: this.#cards<ProductCard>('product').map(({ card }) => card), grades: this.#cards<GradeCard>('grade').map(({ card }) => card),
      layers: this.#cards<LayerCard>('layer').map(({ card }) => card), plans: this.#plans(),
      gauges: gaugeRows(this.#db).map(({ card, withdrawn, outOfTolerance, lastGood, recalls }) => ({ ...card, withdrawn, outOfTolerance, lastGoodAt: lastGood?.at ?? null, openRecalls: recalls.filter(({ closed }) => closed === null).length })),
      equipment: this.#cards<EquipmentCard>('equipment').map(({ card }) => card), programmes: this.#cards<ProgrammeCard>('programme').map(({ card }) => card),
    };
  }

  /** Presses with their balances. */
  presses(): PressCard[] {
    return this.#cards<PressCard>('press').map(({ card }) => card);
  }

  /** The plant's own copies of master tables. */
  ownTables(): LoadedCopy[] {
    return this.#cards<LoadedCopy>('table').map(({ card }) => card);
  }

  /** Cautions that the plant has worded, switched off or added. */
  cautions(): WrittenCaution[] {
    return this.#cards<WrittenCaution>('caution').map(({ card }) => card);
  }

  /** Every bench that a plan in force or a gauge names, and the desks that none does. */
  benches(): string[] {
    const planned = prepared<[], { benches: string }>(this.#db, 'SELECT benches FROM plan_version WHERE in_force = 1').all().flatMap(({ benches }): string[] => JSON.parse(benches));
    const gauged = this.#cards<GaugeCard>('gauge').flatMap(({ card }) => [...(card.bench === null ? [] : [card.bench]), ...(card.benches ?? [])]);
    return [...new Set([...planned, ...gauged].sort()), ...Object.values(DESK_BENCHES)];
  }

  people(): PersonRow[] {
    const rows = prepared<[], { badge: string; name: string; roles: string; active: number }>(this.#db, 'SELECT badge, name, roles, active FROM person_row ORDER BY badge').all();
    return rows.map(({ badge, name, roles, active }) => ({ badge, name, roles: JSON.parse(roles), active: active === 1 }));
  }

  /** Names by badge, those of presses by what stands on the slips their balances give, and the server's own. */
  names(): Record<string, string> {
    const people = prepared<[], { badge: string; name: string }>(this.#db, 'SELECT badge, name FROM person_row').all().map(({ badge, name }): [string, string] => [badge, name]);
    return Object.fromEntries([[SERVER, SERVER], ...this.presses().map(({ id, name }): [string, string] => [pressGiver(id), name]), ...people]);
  }

  switching(): SwitchingRow[] {
    const rows = prepared<[], { state: string }>(this.#db, 'SELECT state FROM switching_row ORDER BY stream').all();
    return rows.map(({ state }) => switchingRow(JSON.parse(state)));
  }

  /** Counts of lots that may be passed over. */
  skipping(): SkipRow[] {
    const rows = prepared<[], { state: string }>(this.#db, 'SELECT state FROM skip_row ORDER BY stream').all();
    return rows.map(({ state }) => skipRow(JSON.parse(state)));
  }

  #plans(): PlanEntry[] {
    const sql = `SELECT plan, plan_version AS planVersion, name, applies_to AS appliesTo, why, approvals, in_force AS inForce FROM plan_version ORDER BY plan, plan_version`;
    interface Row { plan: string; planVersion: number; name: string; appliesTo: string; why: string; approvals: number; inForce: number }
    const byPlan = new Map<string, Row[]>();
    for (const row of prepared<[], Row>(this.#db, sql).all()) byPlan.set(row.plan, [...(byPlan.get(row.plan) ?? []), row]);
    return [...byPlan].map(([id, rows]) => ({
      id, name: rows.at(-1)?.name ?? id, appliesTo: rows.at(-1)?.appliesTo ?? '',
      versions: rows.map(({ planVersion, inForce, approvals, why }) => ({ planVersion, inForce: inForce === 1, approvals, why })),
    }));
  }

  #cards<Card>(kind: string): { readonly card: Card; readonly withdrawn: string | null }[] {
    const rows = prepared<[string], { card: string; withdrawn: string | null }>(this.#db, 'SELECT card, withdrawn FROM card WHERE kind = ? ORDER BY id').all(kind);
    return rows.map(({ card, withdrawn }) => ({ card: JSON.parse(card), withdrawn }));
  }
}

function skipRow({ stream, product, gate, characteristic, state, lots, endedBy }: Skipping): SkipRow {
  const { clearance, oneIn, skipping, acceptedInRow } = state;
  return { stream, product, gate, characteristic, clearance, oneIn, skipping, acceptedInRow, lots: [...lots], endedBy };
}

function switchingRow({ stream, product, gate, characteristic, class: findingClass, state, lastMove }: Switching): SwitchingRow {
  const { severity, score, acceptedInRow, notAcceptedOnTightened, steady, reducedAllowed, recent } = state;
  return {
    stream, product, gate, characteristic, class: findingClass, severity, score, acceptedInRow, notAcceptedOnTightened, steady, reducedAllowed,
    movedAt: lastMove?.at ?? null, movedWhy: lastMove?.why ?? null, movedLots: [...(lastMove?.lots ?? [])], recent: recent.map(({ lot, accepted }) => ({ lot, accepted })),
  };
}
