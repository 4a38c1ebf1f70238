import { LitElement, css, html, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { studyWords } from '../../../shared/words/study-sheet.en.ts';
import type { StudyResult } from '../../../shared/traveller/index.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { Room } from '../../parts/room.ts';

const words = studiesDeskWords.result;
const SHOWN = ['repeatability', 'reproducibility', 'gauge', 'part'] as const;
const LIMITS = [10, 30];

/** The shares of the components as bars: of the spread, and of the tolerance where there is one. The table beside it says the same. */
@customElement('gh-study-bars')
export class GhStudyBars extends LitElement {
  static override styles = [partStyles, css`
    :host { display: block; background: var(--slip); border: var(--rule) solid var(--line-strong); break-inside: avoid; }
    figure { margin: 0; }
    figcaption { font-weight: 700; padding: 0.4em var(--pad) 0; }
    svg.drawing { display: block; inline-size: 100%; block-size: var(--bars-height, 300px); }
    .study { fill: var(--calm-ground); }
    .tolerance { fill: none; stroke: var(--ink); stroke-width: 2; }
    .limit { stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 5 4; }
    .frame { stroke: var(--ink); stroke-width: 1.4; fill: none; }
    text { font-family: var(--face-figures); font-size: 13px; fill: var(--ink); stroke: var(--slip); stroke-width: 4; paint-order: stroke; }
    .name { font-family: var(--face); font-size: 14px; }
    .key { list-style: none; margin: 0; display: flex; flex-wrap: wrap; gap: 0.2em 1.4em; padding: 0.2em var(--pad); }
    .key li { display: inline-flex; gap: 0.5em; align-items: center; }
    .key svg { inline-size: 26px; block-size: 14px; }
    p { padding: 0 var(--pad) 0.5em; color: var(--ink-soft); font-size: var(--text-small); }
  `];
  @property({ attribute: false }) result: Extract<StudyResult, { by: 'crossed' }> | null = null;
  readonly #room = new Room(this, 620, 300, 'svg.drawing');

  override render() {
    const { result } = this;
    if (result === null) return html``;
    const rows = SHOWN.flatMap((name) => result.components.find((each) => each.name === name) ?? []);
    const toTolerance = rows.some(({ percentOfTolerance }) => percentOfTolerance !== null);
    const most = Math.max(100, ...rows.map(({ percentOfTolerance }) => percentOfTolerance ?? 0));
    const { width, height } = this.#room;
    const [left, top, wide, high] = [130, 22, Math.max(width - 196, 20), Math.max(height - 48, 20)];
    const xOf = (percent: number): number => left + (percent / most) * wide;
    const slot = high / rows.length;
    const thick = Math.min(24, slot / (toTolerance ? 2.6 : 1.6));
    return html`<figure><figcaption>${words.bars}</figcaption>
      <svg class="drawing" aria-hidden="true" focusable="false">
        ${LIMITS.map((limit) => svg`<line class="limit" x1=${xOf(limit)} x2=${xOf(limit)} y1=${top - 4} y2=${top + high} /><text x=${xOf(limit)} y=${top - 8} text-anchor="middle">${words.limit(showFigure(limit))}</text>`)}
        ${rows.map(({ name, percentOfStudy, percentOfTolerance }, at) => {
          const y = top + at * slot + (slot - thick * (toTolerance ? 2.2 : 1)) / 2;
          const study = percentOfStudy ?? 0;
          return svg`<text class="name" x=${left - 8} y=${top + (at + 0.5) * slot + 5} text-anchor="end">${studyWords.components[name]}</text>
            <rect class="study" x=${left} y=${y} width=${xOf(study) - left} height=${thick} /><text x=${xOf(study) + 6} y=${y + thick / 2 + 5}>${showNumber(study, 1)}</text>
            ${percentOfTolerance === null ? '' : svg`<rect class="tolerance" x=${left} y=${y + thick * 1.2} width=${xOf(percentOfTolerance) - left} height=${thick - 2} /><text x=${xOf(percentOfTolerance) + 6} y=${y + thick * 1.7 + 5}>${showNumber(percentOfTolerance, 1)}</text>`}`;
        })}
        <path class="frame" d="M${left} ${top}V${top + high}H${left + wide}" />
        ${[0, 50, 100].map((tick) => svg`<text x=${xOf(tick)} y=${top + high + 17} text-anchor="middle">${showFigure(tick)}</text>`)}
      </svg>
      <ul class="key"><li><svg aria-hidden="true"><rect class="study" width="26" height="14" /></svg>${words.barsAxis}</li>${toTolerance ? html`<li><svg aria-hidden="true"><rect class="tolerance" x="1" y="1" width="24" height="12" /></svg>${words.barsTolerance}</li>` : ''}</ul>
      <p>${words.limitsNote}</p></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-bars': GhStudyBars;
  }
}
