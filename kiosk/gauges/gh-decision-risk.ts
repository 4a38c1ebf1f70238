import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { decisionRisk, type DecisionRisk, type Measured } from '../../shared/traveller/index.ts';
import { decisionRiskWords as words, riskText } from '../../shared/words/decision-risk.en.ts';
import { labels } from '../../shared/words/labels.en.ts';
import { formatFor } from '../../shared/words/format.ts';
import { localeFor } from '../../shared/words/locale.ts';
import '../parts/gh-button.ts';
import { partStyles } from '../parts/part-styles.ts';

/** What the risk is reckoned from, and where the process was taken from, in words. */
export interface RiskBasis { readonly uncertainty: number; readonly coverageFactor?: number | undefined; readonly mean: number; readonly s: number | null; readonly process: string }

/** The risk of a wrong decision for a gauge and a process, with its formula, inputs and source on asking. */
@customElement('gh-decision-risk')
export class GhDecisionRisk extends LitElement {
  static override styles = [
    partStyles,
    css`
      :host { display: grid; gap: var(--gap); }
      dl { display: flex; flex-wrap: wrap; margin: 0; background: var(--slip); border: var(--rule) solid var(--line-strong); }
      dl > div { flex: 1 1 auto; padding: 0.3em var(--pad); border-inline-end: var(--rule) solid var(--line); }
      dt { font-size: var(--text-small); color: var(--ink-soft); }
      dd { margin: 0; font-family: var(--face-figures); font-weight: 650; }
      .large dd { font-size: var(--text-large); }
      .soft { color: var(--ink-soft); }
    `,
  ];
  @property({ attribute: false }) characteristic: Measured | null = null;
  @property({ attribute: false }) basis: RiskBasis | null = null;
  @state() private asked = false;

  override render() {
    const { characteristic, basis } = this;
    if (characteristic === null || basis === null) return nothing;
    const found = decisionRisk(characteristic, basis);
    return html`<div role="status">${found.known ? this.#shown(found, characteristic) : html`<p>${words.unknown[found.why]}</p>`}</div>
      <p class="soft">${basis.process}</p>
      <div><gh-button @click=${() => (this.asked = !this.asked)}>${this.asked ? words.hide : words.how}</gh-button></div>
      ${this.asked ? this.#how(found, characteristic, basis) : nothing}`;
  }

  #shown({ risk, limits, capability }: Extract<DecisionRisk, { known: true }>, { unit, decimals }: Measured) {
    const format = formatFor(localeFor(document.documentElement.lang));
    const written = (limit: number | null) => (limit === null ? null : format.number(limit, Math.min(6, decimals + (limits.acceptLower === limits.lower && limits.acceptUpper === limits.upper ? 0 : 1))));
    return facts('large', [
      [words.consumer, riskText(risk.consumer, format)], [words.producer, riskText(risk.producer, format)], [words.consumerOf, riskText(risk.consumerOfAccepted, format)], [words.producerOf, riskText(risk.producerOfRejected, format)],
      [words.capability, capability === null ? words.none : format.number(capability, 1)], [words.judged, `${labels.between(written(limits.acceptLower), written(limits.acceptUpper))} ${unit}`],
    ]);
  }

  #how(found: DecisionRisk, { lower, upper, decimals, unit, decisionRule }: Measured, { mean, s, uncertainty, coverageFactor = 2 }: RiskBasis) {
    const format = formatFor(localeFor(document.documentElement.lang));
    const figure = (value: number | null) => (value === null ? words.none : `${format.number(Number(value.toPrecision(5)))} ${unit}`);
    const written = (limit: number | null) => (limit === null ? null : format.number(limit, decimals));
    return html`<section aria-label=${words.how}>
      ${words.formula.map((line) => html`<p>${line}</p>`)}
      ${facts('', [
        [words.inputs.mean, figure(mean)], [words.inputs.s, figure(s)], [words.inputs.u, `${figure(uncertainty)} / ${format.number(coverageFactor)} = ${figure(uncertainty / coverageFactor)}`], [words.inputs.deviation, found.known ? figure(found.deviation) : words.none],
        [words.inputs.tolerance, `${labels.between(written(lower), written(upper))} ${unit}`], [words.inputs.rule, labels.decisionRules[decisionRule]],
      ])}
      <p class="soft">${words.source}</p></section>`;
  }
}

function facts(kind: string, lines: readonly (readonly [string, string])[]) {
  return html`<dl class=${kind}>${lines.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-decision-risk': GhDecisionRisk;
  }
}
