import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import { cardPath, planPath, type CardKind, type CatalogueView } from './catalogue-view.ts';
import './gh-records-keys.ts';

const words = plansDeskWords.catalogue;
const columnsOf = (heads: Readonly<Record<string, string>>, numbers: readonly string[] = []) =>
  Object.entries(heads).map(([key, head]) => ({ key, head, sortable: true, ...(numbers.includes(key) ? { kind: 'number' as const } : {}) }));

/** What the plant makes, of what, and coated with what. */
@customElement('gh-catalogue-lists')
export class GhCatalogueLists extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(2 * var(--pad)); }`];
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #products = new SortedTable(this);
  readonly #grades = new SortedTable(this);
  readonly #layers = new SortedTable(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const defines = mayGive('defineGrade', this.#session.value?.roles ?? []);
    const adds = (kind: CardKind | 'grade') => (defines ? html`<p class="screen-only"><a href=${kind === 'grade' ? cardPath(kind, 'new') : `/plans/catalogue/${kind}?new`}>${words.defineNew[kind]}</a></p>` : nothing);
    const linked = (kind: CardKind | 'grade', id: string) => (defines ? { href: cardPath(kind, id) } : {});
    const plan = (id: string) => html`<a href=${planPath(id)}>${id}</a>`;
    const products = value.products.map((card): DeskRow => ({
      key: card.id, ...linked('product', card.id), texts: { id: card.id, designation: card.designation, name: card.name, itemCode: card.itemCode, grade: card.grade, layer: card.layer ?? deskWords.none, piecesPerBox: card.piecesPerBox, plan: card.plan, marking: card.marking }, shown: { plan: plan(card.plan), ...(card.byDrawing === true ? {} : { designation: html`<a href="/plans/designation/${encodeURIComponent(card.designation)}">${card.designation}</a>` }) },
    }));
    const grades = value.grades.map(({ id, name, composition, powderPlan, furnacePlan }): DeskRow => ({
      key: id, ...linked('grade', id), texts: { id, name, composition: composition.map(({ component, massPercent }) => words.component(component, showFigure(massPercent))).join(', '), powderPlan, furnacePlan }, shown: { powderPlan: plan(powderPlan), furnacePlan: plan(furnacePlan) },
    }));
    const layers = value.layers.map(({ id, name, coatingPlan }): DeskRow => ({ key: id, ...linked('layer', id), texts: { id, name, coatingPlan }, shown: { coatingPlan: plan(coatingPlan) } }));
    return html`<div class="page-part sheet">${askedNotice(this.#catalogue)}
      ${this.#products.table(words.products, columnsOf(words.product, ['piecesPerBox']), products, { empty: words.emptyProducts, file: 'products' })} ${adds('product')}
      ${this.#grades.table(words.grades, columnsOf(words.grade), grades, { empty: words.emptyGrades, file: 'grades' })} ${adds('grade')}
      ${this.#layers.table(words.layers, columnsOf(words.layer), layers, { empty: words.emptyLayers, file: 'coatings' })} ${adds('layer')}
    </div><gh-records-keys ?loads=${mayGive('draftPlan', this.#session.value?.roles ?? [])}></gh-records-keys>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-catalogue-lists': GhCatalogueLists;
  }
}
