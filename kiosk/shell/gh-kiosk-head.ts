import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-state-mark.ts';
import '../parts/gh-tabs.ts';
import { keyStyles, partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { routeOf, TABS, type Route } from './routes.ts';
import { shellWords } from './words.ts';

/**
 * The head of the kiosk: the binder's tabs and who stands there.
 * @fires person-wanted - when the person is to be changed
 */
@customElement('gh-kiosk-head')
export class GhKioskHead extends LitElement {
  static override styles = [
    partStyles,
    keyStyles,
    css`
      header { display: flex; align-items: end; gap: var(--gap); background: var(--tray); padding-block-start: 4px; padding-inline-end: var(--pad); border-block-end: var(--rule-strong) solid var(--ink); }
      gh-tabs { flex: 1; min-inline-size: 0; margin-block-end: calc(-1 * var(--rule-strong)); }
      .person { display: grid; grid-template-columns: auto 1fr; align-items: center; gap: 0 0.6em; text-align: start; line-height: 1.15; max-inline-size: 15em; margin-block-end: 4px; }
      .person .bench { font-size: var(--text-small); color: var(--ink-soft); }
      .demo { font-size: var(--text-small); align-self: center; padding: 0.1em 0.6em; border: 2px dashed var(--held); color: var(--held); font-weight: 650; text-align: center; line-height: 1.15; max-inline-size: 8em; }
      @media (max-width: 900px) { .demo { display: none; } }
      @media print { header { display: none; } }
    `,
  ];
  @property({ attribute: false }) route: Route = routeOf('/');
  @property({ type: Boolean }) demo = false;
  @state() private menu = false;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const words = shellWords();
    const session = this.#session.value;
    if (session === null) return nothing;
    const tabs = TABS.filter(({ roles }) => roles.some((role) => session.roles.includes(role))).map(({ name }) => ({ href: `/${name}`, text: words.tabs[name] }));
    return html`<header>
        <gh-tabs .label=${words.desks} .tabs=${tabs} .current=${`/${this.route.desk}`}></gh-tabs>
        ${this.demo ? html`<span class="demo">${words.demo}</span>` : nothing}
        <button type="button" class="key person" @click=${this.#openMenu}>
          <gh-state-mark state="signed"></gh-state-mark><span>${session.name}<br /><span class="bench">${session.bench}</span><span class="unseen">. ${words.personKey}</span></span>
        </button>
      </header>
      ${this.menu ? html`<gh-kiosk-menu @menu-closed=${() => (this.menu = false)} @person-wanted=${() => (this.menu = false)}></gh-kiosk-menu>` : nothing}`;
  }

  readonly #openMenu = async (): Promise<void> => {
    await import('./gh-kiosk-menu.ts').catch(() => null);
    // Without its code (no network just now) the one thing that matters at a bench is still possible.
    if (customElements.get('gh-kiosk-menu') === undefined) tell(this, 'person-wanted');
    else this.menu = true;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-kiosk-head': GhKioskHead;
  }
}
