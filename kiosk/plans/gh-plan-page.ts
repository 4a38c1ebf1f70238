import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, type InspectionPlan, type PlanState } from '../../shared/traveller/index.ts';
import { planVersionsWords as versionsWords } from '../../shared/words/plan-versions.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showMoment } from '../desk/show.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-tabs.ts';
import { keyStyles, partStyles } from '../parts/part-styles.ts';
import { planPath } from './catalogue-view.ts';
import './gh-plan-approval.ts';
import './gh-plan-at-size.ts';
import './gh-plan-changes.ts';
import './gh-plan-gates.ts';
import './gh-plan-history.ts';
import './gh-plan-lots.ts';
import { OwnTables } from './own-tables.ts';
import { sizeOf } from './size-of.ts';
import type { keptDraft } from './write/draft-store.ts';
import type { PlanDifference } from './write/plan-differences.ts';

const words = plansDeskWords;
type Version = PlanState['versions'][number];
type Differ = (before: InspectionPlan, after: InspectionPlan) => readonly PlanDifference[];

/** One plan: its versions, what changed in the one chosen, its gates, what it asks of a lot, its signatures, the lots under it. Or the writing of its next version. */
@customElement('gh-plan-page')
export class GhPlanPage extends LitElement {
  static override styles = [partStyles, deskStyles, keyStyles, css`
    :host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .keys { align-items: center; gap: var(--gap) 1em; }
    .keys { --target: 42px; --target-primary: 42px; }
    a.key { display: inline-flex; align-items: center; text-decoration: none; }
  `];
  @property() plan = '';
  @property() chosen = '';
  /** Where the writing is, `gate/characteristic`; null where nothing is written. */
  @property({ attribute: false }) writing: string | null = null;
  @state() private approves = false;
  @state() private size = '1000';
  @state() private differ: Differ | null = null;
  @state() private kept: typeof keptDraft | null = null;
  readonly #plan = new Asked<{ readonly state: PlanState | null }>(this, {
    key: () => this.plan, read: (id) => link.ask(`/api/states?stream=${encodeURIComponent(`plan:${id}`)}`), topics: ['catalogue'], streams: () => [`plan:${this.plan}`],
  });
  readonly #session = new Follow(this, () => link.session);
  readonly #tables = new OwnTables(this);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#fetchWriting();
  }
  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('plan')) this.approves = false;
  }

  override render() {
    const { value } = this.#plan;
    const back = html`<p class="screen-only"><a href="/plans">${words.back}</a></p>`;
    if (value === null) return html`${back}${askedNotice(this.#plan)}`;
    const versions = value.state?.versions ?? [];
    const version = versions.find(({ planVersion }) => String(planVersion) === this.chosen) ?? versions.find(({ inForce }) => inForce) ?? versions.at(-1);
    if (this.writing !== null) return html`${back}${this.#writing(version ?? null, versions)}`;
    const unknown = words.unknown(this.plan);
    if (version === undefined) return html`${back}<gh-notice kind="empty" happened=${unknown.happened} next=${unknown.next}></gh-notice>`;
    const changes = this.#changes(version, versions);
    return html`${back} ${askedNotice(this.#plan)} ${this.#head(version, versions)}
      ${changes === null ? nothing : html`<section class="sheet" aria-labelledby="changes"><h3 id="changes">${words.changesFrom(changes.from)}</h3><gh-plan-changes .changes=${changes.differences} empty=${words.noChanges}></gh-plan-changes></section>`}
      <gh-plan-gates .plan=${version.plan} from="${version.plan.id}/${version.planVersion}"></gh-plan-gates>
      <gh-plan-at-size .plan=${version.plan} .size=${sizeOf(this.size)} .tables=${this.#tables.tables}></gh-plan-at-size>
      ${version.plan.appliesTo === 'lot' ? html`<gh-plan-lots plan=${version.plan.id} .inForce=${versions.find(({ inForce }) => inForce)?.planVersion ?? null}></gh-plan-lots>` : nothing}
      <gh-plan-history .versions=${versions} .differ=${this.differ}></gh-plan-history>
      <gh-plan-approval .version=${version} .changes=${changes} ?open=${this.approves} @sheet-closed=${this.#closed} @plan-approved=${this.#closed}></gh-plan-approval>`;
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
          ${!engineers ? html`<p class="soft">${words.approve.mayNot}</p>` : html`<a class="key" href="${planPath(plan.id, planVersion)}?draft">${words.draft.start}</a>`}
          ${engineers && isDraft ? mine ? html`<p>${words.approve.yours}</p>` : html`<gh-button kind="primary" @click=${() => (this.approves = true)}>${words.approve.start}</gh-button>` : nothing}
        </div>${this.#exports(version)}</section>`;
  }

  /** The size that samples are stated for, here and on paper. */
  #exports({ plan, planVersion }: Version) {
    const size = sizeOf(this.size);
    const address = `/api/plans/${encodeURIComponent(plan.id)}/versions/${planVersion}/plan`;
    return html`<div class="keys screen-only"><gh-field label=${words.lotSize} hint=${words.lotSizeHint} entry="numeric" max-length="12" .value=${this.size} error=${size === null ? words.lotSizeWrong : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.size = detail.value)}></gh-field>
      ${size === null ? nothing : html`<a class="key" href="${address}.pdf?lotSize=${size}" download>${versionsWords.exports.pdf}</a> <a class="key" href="${address}.csv?lotSize=${size}" download>${versionsWords.exports.csv}</a>`}</div>`;
  }

  #writing(version: Version | null, versions: readonly Version[]) {
    const badge = this.#session.value?.badge ?? '';
    if (!mayGive('draftPlan', this.#session.value?.roles ?? [])) return html`<p class="soft">${words.approve.mayNot}</p>`;
    if (this.kept === null) return nothing;
    const begins = version?.plan ?? this.kept(badge, this.plan)?.before ?? null;
    const unknown = words.unknown(this.plan);
    if (begins === null) return html`<gh-notice kind="empty" happened=${unknown.happened} next=${unknown.next}></gh-notice>`;
    return html`<gh-plan-writing .begins=${begins} .from=${version?.planVersion ?? null} .versions=${versions} .tables=${this.#tables.tables} place=${this.writing ?? ''}></gh-plan-writing>`;
  }

  /** A version is read by what it changes. */
  #changes(version: Version, versions: readonly Version[]) {
    const before = versions.filter(({ planVersion }) => planVersion < version.planVersion).at(-1);
    return before === undefined || this.differ === null ? null : { from: before.planVersion, differences: this.differ(before.plan, version.plan) };
  }

  /** Writing and comparing versions bring the sampling tables along, so they come after the page. */
  async #fetchWriting(): Promise<void> {
    const [{ planDifferences }, { keptDraft: kept }] = await Promise.all([import('./write/plan-differences.ts'), import('./write/draft-store.ts'), import('./write/gh-plan-writing.ts')]);
    this.differ = planDifferences;
    this.kept = kept;
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
