import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlanState } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { tell } from '../parts/tell.ts';
import './gh-plan-changes.ts';
import type { PlanDifference } from './write/plan-differences.ts';

const words = plansDeskWords.approve;

/**
 * An engineer's signature under a version of a plan.
 * @fires plan-approved - when it stands
 */
@customElement('gh-plan-approval')
export class GhPlanApproval extends LitElement {
  @property({ attribute: false }) version: PlanState['versions'][number] | null = null;
  /** What it changes against the version before; null for a first version. */
  @property({ attribute: false }) changes: { readonly from: number; readonly differences: readonly PlanDifference[] } | null = null;
  @property({ type: Boolean }) open = false;
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { version } = this;
    const session = this.#session.value;
    if (version === null || session === null) return nothing;
    const { plan, planVersion } = version;
    return html`<gh-sheet ?open=${this.open} heading=${words.heading(plan.name, planVersion)} close-word=${deskWords.cancel}>
      ${refusalNotice(this.#giving)}
      <gh-signature meaning=${words.meaning} who="${session.name} (${session.badge})" statement=${words.statement(plan.name, planVersion)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${this.#sign}>
        ${this.changes === null ? html`<p>${words.first}</p>` : html`<h3>${plansDeskWords.changesFrom(this.changes.from)}</h3><gh-plan-changes .changes=${this.changes.differences} empty=${plansDeskWords.noChanges}></gh-plan-changes>`}
      </gh-signature>
    </gh-sheet>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.open && changed.has('open')) void focusSheet(this);
  }

  async #sign(event: CustomEvent<{ pin: string }>): Promise<void> {
    const { version } = this;
    if (version === null) return;
    const { plan, planVersion } = version;
    if ((await this.#giving.give('approve', { type: 'approvePlan', plan: plan.id, planVersion }, { pin: event.detail.pin })) !== null) tell(this, 'plan-approved', { plan: plan.id, planVersion });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-approval': GhPlanApproval;
  }
}
