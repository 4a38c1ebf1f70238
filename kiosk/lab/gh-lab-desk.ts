import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { EquipmentCard, GradeCard, LayerCard } from '../../shared/traveller/index.ts';
import { mayGive } from '../../shared/traveller/rights.ts';
import type { BenchList, BenchRow } from '../../shared/wire/views.ts';
import { benchRow } from '../bench/bench-row.ts';
import { listStyles } from '../bench/list-styles.ts';
import { Follow, link, LinkFault } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import { routeOf, travellerPath, type Route } from '../shell/routes.ts';
import { labWords } from './words.ts';
import { powderToPressWords } from '../../shared/words/powder-to-press.en.ts';

interface LabLists { readonly bench: BenchList; readonly batches: readonly BenchRow[]; readonly furnace: readonly BenchRow[]; readonly coating: readonly BenchRow[]; readonly grades: readonly GradeCard[]; readonly layers: readonly LayerCard[]; readonly equipment: readonly EquipmentCard[] }
type Form = 'batch' | 'blend' | 'furnace' | 'coating';

/** Each form comes when it is first wanted. */
const FORMS: Readonly<Record<Form, () => Promise<unknown>>> = { batch: () => import('./gh-open-batch.ts'), blend: () => import('./gh-blend-batches.ts'), furnace: () => import('./gh-open-charge.ts'), coating: () => import('./gh-open-charge.ts') };

/** The lab's desk: tests to be done on batches and charges, and the forms that open them. The work itself is done on the traveller. */
@customElement('gh-lab-desk')
export class GhLabDesk extends LitElement {
  static override styles = [partStyles, listStyles];
  @property({ attribute: false }) route: Route = routeOf('/lab');
  @state() private lists: LabLists | null = null;
  @state() private fault: LinkFault | null = null;
  @state() private form: Form | null = null;
  #end: (() => void) | null = null;
  readonly #session = new Follow(this, () => link.session);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#read();
    this.#end = link.onChanged(['bench', 'catalogue'], () => void this.#read());
  }
  override disconnectedCallback(): void {
    this.#end?.();
    super.disconnectedCallback();
  }

  override render() {
    const words = labWords();
    const { lists, fault } = this;
    if (lists === null) {
      if (fault === null) return html`<gh-notice alone kind="loading" .happened=${words.loading}></gh-notice>`;
      return html`<gh-notice alone kind=${fault.status === 0 ? 'offline' : 'refusal'} .happened=${fault.words.happened} .kept=${fault.words.kept} .next=${fault.words.next}><gh-button @click=${() => void this.#read()}>${words.tryAgain}</gh-button></gh-notice>`;
    }
    const charges = [...lists.furnace, ...lists.coating];
    return html`<div class="head"><h1>${words.title}</h1>${this.#keys()}</div>
      ${this.#section(words.waiting, lists.bench.waiting, words.emptyWaiting)}
      ${lists.bench.held.length === 0 ? nothing : this.#section(words.held, lists.bench.held, words.none)}
      ${this.#section(words.batches, newestFirst(lists.batches), words.none)} ${this.#section(words.charges, newestFirst(charges), words.none)} ${this.#shownForm(lists)}`;
  }

  #keys() {
    const words = labWords();
    const roles = this.#session.value?.roles ?? [];
    const open = (form: Form) => () => void this.#openForm(form);
    return html`<div class="keys">
      ${mayGive('openBatch', roles) ? html`<gh-button @click=${open('batch')}>${words.openBatch}</gh-button>` : nothing}
      ${mayGive('blendBatches', roles) ? html`<gh-button @click=${open('blend')}>${powderToPressWords.blend.key}</gh-button>` : nothing}
      ${mayGive('openCharge', roles) ? html`<gh-button @click=${open('furnace')}>${words.openFurnace}</gh-button><gh-button @click=${open('coating')}>${words.openCoating}</gh-button>` : nothing}
    </div>`;
  }

  #shownForm({ grades, layers, batches, equipment }: LabLists) {
    const { form } = this;
    const left = (): void => void (this.form = null);
    const opened = (event: CustomEvent<{ kind: string; id: string }>): void => goTo(`${travellerPath(event.detail.kind, event.detail.id)}?work`);
    if (form === null) return nothing;
    if (form === 'batch') return html`<gh-open-batch .grades=${grades} @form-left=${left} @subject-opened=${opened}></gh-open-batch>`;
    if (form === 'blend') return html`<gh-blend-batches .grades=${grades} .batches=${newestFirst(batches)} @form-left=${left} @subject-opened=${opened}></gh-blend-batches>`;
    return html`<gh-open-charge .kind=${form} .specifications=${form === 'furnace' ? grades : layers} .equipment=${equipment} @form-left=${left} @subject-opened=${opened}></gh-open-charge>`;
  }

  #section(head: string, rows: readonly BenchRow[], empty: string) {
    return html`<section><h2>${head}<span class="count">${rows.length}</span></h2>
      ${rows.length === 0 ? html`<p class="none">${empty}</p>` : html`<div role="list" aria-label=${head}>${repeat(rows, ({ stream }) => stream, benchRow)}</div>`}</section>`;
  }

  async #openForm(form: Form): Promise<void> {
    await FORMS[form]();
    this.form = form;
  }

  async #read(): Promise<void> {
    const bench = this.#session.value?.bench;
    if (bench === undefined) return;
    try {
      const rows = (path: string): Promise<readonly BenchRow[]> => link.ask<{ rows: readonly BenchRow[] }>(path).then((answer) => answer.rows);
      const [list, batches, furnace, coating, catalogue] = await Promise.all([
        link.ask<BenchList>(`/api/bench?bench=${encodeURIComponent(bench)}`), rows('/api/batches'), rows('/api/charges?kind=furnace'), rows('/api/charges?kind=coating'),
        link.ask<{ grades: readonly GradeCard[]; layers: readonly LayerCard[]; equipment: readonly EquipmentCard[] }>('/api/catalogue'),
      ]);
      this.lists = { bench: list, batches, furnace, coating, ...catalogue };
      this.fault = null;
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error;
    }
  }
}

function newestFirst(rows: readonly BenchRow[]): readonly BenchRow[] {
  return [...rows].sort((a, b) => b.since.localeCompare(a.since));
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-lab-desk': GhLabDesk;
  }
}
