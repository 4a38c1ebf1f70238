import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planWritingWords as words } from '../../../shared/words/plan-writing.en.ts';
import { planFaults } from '../../../shared/words/record-refusals.en.ts';
import { refusalNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Giving } from '../../desk/giving.ts';
import { showFigure } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import type { DraftWork } from './draft-work.ts';
import '../gh-plan-changes.ts';
import { placeText, gateAt, characteristicAt } from './plan-edits.ts';
import { placedFault, type PlacedFault } from './plan-fault-place.ts';
import { writingStyles } from './writing-styles.ts';

/**
 * What was changed, as a list, before it is drafted; why is asked.
 * @fires plan-drafted - with `{ plan, planVersion }`
 */
@customElement('gh-plan-review')
export class GhPlanReview extends LitElement {
  static override styles = [partStyles, deskStyles, writingStyles];
  @property({ attribute: false }) work: DraftWork | null = null;
  /** Fields whose text makes nothing sound, as sentences. */
  @property({ attribute: false }) unsound: readonly string[] = [];
  @property() back = '';
  @state() private asked = false;
  readonly #giving = new Giving(this);

  override render() {
    const { work } = this;
    const draft = work?.draft ?? null;
    if (work === null || draft === null) return nothing;
    const { differences, fault } = work;
    const version = draft.from === null ? null : showFigure(draft.from);
    const held = [...this.unsound, ...(fault === null ? [] : [this.#faultText(fault)])];
    return html`<div class="page-part sheet">
      <h2>${words.title(draft.now.name, version)}</h2>
      <p><a href=${this.back}>${words.back}</a></p>
      <section aria-label=${words.reviewTitle(showFigure(differences.length), version)}><h3>${words.reviewTitle(showFigure(differences.length), version)}</h3><gh-plan-changes .changes=${differences} empty=${words.nothing}></gh-plan-changes></section>
      ${held.length === 0 ? nothing : html`<gh-notice kind="refusal" happened=${words.unsound}><ul>${held.map((line) => html`<li>${line}</li>`)}</ul></gh-notice>`}
      ${refusalNotice(this.#giving)}
      <gh-field label=${words.why} hint=${words.whyHint} max-length="500" multiline .value=${draft.why} error=${this.asked && draft.why.trim() === '' ? words.whyMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => this.#say(detail.value)}></gh-field>
      <p class="soft">${words.next}</p>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save()}>${words.save}</gh-button></div>
    </div>`;
  }

  #faultText({ place, why }: PlacedFault): string {
    const plan = this.work?.draft?.now;
    const named = plan === undefined ? [] : [gateAt(plan, place)?.name, characteristicAt(plan, place)?.name].filter((name) => name !== undefined);
    return words.unsoundAt(named.length === 0 ? placeText(place) || words.itself : named.join(', '), planFaults[why]);
  }

  #say(why: string): void {
    this.work?.say(why);
    this.requestUpdate();
  }

  async #save(): Promise<void> {
    const { work } = this;
    const draft = work?.draft ?? null;
    this.asked = true;
    if (work === null || draft === null || work.differences.length === 0 || work.fault !== null || this.unsound.length > 0 || draft.why.trim() === '') return;
    const done = await this.#giving.give('draft', { type: 'draftPlan', plan: draft.now, why: draft.why.trim() });
    const refusal = this.#giving.refused?.refusal;
    if (refusal?.code === 'planUnsound') work.find(placedFault(refusal, draft.now));
    const drafted = done?.state === 'acknowledged' ? done.slips.find(({ body }) => body.type === 'planDrafted')?.body : undefined;
    if (drafted?.type === 'planDrafted') tell(this, 'plan-drafted', { plan: drafted.plan.id, planVersion: drafted.planVersion });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-review': GhPlanReview;
  }
}
