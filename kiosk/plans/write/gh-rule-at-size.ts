import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { OwnTable } from '../../../shared/sampling/attributes/index.ts';
import type { Characteristic } from '../../../shared/traveller/index.ts';
import type { AskedLine } from '../../../shared/traveller/plan/asked-at-size.ts';
import { planRuleWords } from '../../../shared/words/plan-rules.en.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { writeAsked } from '../../../shared/words/write-asked.ts';
import { showFigure } from '../../desk/show.ts';
import { labels } from '../../desk/words.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import '../gh-compare-links.ts';
import { pageFormat } from '../rule-text.ts';
import { sizeOf } from '../size-of.ts';

const words = planWritingWords.atSize;
const { columns: heads } = planRuleWords.asked;

/**
 * What one rule asks of a lot of the size typed: n of each sample, Ac and Re, or k, the arrow that moved it, how sure the table is.
 * @fires size-typed - with `{ text }`
 */
@customElement('gh-rule-at-size')
export class GhRuleAtSize extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }
    ol { margin: 0; padding-inline-start: 1.6em; color: var(--ink-soft); font-size: var(--text-small); }
    .top { display: flex; flex-wrap: wrap; gap: var(--gap) calc(2 * var(--pad)); align-items: end; }
    gh-field { inline-size: 12rem; }
  `];
  @property({ attribute: false }) characteristic: Characteristic | null = null;
  @property({ attribute: false }) tables: readonly OwnTable[] = [];
  @property() text = '1000';
  /** The plan's page it is compared from, `PLAN/version`. */
  @property() from = '';
  @state() private lines: readonly AskedLine[] | null = null;

  override render() {
    const size = sizeOf(this.text);
    return html`<div class="top">
        <gh-field label=${words.lotSize} entry="numeric" max-length="12" .value=${this.text} error=${size === null ? words.wrong : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => tell(this, 'size-typed', { text: detail.value })}></gh-field>
        ${this.characteristic === null || size === null ? nothing : html`<gh-compare-links .characteristic=${this.characteristic} from=${this.from} .lotSize=${size}></gh-compare-links>`}
      </div>
      ${size === null || this.lines === null || this.lines.length === 0 ? nothing : this.#table(this.lines, size)}`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('characteristic') || changed.has('text') || changed.has('tables')) void this.#reckon();
  }

  #table(lines: readonly AskedLine[], size: number) {
    const written = lines.map((line) => writeAsked(line, pageFormat()));
    const said = [...new Set(written.flatMap(({ notes }) => notes))];
    const shows = (key: 'class' | 'severity' | 'letter'): boolean => written.some((line) => line[key] !== '');
    const columns = [
      { key: 'class', head: heads.class }, ...(shows('severity') ? [{ key: 'severity', head: heads.severity }] : []), ...(shows('letter') ? [{ key: 'letter', head: heads.letter }] : []), { key: 'n', head: heads.n, kind: 'number' as const },
      ...(written.some(({ samples }) => samples.length > 0) ? [{ key: 'samples', head: heads.samples }] : []), ...(written.some(({ rest }) => rest.length > 0) ? [{ key: 'rest', head: heads.rest }] : []), { key: 'note', head: heads.note },
    ];
    const rows = written.map((line, at) => ({ key: String(at), cells: { ...line, samples: line.samples.map((sample) => html`<div>${sample}</div>`), rest: line.rest.map((each) => html`<div>${each}</div>`), note: [...line.origin, ...line.notes.map((note) => `[${said.indexOf(note) + 1}]`)].join(' ') } }));
    return html`<gh-table caption=${words.caption(labels.pieces(size, showFigure(size)))} .columns=${columns} .rows=${rows}></gh-table>${said.length === 0 ? nothing : html`<ol>${said.map((note) => html`<li>${note}</li>`)}</ol>`}`;
  }

  async #reckon(): Promise<void> {
    const { characteristic, tables } = this;
    const size = sizeOf(this.text);
    if (characteristic === null || size === null) return;
    const { askedAtSize } = await import('../../../shared/traveller/plan/asked-at-size.ts');
    if (characteristic === this.characteristic && size === sizeOf(this.text)) this.lines = askedAtSize(characteristic, size, tables);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-rule-at-size': GhRuleAtSize;
  }
}
