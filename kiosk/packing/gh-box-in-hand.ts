import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { isReleased, type Box, type Lot } from '../../shared/traveller/index.ts';
import { packingDeskWords as words } from '../../shared/words/packing-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import { deskWords, labels } from '../desk/words.ts';
import type { RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { boxStanding, markOfBox } from './box-standing.ts';
import './gh-reason-sheet.ts';
import './gh-scan-field.ts';
import { packStyles } from './pack-styles.ts';
import { labelPath, printLabels } from './print-labels.ts';
import { readScanned } from './scanned-code.ts';

/**
 * The box in hand: its label as it will look or as it was printed, and the one thing it wants next.
 * @fires box-changed - when something about it was written
 */
@customElement('gh-box-in-hand')
export class GhBoxInHand extends LitElement {
  static override styles = [partStyles, deskStyles, packStyles];
  @property({ attribute: false }) lot: Lot | null = null;
  @property({ attribute: false }) box: Box | null = null;
  @state() private sheet: 'none' | 'reprint' | 'void' = 'none';
  @state() private refused: RefusalText | null = null;
  @state() private readSerial = '';
  @state() private pictureFailed = '';
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get('box')?.serial !== undefined && changed.get('box')?.serial !== this.box?.serial) this.refused = null;
  }

  override render() {
    const { lot, box } = this;
    if (lot === null || box === null) return nothing;
    const standing = boxStanding(box);
    const step = { packed: words.step.print, printed: words.step.scan, read: words.step.done, shipped: words.step.shipped, voided: words.step.voided }[standing];
    return html`<section class="sheet" aria-labelledby="title">
      <h2 id="title">${words.inHand(box.serial)}, ${labels.pieces(box.pieces, showFigure(box.pieces))} <gh-state-mark state=${markOfBox[standing]} word=${words.standing[standing]}></gh-state-mark></h2>
      <div class="hand">
        <div>${this.#picture(lot, box)}</div>
        <div>
          ${isReleased(lot) ? html`<p class="step">${step}</p>` : nothing}
          ${refusalNotice(this.#giving)} ${this.refused === null ? nothing : html`<gh-notice kind="refusal" happened=${this.refused.happened} kept=${this.refused.kept} next=${this.refused.next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => (this.refused = null)}></gh-notice>`}
          <p class="read" role="status">${this.readSerial === '' ? '' : words.readBack(this.readSerial)}</p>
          ${standing === 'voided' || standing === 'shipped' ? nothing : this.#keys(box)}
        </div>
      </div>
      ${this.#sheets(box)}
    </section>`;
  }

  #picture(lot: Lot, box: Box) {
    if (!isReleased(lot)) return html`<p class="soft">${words.labelWithheld}</p>`;
    const printed = box.copies > 0;
    // The copy number makes a new address, so that a reprint is not shown as the picture before it.
    const source = `${labelPath(lot.id, box.serial, printed ? 'label.svg' : 'preview.svg')}&copy=${box.copies}`;
    const alt = printed ? words.labelAlt(box.serial, showFigure(box.copies)) : words.previewAlt(box.serial, labels.pieces(box.pieces, showFigure(box.pieces)));
    return this.pictureFailed === source ? html`<p class="soft">${words.previewFailed}</p>`
      : html`<img class="label" src=${source} alt=${alt} @error=${() => (this.pictureFailed = source)} />
        ${printed ? html`<div class="keys screen-only"><span>${words.printedAs(showFigure(box.copies))}</span>
          <a class="big" href=${labelPath(lot.id, box.serial, 'label.pdf')} target="_blank" rel="noopener">${words.pdf}</a> <a class="big" href=${labelPath(lot.id, box.serial, 'label.png')} target="_blank" rel="noopener">${words.png}</a></div>` : nothing}`;
  }

  #keys(box: Box) {
    const { busy } = this.#giving;
    return html`
      ${box.copies > 0 ? html`<gh-scan-field hears label=${words.scan} hint=${words.scanHint} take-word=${words.scanTake} .busy=${busy === 'read'} @code-scanned=${this.#read}></gh-scan-field>` : nothing}
      <div class="keys">
        ${box.copies === 0 ? html`<gh-button kind="primary" .busy=${busy === 'print'} busy-word=${words.printing} @click=${() => void this.#print()}>${words.print}</gh-button>`
          : html`<gh-button .busy=${busy === 'print'} busy-word=${words.printing} @click=${() => (this.sheet = 'reprint')}>${words.reprint}</gh-button>`}
        <gh-button kind="grave" @click=${() => (this.sheet = 'void')}>${words.void}</gh-button>
      </div>`;
  }

  #sheets(box: Box) {
    const close = () => (this.sheet = 'none');
    return html`
      <gh-reason-sheet ?open=${this.sheet === 'reprint'} heading=${words.reprintHeading(box.serial)} why=${words.reprintWhy(showFigure(box.copies + 1))} act=${words.reprint} .suggestions=${words.reasons}
        @sheet-closed=${close} @reason-given=${({ detail }: CustomEvent<{ reason: string }>) => { close(); void this.#print(detail.reason); }}></gh-reason-sheet>
      <gh-reason-sheet grave ?open=${this.sheet === 'void'} heading=${words.voidHeading(box.serial)} why=${words.voidWhy(labels.pieces(box.pieces, showFigure(box.pieces)))} act=${words.void} .suggestions=${words.voidReasons}
        @sheet-closed=${close} @reason-given=${({ detail }: CustomEvent<{ reason: string }>) => { close(); void this.#void(detail.reason); }}></gh-reason-sheet>`;
  }

  async #print(reason?: string): Promise<void> {
    const { lot, box } = this;
    if (lot === null || box === null) return;
    this.readSerial = '';
    const done = await this.#giving.give('print', { type: 'printLabel', lot: lot.id, box: box.serial, ...(reason === undefined ? {} : { reason }) });
    if (done === null) return;
    tell(this, 'box-changed');
    this.refused = (await printLabels([labelPath(lot.id, box.serial, 'label.svg')])) ? null : words.printFailed;
  }

  async #read(event: CustomEvent<{ text: string }>): Promise<void> {
    const { lot, box } = this;
    if (lot === null || box === null) return;
    const code = readScanned(event.detail.text);
    this.readSerial = '';
    this.refused = code.what === 'fault' ? { ...code, kept: words.codeKept } : code.what === 'text' ? words.notABox : null;
    if (code.what !== 'box') return;
    const done = await this.#giving.give('read', { type: 'readLabel', lot: lot.id, box: box.serial, payload: code.payload });
    if (done === null) return;
    this.readSerial = box.serial;
    tell(this, 'box-changed');
  }

  async #void(reason: string): Promise<void> {
    const { lot, box } = this;
    if (lot === null || box === null) return;
    if ((await this.#giving.give('void', { type: 'voidBox', lot: lot.id, box: box.serial, reason })) !== null) tell(this, 'box-changed');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-box-in-hand': GhBoxInHand;
  }
}
