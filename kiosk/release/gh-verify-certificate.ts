import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { showDay, showFigure } from '../desk/show.ts';
import { deskWords, labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { StateName } from '../parts/state-name.ts';
import '../parts/gh-button.ts';
import '../parts/gh-verdict.ts';
import { verifyCertificateOf, verifyFile, type FileCheck, type FileVerdict, type Sealed } from './verify-file.ts';

const markOf: Readonly<Record<FileVerdict, StateName>> = { genuine: 'accepted', withdrawn: 'recalled', altered: 'rejected', notOurs: 'refused', failed: 'caution' };

/** Checks a certificate: a file somebody chose, or with `lot` the lot's own. */
@customElement('gh-verify-certificate')
export class GhVerifyCertificate extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    input { font: inherit; min-block-size: var(--target); max-inline-size: 100%; }
    input::file-selector-button { font: inherit; min-block-size: var(--target); }
    label { display: grid; gap: 0.2em; }
  `];
  @property() lot = '';
  @state() private check: FileCheck | null = null;
  @state() private busy = false;

  override render() {
    const { check } = this;
    const said = check === null ? { word: '', sentence: '' } : words.verified[check.verdict];
    const result = html`<gh-verdict state=${check === null ? 'waiting' : markOf[check.verdict]} word=${said.word} sentence=${said.sentence}>${check === null || check.sealed === null ? nothing : this.#sealed(check.sealed)}</gh-verdict>`;
    if (this.lot !== '') return html`<div><gh-button .busy=${this.busy} busy-word=${deskWords.busy} @click=${() => void this.#check(verifyCertificateOf(this.lot))}>${words.verify}</gh-button>${result}</div>`;
    return html`<section class="sheet" aria-labelledby="title">
      <h2 id="title">${words.verifyTitle}</h2>
      <label><span class="printed">${words.verifyFile}</span><input type="file" accept="application/pdf,.pdf" aria-describedby="hint" @change=${this.#chosen} /></label>
      <p id="hint" class="printed">${words.verifyHint}</p>
      ${this.busy ? html`<p role="status">${deskWords.busy}</p>` : nothing} ${result}
    </section>`;
  }

  #chosen(event: Event): void {
    const input = event.target;
    const file = input instanceof HTMLInputElement ? input.files?.[0] : undefined;
    if (file !== undefined) void this.#check(verifyFile(file));
  }

  /** The pages are only a picture of what is sealed: the reader compares. */
  #sealed({ number, lot, designation, quantity, issuedOn }: Sealed) {
    return html`<p>${words.sealed(number, lot, designation, labels.pieces(quantity, showFigure(quantity)), showDay(issuedOn))}</p>`;
  }

  async #check(checking: Promise<FileCheck>): Promise<void> {
    this.busy = true;
    this.check = null;
    this.check = await checking;
    this.busy = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-verify-certificate': GhVerifyCertificate;
  }
}
