import { LitElement, css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { partStyles } from './part-styles.ts';

/** How far a count has come, graduated like a steel rule. */
@customElement('gh-progress')
export class GhProgress extends LitElement {
  static override styles = [
    partStyles,
    css`
      .line { display: grid; grid-template-columns: 1fr auto; align-items: end; gap: 0 var(--pad); }
      .printed { grid-column: 1; }
      .text { grid-column: 2; grid-row: 1 / span 2; font-size: var(--text-large); font-weight: 650; line-height: 1; }
      svg { grid-column: 1; display: block; inline-size: 100%; block-size: 20px; }
      .bed { fill: var(--slip); stroke: var(--line-strong); vector-effect: non-scaling-stroke; }
      .done { fill: var(--ink); }
      .mark { stroke: var(--line-strong); stroke-width: 1; vector-effect: non-scaling-stroke; }
      .mark.over { stroke: var(--slip); }
    `,
  ];
  @property({ type: Number }) value = 0;
  @property({ type: Number }) max = 1;
  @property() label = '';
  @property() text = '';

  override render() {
    const max = Math.max(this.max, 1);
    const done = (1000 * Math.min(Math.max(this.value, 0), max)) / max;
    const step = [1, 2, 5, 10, 20, 50, 100].find((size) => max / size <= 50) ?? max / 20;
    const marks = Array.from({ length: Math.max(0, Math.ceil(max / step) - 1) }, (_, at) => (at + 1) * step);
    return html`<div class="line" role="progressbar" aria-label=${this.label} aria-valuemin="0" aria-valuemax=${max} aria-valuenow=${this.value} aria-valuetext=${this.text}>
      <span class="printed">${this.label}</span>
      <svg viewBox="0 0 1000 20" preserveAspectRatio="none" aria-hidden="true">
        <rect class="bed" x="0" y="0" width="1000" height="20" />
        <rect class="done" x="0" y="0" width=${done} height="20" />
        ${marks.map((at, index) => {
          const x = (1000 * at) / max;
          return svg`<line class="mark ${x < done ? 'over' : ''}" x1=${x} x2=${x} y1=${(index + 1) % 5 === 0 ? 4 : 11} y2="20"/>`;
        })}
      </svg>
      <span class="text figure">${this.text}</span>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-progress': GhProgress;
  }
}
