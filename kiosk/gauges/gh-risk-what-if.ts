import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Measured } from '../../shared/traveller/index.ts';
import { decisionRiskWords as words } from '../../shared/words/decision-risk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { readNumber, typedFigure } from '../desk/show.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-decision-risk.ts';

/** The risk of a wrong decision for a gauge and a process that are entered, to choose a rule and a guard band by. */
@customElement('gh-risk-what-if')
export class GhRiskWhatIf extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) characteristic: Measured | null = null;
  @state() private typed: Readonly<Record<'U' | 'k' | 'mean' | 's', string>> | null = null;

  override render() {
    const { characteristic } = this;
    if (characteristic === null) return nothing;
    const typed = this.typed ?? usual(characteristic);
    const [uncertainty, coverageFactor, mean, s] = [typed.U, typed.k, typed.mean, typed.s].map(readNumber);
    const whole = uncertainty !== null && uncertainty !== undefined && coverageFactor !== null && coverageFactor !== undefined && mean !== null && mean !== undefined && s !== null && s !== undefined && uncertainty >= 0 && coverageFactor > 0 && s >= 0;
    const field = (key: 'U' | 'k' | 'mean' | 's') => html`<gh-field entry="decimal" label=${words.whatIf[key]} unit=${key === 'k' ? '' : characteristic.unit} .value=${typed[key]} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.typed = { ...typed, [key]: detail.value })}></gh-field>`;
    return html`<section class="sheet" aria-labelledby="what-if"><h3 id="what-if">${words.whatIf.title} ${characteristic.name}</h3>
      <div class="fields">${field('U')} ${field('k')} ${field('mean')} ${field('s')}</div>
      ${whole ? html`<gh-decision-risk .characteristic=${characteristic} .basis=${{ uncertainty, coverageFactor, mean, s, process: words.process.given }}></gh-decision-risk>` : nothing}</section>`;
  }
}

/** To begin with: the middle of the tolerance, a process that just fills it with ±3 s, and a gauge of a tenth of it. */
function usual({ lower, upper, target, decimals }: Measured): Readonly<Record<'U' | 'k' | 'mean' | 's', string>> {
  const width = lower !== null && upper !== null ? upper - lower : null;
  const rounded = (value: number) => typedFigure(Number(value.toFixed(Math.min(8, decimals + 2))));
  const mean = target ?? (width === null ? lower ?? upper : (lower ?? 0) + width / 2);
  return { U: width === null ? '' : rounded(width / 10), k: '2', mean: mean === null ? '' : rounded(mean), s: width === null ? '' : rounded(width / 6) };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-risk-what-if': GhRiskWhatIf;
  }
}
