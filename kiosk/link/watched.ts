/** What hears of a value; it is called at once with the present one and again with each new one. */
export type Follower<T> = (value: T) => void;

/** A value that can be followed. The holder of a `Source` sets it; everyone else reads. */
export interface Watched<T> {
  readonly value: T;
  /** Calls `follower` now and on every change; the answer ends that. */
  follow(follower: Follower<T>): () => void;
}

/** A watched value with its handle. */
export class Source<T> implements Watched<T> {
  readonly #followers = new Set<Follower<T>>();
  #value: T;

  constructor(value: T) {
    this.#value = value;
  }

  get value(): T {
    return this.#value;
  }

  /** Sets the value and tells everyone; setting the very same value tells nobody. */
  set(value: T): void {
    if (Object.is(value, this.#value)) return;
    this.#value = value;
    for (const follower of [...this.#followers]) follower(value);
  }

  follow(follower: Follower<T>): () => void {
    this.#followers.add(follower);
    follower(this.#value);
    return () => void this.#followers.delete(follower);
  }
}
