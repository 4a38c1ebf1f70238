import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../../parts/gh-line-key.ts';
import { letterOf } from './person-letter.ts';
import { lineStyles } from '../../parts/line-marks.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { Room } from '../../parts/room.ts';
import { studyPlotDrawing, type Plot } from './study-plot-drawing.ts';

/** A plot of a study with the legend of its people. What it shows stands in the table beside it too, so readers pass it over. */
@customElement('gh-study-plot')
export class GhStudyPlot extends LitElement {
  static override styles = [partStyles, lineStyles, css`
    :host { display: block; background: var(--slip); border: var(--rule) solid var(--line-strong); break-inside: avoid; }
    figure { margin: 0; }
    figcaption { font-weight: 700; padding: 0.4em var(--pad) 0; }
    svg.drawing { display: block; inline-size: 100%; block-size: var(--plot-height, 300px); }
    .paper { fill: var(--slip); }
    .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
    .rung { stroke: var(--line); stroke-width: 1; }
    .level { stroke: var(--ink); stroke-width: 1.6; stroke-dasharray: 6 4; }
    text { font-family: var(--face-figures); font-size: 13px; fill: var(--ink); }
    .axis { font-family: var(--face); fill: var(--ink-soft); }
    ul { list-style: none; margin: 0; padding: 0.2em var(--pad) 0.5em; display: flex; flex-wrap: wrap; gap: 0.3em 1.4em; }
    li { display: inline-flex; align-items: center; gap: 0.5em; }
    p { padding: 0 var(--pad) 0.5em; color: var(--ink-soft); font-size: var(--text-small); }
  `];
  @property() heading = '';
  @property() note = '';
  @property({ attribute: false }) plot: Plot | null = null;
  /** Names of the people, in the order of their letters. */
  @property({ attribute: false }) people: readonly string[] = [];
  readonly #room = new Room(this, 620, 300, 'svg.drawing');

  override render() {
    const { plot } = this;
    if (plot === null) return html``;
    return html`<figure><figcaption>${this.heading}</figcaption><svg class="drawing" aria-hidden="true" focusable="false">${studyPlotDrawing(plot, this.#room)}</svg>
      <ul>${this.people.map((name, at) => html`<li><gh-line-key letter=${letterOf(at)}></gh-line-key>${name}</li>`)}</ul>${this.note === '' ? '' : html`<p>${this.note}</p>`}</figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-plot': GhStudyPlot;
  }
}
