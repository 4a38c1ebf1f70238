import '@lit-labs/virtualizer';
import type { LitVirtualizer } from '@lit-labs/virtualizer';
import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { SlipBody, Subject } from '../../shared/traveller/index.ts';
import type { Reader } from '../../shared/words/index.ts';
import { chartAddressOf } from '../desk/chart-address.ts';
import '../parts/gh-button.ts';
import '../parts/gh-slip.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { entrySentence } from '../shell/entry-sentence.ts';
import { correctable, slipMark, type SlipRow } from './slip-rows.ts';
import { catalogue, format, travellerWords } from './speak.ts';

/** A stack up to this long is drawn whole. */
const drawnWhole = 40;

/**
 * The stack of slips, newest at the bottom. Only those in sight are drawn, so a thread of thousands opens at once.
 * @fires earlier-wanted
 * @fires correction-wanted - with a `Correctable`
 * @fires entry-dismissed - with `{ clientId }`
 */
@customElement('gh-slips')
export class GhSlips extends LitElement {
  static override styles = [
    partStyles,
    css`
      /* As tall as leaves the demand below it in sight on a screen lying on its side. */
      :host { --stack: clamp(9.5rem, 100dvh - 38rem, 44rem); }
      .tray { border-inline: var(--rule) solid var(--line-strong); border-block-end: calc(2 * var(--rule-strong)) solid var(--line-strong); background: var(--tray); }
      .earlier { padding: var(--pad) var(--pad) var(--pad) 34px; background: repeating-linear-gradient(var(--slip-under) 0 5px, var(--line) 5px 6px); border-block-end: var(--rule) solid var(--line-strong); }
      lit-virtualizer, .whole { position: relative; max-block-size: var(--stack); overflow: auto; }
      lit-virtualizer { block-size: var(--stack); contain: content; }
      gh-slip { inline-size: 100%; }
      .why { color: var(--bad); font-weight: 650; }
      @media print { lit-virtualizer, .whole { block-size: auto; max-block-size: none; } }
    `,
  ];
  @property({ attribute: false }) rows: readonly SlipRow[] = [];
  @property({ attribute: false }) subject: Subject | null = null;
  @property({ attribute: false }) reader: Reader = {};
  /** Older slips are still on the server. */
  @property({ type: Boolean }) more = false;
  @property({ type: Boolean }) correcting = false;
  @state() private open: ReadonlySet<string> = new Set();

  protected override updated(changed: PropertyValues<this>): void {
    const before = changed.get('rows');
    const grown = before === undefined || before.at(-1)?.key !== this.rows.at(-1)?.key;
    if (changed.has('rows') && grown) this.#showNewest();
  }

  override render() {
    const words = travellerWords();
    const { subject } = this;
    if (subject === null) return nothing;
    return html`<div class="tray">
      ${this.more ? html`<div class="earlier"><gh-button @click=${() => tell(this, 'earlier-wanted')}>${words.earlier}</gh-button></div>` : nothing}
      ${this.rows.length <= drawnWhole ? html`<div class="whole" role="list" tabindex="0" aria-label=${words.stack(subject.id)}>${repeat(this.rows, ({ key }) => key, (row) => this.#row(row, subject))}</div>` : html`<lit-virtualizer scroller role="list" tabindex="0" aria-label=${words.stack(subject.id)} .items=${[...this.rows]} .keyFunction=${(row: SlipRow) => row.key} .renderItem=${(row: SlipRow) => this.#row(row, subject)}></lit-virtualizer>`}
    </div>`;
  }

  #row(row: SlipRow, subject: Subject) {
    const { slip, own, standing } = row;
    const words = travellerWords().slip;
    const body = slip?.body ?? null;
    const mark = body === null ? null : slipMark(body);
    const lines = slip === null ? [] : catalogue().slipLines(slip, this.reader);
    const state = standing === 'sending' ? 'kept' : standing;
    const stateWord = standing === 'normal' ? '' : words[standing];
    const fix = row.own === null && row.standing === 'normal' && this.correcting ? correctable(subject, row.slip) : null;
    return html`<gh-slip role="listitem" .number=${slip === null ? '' : String(slip.version)} .at=${slip === null ? '' : format().time(slip.at)} .datetime=${slip?.at ?? ''}
      .who=${slip === null ? '' : this.reader.names?.[slip.by] ?? slip.by} .bench=${slip?.bench ?? ''} .sentence=${slip === null ? entrySentence(own.command) : catalogue().slipSentence(slip, this.reader)}
      .state=${state} .stateWord=${stateWord} .mark=${mark ?? ''} .markWord=${mark === null || body === null ? '' : this.#markWord(mark)}
      ?foldable=${lines.length > 0} ?open=${this.open.has(row.key)} .words=${{ unfold: words.unfold, fold: words.fold }} @slip-folded=${(event: CustomEvent<{ open: boolean }>) => this.#fold(row.key, event.detail.open)}>
      ${lines.map((line) => html`<p>${line}</p>`)}${this.#chartLink(body)}
      ${own?.words === null || own === null ? nothing : html`<p class="why">${own.words.happened} ${own.words.next}</p>`}
      ${own !== null && own.standing === 'refused' ? html`<gh-button slot="actions" @click=${() => tell(this, 'entry-dismissed', { clientId: own.clientId })}>${words.setAside}</gh-button>` : nothing}
      ${fix === null ? nothing : html`<gh-button slot="actions" @click=${() => tell(this, 'correction-wanted', fix)}>${fix.what === 'reading' ? words.correct : words.withdraw}</gh-button>`}
    </gh-slip>`;
  }

  /** A signal leads to the chart that gave it. */
  #chartLink(body: SlipBody | null) {
    const address = body?.type === 'chartSignalled' ? chartAddressOf(body.chart) : null;
    return address === null ? nothing : html`<p><a href=${address}>${travellerWords().slip.chart}</a></p>`;
  }

  #markWord(mark: NonNullable<ReturnType<typeof slipMark>>): string {
    const { labels } = catalogue();
    const words = travellerWords();
    switch (mark) {
      case 'accepted': return labels.verdicts.accepted;
      case 'rejected': return labels.verdicts.rejected;
      case 'hold': return labels.standings.held;
      case 'concession': return labels.dispositions.concession.name;
      case 'released': return words.state.released;
      case 'caution': return words.slip.signal;
      default: return '';
    }
  }

  #fold(key: string, open: boolean): void {
    const next = new Set(this.open);
    if (open) next.add(key);
    else next.delete(key);
    this.open = next;
  }

  /** The newest slip comes into sight at the foot of the stack; the page itself stays where the person has it. */
  #showNewest(): void {
    requestAnimationFrame(() => {
      const list = this.renderRoot.querySelector<LitVirtualizer>('lit-virtualizer');
      // Only once it has laid itself out does the list know where its end is.
      if (list !== null) void list.layoutComplete?.then(() => list.element(this.rows.length - 1)?.scrollIntoView({ block: 'end' }));
      const whole = this.renderRoot.querySelector('.whole');
      if (whole !== null) whole.scrollTop = whole.scrollHeight;
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-slips': GhSlips;
  }
}
