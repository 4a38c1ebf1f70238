import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { WrittenCaution } from '../../shared/wire/cautions-view.ts';
import { link } from '../link/index.ts';
import { Asked } from './asked.ts';
import './gh-cautions.ts';
import { STEP_CAUTIONS, type CautionedStep } from './step-cautions.ts';

/** The cautions of a step that is no gate, such as loading a furnace: in the plant's words, and in the tool's as long as those are not at hand. */
@customElement('gh-step-cautions')
export class GhStepCautions extends LitElement {
  @property({ attribute: false }) step: CautionedStep = 'packing';
  readonly #written = new Asked<{ readonly cautions: readonly WrittenCaution[] }>(this, { key: () => '/api/cautions', read: (path) => link.ask(path), topics: ['catalogue'] });

  override render() {
    const written = this.#written.value?.cautions ?? [];
    const shown = STEP_CAUTIONS[this.step].flatMap((caution) => {
      const own = written.find((each) => each.caution === caution);
      return own?.shown === false ? [] : [{ caution, text: own?.text ?? null }];
    });
    return html`<gh-cautions .cautions=${shown}></gh-cautions>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-step-cautions': GhStepCautions;
  }
}
