import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { chooseTheme, setTrueSize, type Theme } from '../theme/choose-theme.ts';
import { rememberedSize, rememberedSound, rememberedTheme, rememberSize, rememberSound, rememberTheme } from './kiosk-memory.ts';
import { goTo } from './navigation.ts';
import { openSound, playCall } from './play-call.ts';
import { shellWords } from './words.ts';
import type { Role } from '../../shared/traveller/index.ts';

/** Width of a bank card, mm (ISO/IEC 7810, ID-1: 85.60 mm; from memory). */
const cardMm = 85.6;
const usualPixelsPerMm = 5.9;

/**
 * What can be set at this kiosk: person, look, true size.
 * @fires person-wanted - when the person is to be changed
 * @fires menu-closed
 */
@customElement('gh-kiosk-menu')
export class GhKioskMenu extends LitElement {
  static override styles = [
    partStyles,
    css`
      .rows { display: grid; gap: calc(1.5 * var(--gap)); }
      .row { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: center; }
      h3 { font-size: var(--text-small); color: var(--ink-soft); font-weight: 400; padding-block-end: 0.3em; }
      svg { display: block; max-inline-size: 100%; }
      rect { fill: var(--slip-under); stroke: var(--ink); stroke-width: 2; }
    `,
  ];
  @state() private theme: Theme | null = rememberedTheme();
  @state() private pixelsPerMm = rememberedSize() ?? usualPixelsPerMm;
  @state() private sizing = false;
  @state() private sound = rememberedSound();

  override render() {
    const words = shellWords();
    const session = link.session.value;
    const looks = [{ value: '', text: words.looks.device }, { value: 'light', text: words.looks.light }, { value: 'dark', text: words.looks.dark }, { value: 'contrast', text: words.looks.contrast }];
    return html`<gh-sheet open .heading=${session === null ? words.menu : words.personAt(session.name, session.bench)} .closeWord=${words.close} @sheet-closed=${() => tell(this, 'menu-closed')}>
      <div class="rows">
        <div class="row">
          <gh-button kind="primary" @click=${() => tell(this, 'person-wanted')}>${words.changePerson}</gh-button>
          <gh-button mark="locked" @click=${() => void link.signOut()}>${words.signOff}</gh-button>
        </div>
        ${session === null ? nothing : html`<div class="row">${pagesOf(session.roles).map(({ path, text }) => html`<gh-button @click=${() => this.#open(path)}>${text}</gh-button>`)}</div>`}
        <gh-select-list columns="2" .label=${words.look} .value=${this.theme ?? ''} .options=${looks} @option-chosen=${this.#chooseLook}></gh-select-list>
        <gh-select-list columns="2" .label=${words.sound} .value=${this.sound ? 'on' : 'off'} .options=${[{ value: 'off', text: words.soundOff }, { value: 'on', text: words.soundOn }]} @option-chosen=${this.#chooseSound}></gh-select-list>
        <div>
          ${this.sizing ? this.#size() : html`<gh-button @click=${() => (this.sizing = true)}>${words.trueSize}</gh-button>`}
        </div>
      </div>
    </gh-sheet>`;
  }

  #open(path: string): void {
    tell(this, 'menu-closed');
    goTo(path);
  }

  #size() {
    const words = shellWords();
    const width = cardMm * this.pixelsPerMm;
    return html`<h3>${words.trueSizeHint}</h3>
      <svg width=${width} height=${width * 0.4} viewBox="0 0 ${width} ${width * 0.4}" aria-hidden="true"><rect x="1" y="1" width=${width - 2} height=${width * 0.4 - 2}></rect></svg>
      <div class="row">
        <gh-button @click=${() => this.#resize(-0.05)}>${words.narrower}</gh-button><gh-button @click=${() => this.#resize(0.05)}>${words.wider}</gh-button>
      </div>${nothing}`;
  }

  #resize(by: number): void {
    this.pixelsPerMm = Math.min(20, Math.max(2, this.pixelsPerMm + by));
    setTrueSize(this.pixelsPerMm);
    rememberSize(this.pixelsPerMm);
  }

  /** Switching it on lets it be heard once. */
  readonly #chooseSound = (event: CustomEvent<{ readonly value: string }>): void => {
    this.sound = event.detail.value === 'on';
    rememberSound(this.sound);
    if (!this.sound) return;
    openSound();
    playCall('look');
  };

  readonly #chooseLook = (event: CustomEvent<{ readonly value: string }>): void => {
    const { value } = event.detail;
    this.theme = value === 'light' || value === 'dark' || value === 'contrast' ? value : null;
    rememberTheme(this.theme);
    chooseTheme(this.theme);
  };
}

/** Pages of the keeper's desk that others need too; keepers find them under their tab as well. */
function pagesOf(roles: readonly Role[]): readonly { readonly path: string; readonly text: string }[] {
  const { myPin, journal } = shellWords().pages;
  return [
    { path: '/keeper/pin', text: myPin },
    ...(roles.includes('engineer') ? [{ path: '/keeper/journal', text: journal }] : []),
  ];
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-kiosk-menu': GhKioskMenu;
  }
}
