import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-button.ts';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';
import { toneOf, type StateName } from './state-name.ts';
import { tell } from './tell.ts';

/** What sort of thing a notice tells. */
export type NoticeKind = 'refusal' | 'fault' | 'empty' | 'loading' | 'offline' | 'done';

const markOf: Readonly<Record<NoticeKind, StateName>> = {
  refusal: 'refused', fault: 'caution', empty: 'waiting', loading: 'due', offline: 'offline', done: 'accepted',
};

/**
 * Says what happened, what was kept and what to do next.
 * @slot - keys that do the next thing
 * @fires notice-dismissed - when its key is pressed
 */
@customElement('gh-notice')
export class GhNotice extends LitElement {
  static override styles = [
    partStyles,
    css`
      .sheet { display: grid; grid-template-columns: auto 1fr; background: var(--slip); border-block: var(--rule-strong) solid var(--tone); }
      .good { --tone: var(--good); }
      .bad { --tone: var(--bad); }
      .held { --tone: var(--held); }
      .calm { --tone: var(--calm); }
      .sign { padding: var(--pad); font-size: var(--text); border-inline-end: 4px double var(--tone); display: grid; place-items: start center; }
      .words { padding: var(--pad) calc(1.4 * var(--pad)); }
      .happened { margin: 0; font-size: var(--text-large); font-weight: 650; line-height: 1.2; color: var(--tone); text-wrap: pretty; }
      .next { font-weight: 650; }
      .keys { display: flex; flex-wrap: wrap; gap: var(--gap); }
      .keys > gh-button, ::slotted(*) { margin-block-start: var(--pad); }
    `,
  ];
  @property({ reflect: true }) kind: NoticeKind = 'empty';
  @property() happened = '';
  /** It stands in the place of the whole page, and so is the page's heading. */
  @property({ type: Boolean }) alone = false;
  @property() kept = '';
  @property() next = '';
  @property() dismiss = '';

  override render() {
    const { kind, happened, kept, next, dismiss } = this;
    const mark = markOf[kind];
    const interrupts = kind === 'refusal' || kind === 'fault';
    return html`<div class="sheet ${toneOf[mark]}">
      <div class="sign"><gh-state-mark state=${mark} size="large"></gh-state-mark></div>
      <div class="words">
        <div role=${interrupts ? 'alert' : 'status'} aria-busy=${kind === 'loading' ? 'true' : nothing}>
          ${this.alone ? html`<h1 class="happened">${happened}</h1>` : html`<p class="happened">${happened}</p>`}
          ${kept === '' ? nothing : html`<p>${kept}</p>`} ${next === '' ? nothing : html`<p class="next">${next}</p>`}
        </div>
        <div class="keys">
          <slot></slot>${dismiss === '' ? nothing : html`<gh-button @click=${() => tell(this, 'notice-dismissed')}>${dismiss}</gh-button>`}
        </div>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-notice': GhNotice;
  }
}
