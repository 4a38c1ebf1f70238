import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { evolve, streamOf, type AnyState, type Study, type StudyCommand } from '../../../shared/traveller/index.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';
import { link, LinkFault, newClientId, type GiveOptions, type KeptEntry, type Outcome, type RefusalText } from '../../link/index.ts';
import { foretold } from './foretold.ts';

/** What a page has of a study. */
export type StudyView =
  | { readonly state: 'loading' }
  | { readonly state: 'faulty'; readonly words: RefusalText }
  | { readonly state: 'missing' }
  | { readonly state: 'here'; /** With this kiosk's own entries folded in. */ readonly study: Study; /** Entries not confirmed yet. */ readonly waiting: number; readonly gauge: AnyState | null };

/** One study, live: slips from everywhere are folded with the rules' own fold; this kiosk's entries show at once. */
export class LiveStudy implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #idOf: () => string;
  #stream = '';
  #confirmed: Study | null = null;
  #gauge: AnyState | null = null;
  #view: StudyView = { state: 'loading' };
  #own: readonly KeptEntry[] = [];
  readonly #settled = new Set<string>();
  #ends: (() => void)[] = [];

  constructor(host: ReactiveControllerHost, idOf: () => string) {
    this.#host = host;
    this.#idOf = idOf;
    host.addController(this);
  }

  get view(): StudyView {
    return this.#view;
  }

  hostUpdate(): void {
    const stream = `study:${this.#idOf()}`;
    if (stream === this.#stream) return;
    this.hostDisconnected();
    this.#stream = stream;
    this.#ends = [link.watch([stream], (slips) => this.#hear(slips), (versions) => this.#compare(versions[stream])), link.outbox.entries.follow(() => this.#show())];
    void this.again();
  }
  hostDisconnected(): void {
    for (const end of this.#ends.splice(0)) end();
    [this.#stream, this.#confirmed, this.#view, this.#own] = ['', null, { state: 'loading' }, []];
  }

  /** Reads the study anew. */
  async again(): Promise<void> {
    const stream = this.#stream;
    try {
      const { state } = await link.ask<{ state: AnyState | null }>(`/api/states?stream=${encodeURIComponent(stream)}`);
      const gauge = state?.kind === 'study' ? (await link.ask<{ state: AnyState | null }>(`/api/states?stream=${encodeURIComponent(`gauge:${state.gauge}`)}`)).state : null;
      if (stream !== this.#stream) return;
      this.#gauge = gauge;
      if (state?.kind !== 'study') this.#set({ state: 'missing' });
      else if (this.#confirmed === null || state.version >= this.#confirmed.version) this.#take(state);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      // What is on the screen stays; a break heals itself when the channel comes back.
      if (stream === this.#stream && this.#confirmed === null) this.#set({ state: 'faulty', words: error.words });
    }
  }

  /** Gives a command about this study; an entry shows at once. */
  async give(command: StudyCommand, options: GiveOptions = {}): Promise<Outcome> {
    const clientId = options.clientId ?? newClientId();
    const session = link.session.value;
    if (session !== null && options.pin === undefined) this.#own = [...this.#own, { clientId, command, by: session.badge, name: session.name, bench: session.bench, keptAt: new Date().toISOString(), refused: null }];
    this.#show();
    const outcome = await link.give(command, { ...options, clientId });
    if (outcome.state === 'acknowledged') this.#hear(outcome.slips.filter(({ stream }) => stream === streamOf(command)));
    this.#own = this.#own.filter((entry) => entry.clientId !== clientId);
    this.#show();
    return outcome;
  }

  #hear(slips: readonly StampedSlip[]): void {
    let study = this.#confirmed;
    for (const slip of slips) {
      this.#settled.add(slip.clientId);
      if (study === null || slip.stream !== study.stream || slip.version <= study.version) continue;
      if (slip.version > study.version + 1) return void this.again();
      const after: AnyState = evolve(study, slip);
      if (after.kind === 'study') study = after;
    }
    if (study !== null) this.#take(study);
  }

  #compare(version: number | undefined): void {
    if (version !== undefined && this.#confirmed !== null && version > this.#confirmed.version) void this.again();
  }

  #take(study: Study): void {
    this.#confirmed = study;
    this.#show();
  }

  #show(): void {
    if (this.#confirmed === null) return;
    const own = this.#own.filter(({ clientId }) => !this.#settled.has(clientId));
    const kept = link.outbox.entries.value.filter(({ clientId }) => !this.#settled.has(clientId) && !own.some((entry) => entry.clientId === clientId));
    this.#set({ state: 'here', ...foretold(this.#confirmed, this.#gauge, [...kept, ...own]), gauge: this.#gauge });
  }

  #set(view: StudyView): void {
    this.#view = view;
    this.#host.requestUpdate();
  }
}
