import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { InspectionPlan, PlanState } from '../../shared/traveller/index.ts';
import { planVersionsWords } from '../../shared/words/plan-versions.en.ts';
import { planWritingWords } from '../../shared/words/plan-writing.en.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { Asked } from '../desk/asked.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import { planPath } from './catalogue-view.ts';
import type { PlanDifference } from './write/plan-differences.ts';

const words = planVersionsWords.history;
const columns = [
  { key: 'version', head: words.columns.version }, { key: 'standing', head: words.columns.standing }, { key: 'drafted', head: words.columns.drafted },
  { key: 'why', head: words.columns.why }, { key: 'approved', head: words.columns.approved }, { key: 'changes', head: words.columns.changes },
];

/** Every version of a plan, the newest first: who drafted it, why, who signed it and when, what changed. */
@customElement('gh-plan-history')
export class GhPlanHistory extends LitElement {
  static override styles = [partStyles];
  @property({ attribute: false }) versions: PlanState['versions'] = [];
  @property({ attribute: false }) differ: ((before: InspectionPlan, after: InspectionPlan) => readonly PlanDifference[]) | null = null;
  readonly #people = new Asked<{ readonly people: readonly { readonly badge: string; readonly name: string }[] }>(this, { key: () => '/api/people', read: (path) => link.ask(path) });
  readonly #table = new SortedTable(this);

  override render() {
    const names = new Map(this.#people.value?.people.map(({ badge, name }) => [badge, name]));
    return this.#table.table(words.caption, columns, this.versions.map((version, at) => this.#row(version, this.versions[at - 1] ?? null, names)).reverse(), { empty: '', file: `${this.versions[0]?.plan.id ?? 'plan'}-history` });
  }

  #row({ plan, planVersion, inForce, approvals, draftedBy, at, why }: PlanState['versions'][number], before: PlanState['versions'][number] | null, names: ReadonlyMap<string, string>): DeskRow {
    const signed = approvals.map(({ name, at: when }) => words.signed(name, showMoment(when)));
    const { standing } = plansDeskWords;
    const changes = before === null || this.differ === null ? null : this.differ(before.plan, plan);
    return {
      key: String(planVersion), href: planPath(plan.id, planVersion),
      texts: {
        version: words.version(showFigure(planVersion)), standing: inForce ? standing.inForce : approvals.length < 2 ? standing.draft : standing.former, drafted: words.drafted(names.get(draftedBy) ?? draftedBy, showMoment(at)),
        why, approved: signed.length === 0 ? words.none : signed.join('; '), changes: before === null ? words.first : changes === null ? '' : changes.map(changeText).join('; '),
      },
      shown: { approved: signed.length === 0 ? words.none : signed.map((each) => html`<div>${each}</div>`), changes: before === null ? words.first : changes?.map((each) => html`<div>${changeText(each)}</div>`) ?? '' },
    };
  }
}

function changeText({ where, what, from, to }: PlanDifference): string {
  return what === 'changed' || what === 'moved' ? `${where}: ${from} → ${to}` : `${where}: ${planWritingWords.change[what]}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-history': GhPlanHistory;
  }
}
