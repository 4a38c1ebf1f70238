import { LitElement, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Measured, Refusal } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { format, travellerWords } from '../speak.ts';
import { swallowStrayTyping } from './stray-typing.ts';

/**
 * Asks about a value that is hardly right, before it is taken: is it right, was it the likelier one, or is it entered again?
 * @fires value-confirmed - it is right as it stands
 * @fires value-likely - with `{ value }`
 * @fires value-dropped
 */
@customElement('gh-likely-question')
export class GhLikelyQuestion extends LitElement {
  static override styles = [partStyles];
  @property({ attribute: false }) refusal: Extract<Refusal, { code: 'unlikelyValue' }> | null = null;
  @property({ attribute: false }) characteristic: Measured | null = null;

  override render() {
    const { refusal, characteristic } = this;
    if (refusal === null || characteristic === null) return nothing;
    const words = travellerWords().likely;
    const written = (value: number): string => `${format().number(value)} ${characteristic.unit}`;
    const value = written(refusal.value);
    // A likelier value can only be offered where the value itself was typed.
    const likely = characteristic.entry.how === 'direct' ? refusal.likely : null;
    return html`<gh-sheet open grave .heading=${likely === null ? words.question(value) : words.likely(value, written(likely))} .closeWord=${words.other} @keydown=${swallowStrayTyping} @sheet-closed=${() => tell(this, 'value-dropped')}>
      <p>${words.range(written(refusal.least), written(refusal.most))}</p>
      ${likely === null ? nothing : html`<gh-button slot="actions" kind="primary" @click=${() => tell(this, 'value-likely', { value: likely })}>${words.take(written(likely))}</gh-button>`}
      <gh-button slot="actions" @click=${() => tell(this, 'value-confirmed')}>${words.keepIt(value)}</gh-button>
    </gh-sheet>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-likely-question': GhLikelyQuestion;
  }
}
