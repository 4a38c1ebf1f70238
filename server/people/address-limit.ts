/** Failed sign-ons from one address within the window before it must wait. Many kiosks may stand behind one address, so this is generous. */
const mostFailures = 60;
const windowMs = 5 * 60_000;
const mostAddresses = 10_000;

interface Tries { readonly since: number; readonly count: number }

/** Counts failed sign-ons by network address, in memory. */
export class AddressLimit {
  readonly #tries = new Map<string, Tries>();
  readonly #now: () => number;

  constructor(now: () => number = Date.now) {
    this.#now = now;
  }

  /** When this address may try again, or null when it may now. */
  lockedUntil(address: string): string | null {
    const tries = this.#tries.get(address);
    if (tries === undefined || tries.count < mostFailures) return null;
    const end = tries.since + windowMs;
    return end > this.#now() ? new Date(end).toISOString() : null;
  }

  countFailure(address: string): void {
    const now = this.#now();
    const before = this.#tries.get(address);
    this.#tries.delete(address);
    this.#tries.set(address, before === undefined || before.since + windowMs <= now ? { since: now, count: 1 } : { since: before.since, count: before.count + 1 });
    const [oldest] = this.#tries.keys();
    if (this.#tries.size > mostAddresses && oldest !== undefined) this.#tries.delete(oldest);
  }
}
