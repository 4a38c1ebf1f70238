import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { GatePlan, InspectionPlan } from '../../shared/traveller/index.ts';
import { decisionRiskWords } from '../../shared/words/decision-risk.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { labels } from '../desk/words.ts';
import '../gauges/gh-risk-what-if.ts';
import '../parts/gh-table.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-compare-links.ts';
import { limitLines, ruleText } from './rule-text.ts';

const words = plansDeskWords.gate;
const columns = [
  { key: 'characteristic', head: words.columns.characteristic }, { key: 'method', head: words.columns.method }, { key: 'limits', head: words.columns.limits }, { key: 'rule', head: words.columns.rule }, { key: 'destructive', head: words.columns.destructive },
];

/** The gates of a plan in their order, each with its characteristics and what is sampled how. */
@customElement('gh-plan-gates')
export class GhPlanGates extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(2 * var(--pad)); } summary { min-block-size: 24px; cursor: pointer; padding-block: 0.2em; color: var(--link); }`];
  @property({ attribute: false }) plan: InspectionPlan | null = null;
  /** The page of this version, `PLAN/version`, which a comparison leads back to. */
  @property() from = '';

  override render() {
    return this.plan?.gates.map((gate, at) => html`<section aria-labelledby="gate-${at}"><h3 id="gate-${at}">${at + 1}. ${gate.name}</h3>${this.#gate(gate)}</section>`);
  }

  #gate({ workedOn, bench, roles, characteristics }: GatePlan) {
    if (characteristics.length === 0) return html`<p class="soft">${words.elsewhere(labels.subjectKinds[workedOn])}</p>`;
    const rows = characteristics.map((characteristic) => ({
      key: characteristic.id,
      cells: {
        characteristic: characteristic.name, method: characteristic.method, limits: limitLines(characteristic).map((line) => html`<div>${line}</div>`), rule: html`<div>${ruleText(characteristic)}</div><gh-compare-links .characteristic=${characteristic} from=${this.from}></gh-compare-links>`,
        destructive: characteristic.destructive ? words.destructive : words.kept,
      },
    }));
    const who = roles.map((role) => labels.roles[role].toLowerCase()).join(', ');
    const measured = characteristics.filter((each) => each.kind === 'measured').filter(({ entry }) => entry.how === 'direct');
    return html`<gh-table caption=${words.at(bench, who)} .columns=${columns} .rows=${rows}></gh-table>
      ${measured.map((characteristic) => html`<details class="screen-only"><summary>${decisionRiskWords.of(characteristic.name)}</summary><gh-risk-what-if .characteristic=${characteristic}></gh-risk-what-if></details>`)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-gates': GhPlanGates;
  }
}
