import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { carbonEatenByOxygenKg, carbonToAddKg, tungstenToAddKg } from '../../../shared/carbide/index.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { readNumber, showNumber } from '../../desk/show.ts';
import '../../parts/gh-field.ts';
import { partStyles } from '../../parts/part-styles.ts';

const words = gradePageWords.correction;
type Field = 'batch' | 'now' | 'target' | 'oxygen';

/** What is to be added to a batch to bring its carbon where it is wanted. It writes nothing. */
@customElement('gh-carbon-correction')
export class GhCarbonCorrection extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: var(--gap); } .fields { grid-template-columns: repeat(auto-fit, minmax(min(9rem, 100%), 1fr)); } strong { font-size: var(--text-large); }`];
  @state() private texts: Readonly<Record<Field, string>> = { batch: '', now: '', target: '', oxygen: '' };

  override render() {
    const field = (name: Field, label: string, unit: string) => html`<gh-field label=${label} unit=${unit} entry="decimal" .value=${this.texts[name]} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.texts = { ...this.texts, [name]: detail.value })}></gh-field>`;
    return html`<div class="fields">${field('batch', words.batch, 'kg')}${field('now', words.now, 'wt%')}${field('target', words.target, 'wt%')}${field('oxygen', words.oxygen, 'wt%')}</div>
      <div role="status">${this.#answer()}</div><p class="soft small">${words.how} ${words.caution}</p>`;
  }

  #answer() {
    const [batchKg, nowPercent, targetPercent, oxygen] = (['batch', 'now', 'target', 'oxygen'] as const).map((name) => readNumber(this.texts[name]));
    const within = (value: number | null | undefined, most: number): value is number => typeof value === 'number' && value > 0 && value <= most;
    if (!within(batchKg, 1e6) || !within(nowPercent, 20) || !within(targetPercent, 20)) return html`<p class="soft">${words.waits}</p>`;
    const correction = { batchKg, nowPercent, targetPercent };
    const eaten = within(oxygen, 5) ? html`<p>${words.eaten(showNumber(carbonEatenByOxygenKg(batchKg, oxygen), 3))}</p>` : nothing;
    if (nowPercent === targetPercent) return html`<p>${words.nothing}</p>${eaten}`;
    return html`<p><strong>${targetPercent > nowPercent ? words.addCarbon(showNumber(carbonToAddKg(correction), 3)) : words.addTungsten(showNumber(tungstenToAddKg(correction), 2))}</strong></p>${eaten}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-carbon-correction': GhCarbonCorrection;
  }
}
