import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { normalPoints } from '../../shared/sampling/variables/index.ts';
import type { CharacteristicResult, GateRecord } from '../../shared/traveller/index.ts';
import { attributesView, normalityView } from '../../shared/words/variables.en.ts';
import '../parts/gh-normal-plot.ts';
import { partStyles } from '../parts/part-styles.ts';
import { catalogue, format, travellerWords } from './speak.ts';

/** Below a verdict by variables: the readings on normal probability paper, and what they say when they are only counted. Open where either is in doubt. */
@customElement('gh-variables-view')
export class GhVariablesView extends LitElement {
  static override styles = [partStyles, css`summary { min-block-size: var(--target); display: list-item; align-content: center; cursor: pointer; font-weight: 650; } summary:focus-visible { outline: 3px solid var(--focus); } p { padding-block: 0.4em; }`];
  @property({ attribute: false }) gate: GateRecord | null = null;
  @property({ attribute: false }) result: CharacteristicResult | null = null;

  override render() {
    const { gate, result } = this;
    if (gate === null || result === null || result.detail.by !== 'variables') return nothing;
    const { detail } = result;
    const { normality, attributes, judged, limits } = detail;
    const work = gate.work.find(({ demand }) => demand.characteristic.id === result.characteristic);
    const values = (work?.readings ?? []).flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
    if (normality === undefined || values.length === 0) return nothing;
    const words = travellerWords().variables;
    const speak = { format: format(), labels: catalogue().labels };
    const drawn = [limits.acceptLower, limits.acceptUpper].flatMap((limit) => (limit === null ? [] : [limit]));
    return html`<details ?open=${normality.says === 'doubtful' || attributes?.disagrees === true}><summary>${words.heading(result.name)}</summary>
      <gh-normal-plot .points=${normalPoints(values)} .line=${{ mean: judged.mean, s: judged.s }} .limits=${drawn} .caption=${normalityView(detail, speak)}
        .words=${{ value: `${result.name}${result.unit === null ? '' : ` (${result.unit})`}`, expected: words.expected, show: (value: number) => format().number(value) }}></gh-normal-plot>
      <p>${attributesView(detail, speak)}</p>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-variables-view': GhVariablesView;
  }
}
