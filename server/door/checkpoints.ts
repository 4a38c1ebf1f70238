import { randomUUID, sign, type KeyObject } from 'node:crypto';
import type { PlantSlip } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { canonicalJson } from '../documents/signing/index.ts';
import type { Door } from './door.ts';
import { typed } from '../readmodels/typed-slip.ts';
import type { Journal } from '../journal/journal.ts';

const plantStream = 'plant:plant';
const dayMs = 24 * 3_600_000;
const lookEveryMs = 3_600_000;

/**
 * Signed checkpoints: one value that stands for every slip there is, signed with the plant's key and kept as a slip. Whoever has one
 * can tell later whether anything before it was changed. The signature is Ed25519 over the canonical form of `{ digest, position, streams }`.
 */
export class Checkpoints {
  readonly #door: Door;
  readonly #journal: Journal;
  readonly #privateKey: KeyObject;
  #timer: NodeJS.Timeout | null = null;

  constructor(door: Door, journal: Journal, privateKey: KeyObject) {
    this.#door = door;
    this.#journal = journal;
    this.#privateKey = privateKey;
  }

  /** Signs the heads of all streams now; null where no plant is open yet. @throws JournalFault */
  async sign(by: string): Promise<StampedSlip | null> {
    if ((await this.#door.states.fresh(plantStream)).state === null) return null;
    const slips = await this.#door.record(plantStream, by, `checkpoint-${randomUUID()}`, () => this.#headsSigned());
    return slips[0] ?? null;
  }

  /** From now on one is signed each day on which anything happened. */
  start(onFault: (fault: unknown) => void): void {
    const look = (): void => void this.#signIfDue().catch(onFault);
    look();
    this.#timer = setInterval(look, lookEveryMs);
    this.#timer.unref();
  }

  stop(): void {
    if (this.#timer !== null) clearInterval(this.#timer);
  }

  async #headsSigned(): Promise<PlantSlip> {
    const { digest, streams, position } = await this.#journal.headsDigest();
    const signature = sign(null, Buffer.from(canonicalJson({ digest, position, streams }), 'utf8'), this.#privateKey).toString('base64');
    return { type: 'headsSigned', digest, streams, position, signature };
  }

  async #signIfDue(): Promise<void> {
    const version = await this.#journal.versionOf(plantStream);
    if (version === 0) return;
    const [last] = await this.#journal.read(plantStream, version - 1);
    const body = last === undefined ? null : typed(last).body;
    const { position } = await this.#journal.headsDigest();
    // Position counts the slips before it, so the checkpoint itself is the one after: nothing has happened since.
    const isQuiet = body?.type === 'headsSigned' && position <= body.position + 1;
    if (!isQuiet && last !== undefined && (body?.type !== 'headsSigned' || Date.now() - Date.parse(last.at) >= dayMs)) await this.sign('server');
  }
}
