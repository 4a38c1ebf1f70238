import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-select-list.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import type { EditField } from './edit-field.ts';

/** What a form tells when a text was typed or chosen; `fault` where it makes nothing sound. */
export interface FieldPut { readonly key: string; readonly text: string }

/**
 * The lines of a form over a piece of a plan. It shows fields and tells what is typed; it makes nothing of it.
 * @fires field-put - with `{ key, text }`
 */
@customElement('gh-edit-form')
export class GhEditForm extends LitElement {
  static override styles = [partStyles, css`
    .fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(12.5rem, 100%), 1fr)); gap: calc(1.4 * var(--gap)) calc(1.6 * var(--pad)); align-items: start; }
    .wide { grid-column: 1 / -1; }
    .double { grid-column: span 2; }
    :host([line]) .fields { grid-template-columns: 5.5rem minmax(0, 1fr) minmax(7rem, 10rem); }
    @media (max-width: 40rem) { .double { grid-column: auto; } :host([line]) .fields { grid-template-columns: minmax(0, 1fr); } }
  `];
  @property({ attribute: false }) fields: readonly Pick<EditField<unknown>, 'key' | 'label' | 'kind' | 'text' | 'choices' | 'unit' | 'hint' | 'most'>[] = [];
  /** All in one line: a short one, a long one, a choice. */
  @property({ type: Boolean, reflect: true }) line = false;
  /** Texts that make nothing sound, as they stand, by field. */
  @property({ attribute: false }) texts: Readonly<Record<string, string>> = {};
  /** What is wrong, by field. */
  @property({ attribute: false }) faults: Readonly<Record<string, string>> = {};

  override render() {
    return html`<div class="fields">${repeat(this.fields, ({ key }) => key, (field) => this.#line(field))}</div>`;
  }

  #line(field: GhEditForm['fields'][number]) {
    const { key, label, kind, choices = [], unit = '', hint = '', most } = field;
    const text = this.texts[key] ?? field.text;
    const error = this.faults[key] ?? '';
    const put = (changed: string) => tell(this, 'field-put', { key, text: changed } satisfies FieldPut);
    switch (kind) {
      case 'choice': return html`<gh-drop-list label=${label} .options=${choices} .value=${text} error=${error} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => put(detail.value)}></gh-drop-list>`;
      case 'tiles': return html`<div class=${choices.length > 2 ? 'wide' : 'double'}>
        <gh-select-list label=${label} columns=${choices.length > 4 ? 3 : choices.length} .options=${choices} .value=${text} error=${error} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => put(detail.value)}></gh-select-list>
        ${hint === '' ? nothing : html`<p class="printed">${hint}</p>`}</div>`;
      case 'several': return html`<gh-select-list class="wide" multiple label=${label} columns=${choices.some((choice) => choice.text.length > 30) ? 1 : 3} .options=${choices} .values=${text.split('\n')} error=${error}
        @options-chosen=${({ detail }: CustomEvent<{ values: readonly string[] }>) => put(detail.values.join('\n'))}></gh-select-list>`;
      default: return html`<gh-field class=${kind === 'lines' ? 'wide' : ''} label=${label} .value=${text} unit=${unit} hint=${hint} error=${error} ?multiline=${kind === 'lines'} max-length=${most ?? (kind === 'lines' ? 2000 : 24)}
        entry=${kind === 'number' ? 'decimal' : kind === 'whole' ? 'numeric' : 'text'} @field-input=${({ detail }: CustomEvent<{ value: string }>) => put(detail.value)}></gh-field>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-edit-form': GhEditForm;
  }
}
