import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { nextGate, standingHolds, verdictOf } from '../../shared/traveller/index.ts';
import type { CharacteristicResult, GateRecord, Role, Subject } from '../../shared/traveller/index.ts';
import type { Reader } from '../../shared/words/index.ts';
import { chartAddressAt } from '../desk/chart-address.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-verdict.ts';
import './gh-variables-view.ts';
import { partStyles } from '../parts/part-styles.ts';
import { linkKey } from './link-key.ts';
import { failedPositionSentence } from '../../shared/words/charge-slips.en.ts';
import { catalogue, format, travellerWords } from './speak.ts';

/** Who finds the charts desk. */
const CHART_ROLES: readonly Role[] = ['engineer', 'lab'];

/** The verdict of a gate, large, with what it rests on and what comes next. Its live region stays in place, so put it on the page before the verdict falls. */
@customElement('gh-verdict-panel')
export class GhVerdictPanel extends LitElement {
  static override styles = [partStyles, linkKey, css`.keys { padding-block: var(--pad); } summary { min-block-size: var(--target); display: list-item; align-content: center; cursor: pointer; font-weight: 650; } summary:focus-visible { outline: 3px solid var(--focus); } ul { list-style: none; columns: 22rem 2; column-gap: calc(2 * var(--pad)); padding-block-start: 0.4em; } li { break-inside: avoid; padding-block: 0.1em; border-block-end: var(--rule) solid var(--line); }`];
  @property({ attribute: false }) subject: Subject | null = null;
  /** The gate whose verdict is shown; null: none yet. */
  @property({ attribute: false }) gate: GateRecord | null = null;
  @property({ attribute: false }) reader: Reader = {};
  /** Where the list is that the person came from; empty: no key that leads there. */
  @property() back = '';
  /** Something is asked on this screen below the verdict: what lay within is folded away, so that it stays in sight. */
  @property({ type: Boolean }) askedBelow = false;
  /** Worked out on this kiosk and not confirmed by the server. */
  @property({ type: Boolean }) kept = false;

  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { subject, gate, reader } = this;
    const given = gate === null ? null : verdictOf(gate);
    if (subject === null || gate === null || given === null) return html`<gh-verdict></gh-verdict>`;
    const { verdict } = given;
    const { labels } = catalogue();
    const word = verdict.accepted ? labels.verdicts.accepted : labels.verdicts.rejected;
    const whole = catalogue().verdictSentence(verdict, reader);
    // The word stands large above; what it rests on follows it: "Rejected", "at 2 of 7 characteristics: …".
    const sentence = whole.startsWith(word) ? whole.slice(word.length).replace(/^:?\s*/, '') : whole;
    const lines = catalogue().verdictLines(verdict, reader);
    return html`<gh-verdict state=${verdict.accepted ? 'accepted' : 'rejected'} .word=${word} .sentence=${sentence}>
      <div>
        ${this.kept ? html`<p><strong>${travellerWords().verdict.kept}</strong></p>` : nothing}
        <p>${gate.name}. ${this.#next(subject)}</p>
        ${this.back === '' ? nothing : html`<p class="keys"><a class="key primary" href=${this.back}>${travellerWords().verdict.back}</a></p>`}
        ${(verdict.failedPositions ?? []).map((failed) => html`<p>${failedPositionSentence(failed, { format: format(), labels })}</p>`)}
        ${this.#lines(lines, verdict.results)}
        ${this.#charts(subject, gate, verdict.results)}
        ${verdict.results.map((result) => (result.detail.by === 'variables' ? html`<gh-variables-view .gate=${gate} .result=${result}></gh-variables-view>` : nothing))}
      </div>
    </gh-verdict>`;
  }

  #lines(lines: readonly string[], results: readonly { readonly accepted: boolean }[]) {
    const list = (shown: readonly string[]) => (shown.length === 0 ? nothing : html`<ul>${shown.map((line) => html`<li>${line}</li>`)}</ul>`);
    if (!this.askedBelow) return list(lines);
    const within = lines.filter((_, at) => results[at]?.accepted === true);
    const outside = lines.filter((_, at) => results[at]?.accepted === false);
    // A single one that failed is named in the sentence above.
    return html`${list(outside.length > 1 ? outside : [])}
      ${within.length === 0 ? nothing : html`<details><summary>${travellerWords().verdict.within(within.length)}</summary>${list(within)}</details>`}`;
  }

  /** Engineers and the lab go from a verdict to the charts of what it judged. */
  #charts(subject: Subject, gate: GateRecord, results: readonly CharacteristicResult[]) {
    const charted = results.filter(({ detail }) => detail.by !== 'grade' && detail.by !== 'once' && detail.by !== 'skipped');
    if (charted.length === 0 || !CHART_ROLES.some((role) => this.#session.value?.roles.includes(role))) return nothing;
    return html`<p>${travellerWords().verdict.charts} ${charted.map(({ characteristic, name }) => html`<a href=${chartAddressAt(subject, gate.id, characteristic)}>${name}</a> `)}</p>`;
  }

  #next(subject: Subject): string {
    const words = travellerWords().verdict;
    if (standingHolds(subject).length > 0) return words.held;
    const next = nextGate(subject);
    if (next === null) return words.last;
    return next.workedOn === subject.kind ? words.next(next.name, next.bench) : words.nextCharge(next.name);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-verdict-panel': GhVerdictPanel;
  }
}
