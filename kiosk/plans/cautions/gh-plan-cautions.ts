import { LitElement, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { CAUTIONS, isOurCaution, mayGive, type PlanState } from '../../../shared/traveller/index.ts';
import type { WrittenCaution } from '../../../shared/wire/cautions-view.ts';
import { cautions as toolsWords } from '../../../shared/words/cautions.en.ts';
import { planCautionsWords as words } from '../../../shared/words/plan-cautions.en.ts';
import { Asked } from '../../desk/asked.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showMoment } from '../../desk/show.ts';
import { CAUTIONED_STEPS, STEP_CAUTIONS } from '../../desk/step-cautions.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import { Follow, link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { CautionInHand } from './gh-caution-sheet.ts';
import './gh-caution-sheet.ts';

const heads = words.columns;
const columns = [{ key: 'caution', head: heads.caution }, { key: 'standing', head: heads.standing }, { key: 'text', head: heads.text }, { key: 'from', head: heads.from }, { key: 'used', head: heads.used }, { key: 'edit', head: heads.edit }];
const MARKS = { tool: 'normal', plant: 'signed', off: 'locked' } as const;

/** The cautions of the plant: words shown, who wrote them and why, and which gates show them. */
@customElement('gh-plan-cautions')
export class GhPlanCautions extends LitElement {
  static override styles = [partStyles, deskStyles];
  @state() private inHand: CautionInHand | null = null;
  @state() private done = '';
  readonly #session = new Follow(this, () => link.session);
  readonly #written = new Asked<{ readonly cautions: readonly WrittenCaution[] }>(this, { key: () => '/api/cautions', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #people = new Asked<{ readonly people: readonly { readonly badge: string; readonly name: string }[] }>(this, { key: () => '/api/people', read: (path) => link.ask(path) });
  readonly #plans = new Asked<readonly PlanState[]>(this, { key: () => 'plans', read: readPlans, topics: ['catalogue'] });
  readonly #table = new SortedTable(this);

  override render() {
    const written = this.#written.value?.cautions ?? null;
    const may = mayGive('writeCaution', this.#session.value?.roles ?? []);
    const keys = [...CAUTIONS, ...(written ?? []).map(({ caution }) => caution).filter((key) => !isOurCaution(key))];
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><p>${words.lead}</p>
        ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${words.done(this.done)} next=${words.doneNext}></gh-notice>`} ${askedNotice(this.#written)}
        ${written === null ? nothing : this.#table.table(words.caption, columns, keys.map((key) => this.#row(key, written.find(({ caution }) => caution === key) ?? null, may)), { empty: words.empty, file: 'cautions', tall: true })}
        ${may ? html`<div class="keys"><gh-button @click=${() => (this.inHand = { caution: '', text: '', shown: true })}>${words.add}</gh-button></div>` : html`<p class="soft">${words.mayNot}</p>`}
      </section>
      ${this.inHand === null ? nothing : html`<gh-caution-sheet .inHand=${this.inHand} @caution-done=${({ detail }: CustomEvent<{ caution: string | null }>) => this.#closed(detail.caution)}></gh-caution-sheet>`}`;
  }

  #row(key: string, written: WrittenCaution | null, may: boolean): DeskRow {
    const text = written?.text ?? (isOurCaution(key) ? toolsWords[key] : '');
    const standing = written === null || (written.shown && written.text === null) ? 'tool' : written.shown ? 'plant' : 'off';
    const names = new Map(this.#people.value?.people.map(({ badge, name }) => [badge, name]));
    const from = written === null ? words.tool : words.written(names.get(written.by) ?? written.by, showMoment(written.at), showFigure(written.cautionVersion), written.reason);
    const used = this.#usedAt(key);
    return {
      key, texts: { caution: key, standing: words.standings[standing], text, from, used, edit: '' },
      shown: {
        standing: html`<gh-state-mark state=${MARKS[standing]} word=${words.standings[standing]} size="small"></gh-state-mark>`,
        edit: may ? html`<gh-button @click=${() => (this.inHand = { caution: key, text, shown: written?.shown ?? true })}>${words.change}<span class="unseen"> ${key}</span></gh-button>` : '',
      },
    };
  }

  #usedAt(key: string): string {
    const gates = (this.#plans.value ?? []).flatMap(({ id, versions }) => (versions.find(({ inForce }) => inForce)?.plan.gates ?? []).filter(({ cautions }) => cautions.includes(key)).map(({ name }) => `${id}: ${name}`));
    const steps = CAUTIONED_STEPS.filter((step) => STEP_CAUTIONS[step].some((each) => each === key)).map((step) => words.steps[step]);
    return [...steps, ...gates].join('; ') || words.nowhere;
  }

  #closed(caution: string | null): void {
    this.inHand = null;
    if (caution === null) return;
    this.done = caution;
    void this.#written.again();
  }
}

async function readPlans(): Promise<readonly PlanState[]> {
  const { plans } = await link.ask<{ readonly plans: readonly { readonly id: string }[] }>('/api/catalogue');
  const answers = await Promise.all(plans.map(({ id }) => link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${id}`)}`)));
  return answers.flatMap(({ state: plan }) => plan ?? []);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-cautions': GhPlanCautions;
  }
}
