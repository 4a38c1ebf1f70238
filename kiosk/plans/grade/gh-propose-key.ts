import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InspectionPlan } from '../../../shared/traveller/index.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { Follow, link, LinkFault } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { planPath } from '../catalogue-view.ts';
import { beginDraft } from './propose-draft.ts';

const words = gradePageWords.proposal;

/** Begins a draft of a plan with something proposed in it, and goes there; says why where it cannot. */
@customElement('gh-propose-key')
export class GhProposeKey extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [partStyles];
  @property() plan = '';
  @property() label = '';
  @property({ attribute: false }) propose: (plan: InspectionPlan) => InspectionPlan | null = () => null;
  @state() private said = '';
  readonly #session = new Follow(this, () => link.session);

  override render() {
    return html`${this.said === '' ? nothing : html`<gh-notice kind="empty" happened=${this.said}></gh-notice>`}<gh-button @click=${() => void this.#begin()}>${this.label}</gh-button>`;
  }

  async #begin(): Promise<void> {
    const badge = this.#session.value?.badge ?? '';
    const { plan } = this;
    if (badge === '' || plan === '') return;
    try {
      const begun = await beginDraft(badge, plan, this.propose, new Date().toISOString());
      if ('from' in begun) return goTo(`${planPath(plan, begun.from)}?draft`);
      this.said = { nothing: words.nothing, noGate: words.noGate(plan), kept: words.kept(plan) }[begun.not];
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.said = error.words.happened;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-propose-key': GhProposeKey;
  }
}
