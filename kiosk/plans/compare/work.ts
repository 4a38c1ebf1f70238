import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Answered, Asked, Subject } from './reckoned.ts';
import { reckon } from './reckoner.ts';

export type WorkView = { readonly state: 'none' } | { readonly state: 'working'; readonly done: number; readonly all: number } | { readonly state: 'done' } | { readonly state: 'failed' };

/** Something worked out beside the page for an element, anew whenever what it depends on changes. The last result stays in sight until the next is there. */
export class Work<Each extends Subject> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #subject: Each;
  #key: string | null = null;
  #end: (() => void) | null = null;
  #last: Answered[Each] | null = null;
  #view: WorkView = { state: 'none' };

  constructor(host: ReactiveControllerHost, subject: Each) {
    this.#host = host;
    this.#subject = subject;
    host.addController(this);
  }

  get view(): WorkView {
    return this.#view;
  }
  /** The newest result, perhaps of the numbers before these. */
  get last(): Answered[Each] | null {
    return this.#last;
  }

  hostConnected(): void {}
  hostDisconnected(): void {
    this.want(null);
  }

  /** Begins the work unless the same is under way or done. @param asked null: nothing is wanted */
  want(asked: Asked[Each] | null): void {
    const key = asked === null ? null : JSON.stringify(asked);
    if (key === this.#key) return;
    this.#key = key;
    this.#end?.();
    this.#end = null;
    if (asked === null) {
      this.#last = null;
      this.#view = { state: 'none' };
      return;
    }
    this.#view = { state: 'working', done: 0, all: 1 };
    this.#end = reckon(this.#subject, asked, (told) => {
      if (told.state === 'done') this.#last = told.value;
      this.#view = told.state === 'working' ? told : { state: told.state };
      if (told.state === 'failed') console.error(told.why);
      this.#host.requestUpdate();
    });
  }
}
