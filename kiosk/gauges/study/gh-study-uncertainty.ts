import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, uncertaintyWithSpread, type AnyState, type Study } from '../../../shared/traveller/index.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { refusalNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Giving } from '../../desk/giving.ts';
import { showFigure } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import { Follow, link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-signature.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';

const words = studiesDeskWords.page;
const short = (value: number): string => showFigure(Number(value.toPrecision(3)));

/**
 * Offers a closed study's spread to the gauge's uncertainty; an engineer signs for it.
 * @fires gauge-changed - when it stands
 */
@customElement('gh-study-uncertainty')
export class GhStudyUncertainty extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) gauge: AnyState | null = null;
  @state() private signing = false;
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { study, gauge } = this;
    const session = this.#session.value;
    const found = study?.closed?.found;
    if (study === null || gauge?.kind !== 'gauge' || session === null || found?.by !== 'crossed') return nothing;
    const { unit, expandedUncertainty, id, coverageFactor } = gauge.card;
    const stands = gauge.spread?.study === study.id;
    const then = short(uncertaintyWithSpread(gauge.spread?.calibrationUncertainty ?? expandedUncertainty, found.gaugeS, coverageFactor ?? 2));
    return html`<section class="sheet" aria-labelledby="uncertainty"><h3 id="uncertainty">${words.uncertaintyTitle}</h3>
      <p>${stands ? words.uncertaintySet : words.uncertaintyTold(short(found.gaugeS), unit)}</p>
      ${stands ? nothing : html`<p>${words.uncertaintyNow(short(expandedUncertainty), then, unit)}</p>
        ${mayGive('setGaugeUncertainty', session.roles) ? html`<div class="keys screen-only"><gh-button @click=${() => (this.signing = true)}>${words.uncertaintyKey}</gh-button></div>` : nothing}`}
      ${this.signing ? html`<gh-sheet open heading=${words.uncertaintyKey} close-word=${deskWords.cancel} @sheet-closed=${() => (this.signing = false)}>${refusalNotice(this.#giving)}
        <gh-signature meaning=${words.uncertaintyMeaning} who="${session.name} (${session.badge})" statement=${words.uncertaintyStatement(id, then, unit)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null}
          @signed=${({ detail }: CustomEvent<{ pin: string }>) => void this.#sign(id, study.id, detail.pin)}></gh-signature></gh-sheet>` : nothing}</section>`;
  }

  async #sign(gauge: string, study: string, pin: string): Promise<void> {
    if ((await this.#giving.give('set', { type: 'setGaugeUncertainty', gauge, study }, { pin })) === null) return;
    this.signing = false;
    tell(this, 'gauge-changed');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-uncertainty': GhStudyUncertainty;
  }
}
