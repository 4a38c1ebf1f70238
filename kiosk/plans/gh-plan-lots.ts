import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import { planVersionsWords } from '../../shared/words/plan-versions.en.ts';
import type { PlanLotRow } from '../../shared/wire/plan-lots-view.ts';
import { askedNotice, refusalNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords, labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { partStyles } from '../parts/part-styles.ts';
import { travellerPath } from '../shell/routes.ts';

const words = planVersionsWords.lots;
const columns = [
  { key: 'lot', head: words.columns.lot, sortable: true, filterable: true }, { key: 'product', head: words.columns.product, filterable: true }, { key: 'version', head: words.columns.version, sortable: true }, { key: 'where', head: words.columns.where, filterable: true },
];

/** Lots that are not on the version in force, each with the key that moves it there: on purpose, with a reason and a signature. */
@customElement('gh-plan-lots')
export class GhPlanLots extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() plan = '';
  @property({ attribute: false }) inForce: number | null = null;
  @state() private moving: PlanLotRow | null = null;
  @state() private reason = '';
  @state() private asked = false;
  @state() private done = '';
  readonly #lots = new Asked<{ readonly rows: readonly PlanLotRow[] }>(this, { key: () => this.plan, read: (plan) => link.ask(`/api/plans/${encodeURIComponent(plan)}/lots`), topics: ['catalogue', 'bench'] });
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);
  readonly #table = new SortedTable(this);

  override render() {
    const { inForce } = this;
    const { value } = this.#lots;
    if (inForce === null) return nothing;
    const rows = value?.rows.filter(({ planVersion }) => planVersion !== inForce) ?? [];
    const may = mayGive('moveLotToPlan', this.#session.value?.roles ?? []);
    return html`<div class="sheet"><p>${words.lead}</p>${askedNotice(this.#lots)}
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${this.done}></gh-notice>`}
      ${value === null ? nothing : this.#table.table(words.caption(showFigure(inForce)), may && rows.length > 0 ? [...columns, { key: 'move', head: words.columns.move }] : columns, rows.map((row) => this.#row(row, inForce)), { empty: words.empty })}
      ${this.#sheet(inForce)}</div>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('moving') && this.moving !== null) void focusSheet(this);
  }

  #row(row: PlanLotRow, inForce: number): DeskRow {
    const { id, title, planVersion, gateName, standing } = row;
    return {
      key: id, href: travellerPath('lot', id), texts: { lot: id, product: title, version: words.version(showFigure(planVersion)), where: gateName === null ? labels.standings[standing] : `${gateName}, ${labels.standings[standing].toLowerCase()}` },
      shown: { move: html`<gh-button @click=${() => this.#begin(row)}>${words.move(id, showFigure(inForce))}</gh-button>` },
    };
  }

  #sheet(inForce: number) {
    const { moving } = this;
    const session = this.#session.value;
    if (session === null) return nothing;
    return html`<gh-sheet ?open=${moving !== null} heading=${moving === null ? '' : words.heading(moving.id, showFigure(moving.planVersion), showFigure(inForce))} close-word=${deskWords.cancel} @sheet-closed=${() => (this.moving = null)}>
      ${refusalNotice(this.#giving)}
      <gh-field label=${words.reason} hint=${words.reasonHint} max-length="200" .value=${this.reason} error=${this.asked && this.reason.trim() === '' ? words.reasonMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
      <gh-signature meaning=${words.meaning} who="${session.name} (${session.badge})" statement=${moving === null ? '' : words.statement(moving.id, showFigure(inForce))} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${this.#sign}></gh-signature>
    </gh-sheet>`;
  }

  #begin(row: PlanLotRow): void {
    this.moving = row;
    this.reason = this.done = '';
    this.asked = false;
    this.#giving.forget();
  }

  readonly #sign = async ({ detail }: CustomEvent<{ pin: string }>): Promise<void> => {
    const { moving, inForce } = this;
    this.asked = true;
    if (moving === null || inForce === null || this.reason.trim() === '') return;
    if ((await this.#giving.give('move', { type: 'moveLotToPlan', lot: moving.id, planVersion: inForce, reason: this.reason.trim() }, { pin: detail.pin })) === null) return;
    this.moving = null;
    this.done = words.moved(moving.id, showFigure(inForce));
    await this.#lots.again();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-lots': GhPlanLots;
  }
}
