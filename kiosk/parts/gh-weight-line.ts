import { LitElement, css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';

/** The last weights as a small line between their limits, with its words for whoever does not see it. */
@customElement('gh-weight-line')
export class GhWeightLine extends LitElement {
  static override styles = [
    partStyles,
    css`
      svg { display: block; inline-size: 100%; block-size: 64px; background: var(--slip); border: var(--rule) solid var(--line); }
      .limit { stroke: var(--bad); stroke-width: 1.6; stroke-dasharray: 6 4; vector-effect: non-scaling-stroke; }
      .target { stroke: var(--good); stroke-width: 1.2; vector-effect: non-scaling-stroke; }
      .run { fill: none; stroke: var(--link); stroke-width: 2; vector-effect: non-scaling-stroke; }
    `,
  ];
  @property({ attribute: false }) values: readonly number[] = [];
  @property({ attribute: false }) lines: { readonly target: number | null; readonly lower: number | null; readonly upper: number | null } = { target: null, lower: null, upper: null };
  @property() label = '';

  override render() {
    const { values, lines: { target, lower, upper } } = this;
    const all = [...values, ...[target, lower, upper].flatMap((each) => each ?? [])];
    const [low, high] = [Math.min(...all), Math.max(...all)];
    const y = (value: number): number => 60 - (56 * (value - low)) / (high - low || 1);
    const across = (value: number | null, kind: string) => (value === null ? '' : svg`<line class=${kind} x1="0" x2="200" y1=${y(value)} y2=${y(value)}/>`);
    return html`<svg viewBox="0 0 200 64" preserveAspectRatio="none" role="img" aria-label=${this.label}>
      ${across(lower, 'limit')}${across(upper, 'limit')}${across(target, 'target')}
      <polyline class="run" points=${values.map((value, at) => `${(200 * (at + 0.5)) / Math.max(1, values.length)},${y(value)}`).join(' ')}/></svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-weight-line': GhWeightLine;
  }
}
