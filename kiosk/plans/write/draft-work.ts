import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { InspectionPlan } from '../../../shared/traveller/index.ts';
import { keepDraft, keptDraft, throwAwayDraft, type KeptDraft } from './draft-store.ts';
import { faultOfPlan, type PlacedFault } from './plan-fault-place.ts';
import { planDifferences, type PlanDifference } from './plan-differences.ts';

const MOST_STEPS = 30;

/** A plan being written by one person: what it was, what it has become, and the way back. Kept on the kiosk at every change. */
export class DraftWork implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #badge = '';
  #kept: KeptDraft | null = null;
  /** Which field the last step changed: typing on in it is the same step. */
  #lastKey = '';
  #fault: PlacedFault | null = null;
  #differences: readonly PlanDifference[] = [];

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }
  hostConnected(): void {}

  get draft(): KeptDraft | null { return this.#kept; }
  /** The first thing for which it could not be worked. */
  get fault(): PlacedFault | null { return this.#fault; }
  get differences(): readonly PlanDifference[] { return this.#differences; }

  /** Takes up the draft this person began, or begins one from a version. A draft in which nothing was written yet begins from what is given. */
  take(badge: string, begin: { readonly plan: InspectionPlan; readonly from: number | null }): void {
    const { plan, from } = begin;
    const kept = keptDraft(badge, plan.id);
    this.#badge = badge;
    this.#lastKey = '';
    this.#set(kept !== null && kept.from !== null === (from !== null) ? kept : { plan: plan.id, from, before: plan, now: plan, steps: [], why: '', at: '' }, false);
  }

  /** Puts the plan as it is now. Changes under the same key one after the other are one step. */
  put(now: InspectionPlan, key: string): void {
    const draft = this.#kept;
    if (draft === null || now === draft.now) return;
    const steps = key !== '' && key === this.#lastKey ? draft.steps : [...draft.steps, draft.now].slice(-MOST_STEPS);
    this.#lastKey = key;
    this.#set({ ...draft, now, steps }, true);
  }
  undo(): void {
    const draft = this.#kept;
    const now = draft?.steps.at(-1);
    if (draft === null || now === undefined) return;
    this.#lastKey = '';
    this.#set({ ...draft, now, steps: draft.steps.slice(0, -1) }, true);
  }
  say(why: string): void {
    if (this.#kept !== null) this.#set({ ...this.#kept, why }, true);
  }
  /** Thrown away, or drafted. */
  end(): void {
    if (this.#kept !== null) throwAwayDraft(this.#badge, this.#kept.plan);
    this.#kept = null;
    this.#host.requestUpdate();
  }
  /** Shown at its place until the next change: what the server found. */
  find(fault: PlacedFault): void {
    this.#fault = fault;
    this.#host.requestUpdate();
  }

  #set(draft: KeptDraft, keep: boolean): void {
    this.#kept = keep ? { ...draft, at: new Date().toISOString() } : draft;
    this.#fault = faultOfPlan(draft.now);
    this.#differences = planDifferences(draft.before, draft.now);
    if (keep) keepDraft(this.#badge, this.#kept);
    this.#host.requestUpdate();
  }
}
