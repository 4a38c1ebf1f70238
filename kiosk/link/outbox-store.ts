import { openDB, type DBSchema } from 'idb';
import type { Command } from '../../shared/traveller/index.ts';
import type { AnyRefusal, RefusalText } from './outcome.ts';

/** One entry as it is kept on this kiosk. */
export interface KeptEntry {
  readonly clientId: string;
  readonly command: Command;
  /** Badge of the person who entered it; it is sent in no other name. */
  readonly by: string;
  readonly name: string;
  readonly bench: string;
  /** ISO 8601, this kiosk's clock. */
  readonly keptAt: string;
  /** Set once the server has said no. */
  readonly refused: { readonly refusal: AnyRefusal; readonly words: RefusalText } | null;
}

/** Where entries wait: first in, first out. */
export interface OutboxStore {
  /** False when entries would not outlive the page. */
  readonly durable: boolean;
  all(): Promise<KeptEntry[]>;
  put(entry: KeptEntry): Promise<void>;
  remove(clientId: string): Promise<void>;
}

interface Shape extends DBSchema {
  entry: { key: number; value: KeptEntry & { order?: number }; indexes: { clientId: string } };
}

/** The outbox in the browser's own database. Where the browser has none to give, entries wait in the page's memory, and `durable` says so. */
export async function openOutboxStore(): Promise<OutboxStore> {
  try {
    return await openIndexed();
  } catch {
    return memoryStore();
  }
}

async function openIndexed(): Promise<OutboxStore> {
  const db = await openDB<Shape>('gatehand-outbox', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('entry', { keyPath: 'order', autoIncrement: true }).createIndex('clientId', 'clientId', { unique: true }),
  });
  const inOne = async (change: (store: { key: (clientId: string) => Promise<number | undefined>; put: (entry: KeptEntry & { order?: number }) => Promise<unknown>; drop: (key: number) => Promise<void> }) => Promise<void>): Promise<void> => {
    const transaction = db.transaction('entry', 'readwrite', { durability: 'strict' });
    const { store } = transaction;
    await change({ key: (clientId) => store.index('clientId').getKey(clientId), put: (entry) => store.put(entry), drop: (key) => store.delete(key) });
    await transaction.done;
  };
  return {
    durable: true,
    all: () => db.getAll('entry'),
    put: (entry) => inOne(async ({ key, put }) => {
      const order = await key(entry.clientId);
      await put(order === undefined ? entry : { ...entry, order });
    }),
    remove: (clientId) => inOne(async ({ key, drop }) => {
      const order = await key(clientId);
      if (order !== undefined) await drop(order);
    }),
  };
}

/** An outbox that lives as long as the page. */
export function memoryStore(): OutboxStore {
  const entries = new Map<string, KeptEntry>();
  return {
    durable: false,
    all: () => Promise.resolve([...entries.values()]),
    put: (entry) => Promise.resolve(void entries.set(entry.clientId, entry)),
    remove: (clientId) => Promise.resolve(void entries.delete(clientId)),
  };
}
