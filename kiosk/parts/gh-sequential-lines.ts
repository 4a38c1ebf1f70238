import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { figureStyles } from './figure-styles.ts';
import { partStyles } from './part-styles.ts';
import { Room } from './room.ts';
import { sequentialDrawing, type SequentialLines, type SequentialPath, type SequentialWords } from './sequential-drawing.ts';

export type { SequentialLines, SequentialPath, SequentialWords } from './sequential-drawing.ts';

/**
 * A sample judged piece by piece: the two lines, what was found so far, and where the next decision can fall.
 * @cssprop --chart-height - height of the drawing, default 240px
 */
@customElement('gh-sequential-lines')
export class GhSequentialLines extends LitElement {
  static override styles = [
    partStyles, figureStyles,
    css`
      svg { block-size: var(--chart-height, 240px); }
      .frame, .path, .line, .cut, .tick, .found { fill: none; }
      .frame { stroke: var(--ink); stroke-width: 1.4; }
      .rejecting { fill: url(#bars); }
      .accepting { fill: url(#spots); }
      .bar { stroke: var(--line); stroke-width: 2.5; }
      .spot { fill: var(--line-strong); }
      .line { stroke: var(--ink); stroke-width: 2; }
      .line.reject { stroke: var(--bad); stroke-dasharray: 9 4; }
      .line.accept { stroke: var(--good); }
      .cut { stroke: var(--ink-soft); stroke-width: 3; stroke-dasharray: 2 3; }
      .tick { stroke: var(--line-strong); }
      .path { stroke: var(--link); stroke-width: 3.2; stroke-linejoin: round; }
      .found { stroke: var(--bad); stroke-width: 2.6; }
      .now { fill: var(--slip); stroke: var(--link); stroke-width: 3; }
      .field { font-family: var(--face); font-weight: 700; stroke: var(--slip); stroke-width: 4px; paint-order: stroke; }
      .field.reject { fill: var(--bad); }
      .field.accept { fill: var(--good); }
    `,
  ];
  @property({ attribute: false }) lines: SequentialLines | null = null;
  @property({ attribute: false }) path: SequentialPath = { foundAt: [], looked: 0 };
  /** The whole drawing in one sentence, shown above it and read out. */
  @property() caption = '';
  @property({ attribute: false }) words: SequentialWords = { pieces: '', found: '', accept: '', reject: '' };
  readonly #room = new Room(this, 640, 240);

  override render() {
    const { lines } = this;
    const room = this.#room;
    if (lines === null) return nothing;
    return html`<figure><figcaption aria-live="polite">${this.caption}</figcaption>
      <svg viewBox="0 0 ${room.width} ${room.height}" aria-hidden="true">
        <defs>
          <pattern id="bars" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="bar" x1="0" y1="0" x2="0" y2="9"/></pattern>
          <pattern id="spots" width="9" height="9" patternUnits="userSpaceOnUse"><circle class="spot" cx="2" cy="2" r="1"/></pattern>
        </defs>
        ${sequentialDrawing(lines, this.path, this.words, room.width, room.height)}
      </svg></figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-sequential-lines': GhSequentialLines;
  }
}
