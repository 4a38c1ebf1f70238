import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, type PlanState } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showMoment } from '../desk/show.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-tabs.ts';
import { partStyles } from '../parts/part-styles.ts';
import { planPath } from './catalogue-view.ts';
import { planChanges } from './draft-fields.ts';
import './gh-plan-approval.ts';
import './gh-plan-at-size.ts';
import './gh-plan-draft.ts';
import './gh-plan-gates.ts';

const words = plansDeskWords;
type Version = PlanState['versions'][number];

/** One plan: its versions, the gates of the one chosen, what it asks of a lot, what changed, its approvals. */
@customElement('gh-plan-page')
export class GhPlanPage extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(2 * var(--pad)); }`];
  @property() plan = '';
  @property() chosen = '';
  @property({ type: Boolean }) drafting = false;
  @state() private approves = false;
  readonly #plan = new Asked<{ readonly state: PlanState | null }>(this, {
    key: () => this.plan, read: (id) => link.ask(`/api/states?stream=${encodeURIComponent(`plan:${id}`)}`), topics: ['catalogue'], streams: () => [`plan:${this.plan}`],
  });
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { value } = this.#plan;
    const back = html`<p class="screen-only"><a href="/plans">${words.back}</a></p>`;
    if (value === null) return html`${back}${askedNotice(this.#plan)}`;
    const versions = value.state?.versions ?? [];
    const version = versions.find(({ planVersion }) => String(planVersion) === this.chosen) ?? versions.find(({ inForce }) => inForce) ?? versions.at(-1);
    const unknown = words.unknown(this.plan);
    if (version === undefined) return html`${back}<gh-notice kind="empty" happened=${unknown.happened} next=${unknown.next}></gh-notice>`;
    if (this.drafting) return html`${back}<gh-plan-draft .version=${version}></gh-plan-draft>`;
    return html`${back} ${askedNotice(this.#plan)} ${this.#head(version, versions)} ${this.#changes(version, versions)}
      <gh-plan-gates .plan=${version.plan}></gh-plan-gates>
      ${version.plan.appliesTo === 'lot' ? html`<gh-plan-at-size .plan=${version.plan}></gh-plan-at-size>` : nothing}
      <gh-plan-approval .version=${version} ?open=${this.approves} @sheet-closed=${this.#closed} @plan-approved=${this.#closed}></gh-plan-approval>`;
  }

  #head(version: Version, versions: readonly Version[]) {
    const { plan, planVersion, inForce, approvals, why, draftedBy, at } = version;
    const badge = this.#session.value?.badge ?? '';
    const engineers = mayGive('approvePlan', this.#session.value?.roles ?? []);
    const isDraft = !inForce && approvals.length < 2;
    const [mark, word] = inForce ? (['accepted', words.standing.inForce] as const) : isDraft ? (['waiting', words.standing.draft] as const) : (['corrected', words.standing.former] as const);
    const mine = approvals.some((signature) => signature.badge === badge);
    return html`<div class="head"><h2>${plan.name} <span class="soft figure">${plan.id}</span></h2><gh-state-mark state=${mark} word="${words.version(planVersion)}: ${word}" boxed></gh-state-mark></div>
      <gh-tabs label=${words.versions} current=${planPath(plan.id, planVersion)} .tabs=${versions.map((each) => ({ href: planPath(plan.id, each.planVersion), text: words.version(each.planVersion) }))}></gh-tabs>
      <section class="sheet"><p>${words.drafted(approvals.find((signature) => signature.badge === draftedBy)?.name ?? draftedBy, showMoment(at), why)}</p>
        <p>${words.approvals(approvals.length)}${approvals.length === 0 ? nothing : html`: ${approvals.map((signature) => words.approvedBy(signature.name, showMoment(signature.at))).join('; ')}`}</p>
        <p class="soft">${words.keptNote}</p>
        <div class="keys screen-only">
          ${!engineers ? html`<p class="soft">${words.approve.mayNot}</p>` : html`<a href="${planPath(plan.id, planVersion)}?draft">${words.draft.start}</a>`}
          ${engineers && isDraft ? mine ? html`<p>${words.approve.yours}</p>` : html`<gh-button kind="primary" @click=${() => (this.approves = true)}>${words.approve.start}</gh-button>` : nothing}
        </div></section>`;
  }

  /** A draft is read by what it changes. */
  #changes(version: Version, versions: readonly Version[]) {
    const before = versions.filter(({ planVersion }) => planVersion < version.planVersion).at(-1);
    if (before === undefined) return nothing;
    const changes = planChanges(before.plan, version.plan);
    return html`<section class="sheet" aria-labelledby="changes"><h3 id="changes">${words.changesFrom(before.planVersion)}</h3>
      ${changes.length === 0 ? html`<p class="soft">${words.noChanges}</p>` : html`<ul class="lines">${changes.map(({ where, from, to }) => html`<li>${words.change(where, from, to)}</li>`)}</ul>`}</section>`;
  }

  readonly #closed = (): void => {
    this.approves = false;
    void this.#plan.again();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-page': GhPlanPage;
  }
}
