import { Source, type Watched } from '../link/watched.ts';
import { LineJoiner } from './serial-line.ts';
import { rememberSettings, type SerialSettings } from './serial-settings.ts';

/** `none`: this browser has no serial ports; `closed`; `opening`; `open`; `lost`: it was open and is tried again by itself; `refused`: it could not be opened. */
export type SerialState = 'none' | 'closed' | 'opening' | 'open' | 'lost' | 'refused';

/** A port as the Web Serial interface has it, as far as it is used here. @see WICG Serial API, draft community group report (from memory) */
interface Port {
  readonly readable: ReadableStream<Uint8Array> | null;
  open(settings: SerialSettings): Promise<void>;
  close(): Promise<void>;
}
interface Ports { requestPort(): Promise<Port>; getPorts(): Promise<readonly Port[]> }

/** A lost port is tried again after this, ms. */
const againMs = 2_000;

/** The one serial port of this kiosk: opened by a person once, read line by line, opened again by itself when the cable comes back. */
export class SerialGauge {
  readonly #state: Source<SerialState>;
  readonly #listeners = new Set<(line: string) => void>();
  #settings: SerialSettings | null = null;
  #port: Port | null = null;
  #reader: ReadableStreamDefaultReader<Uint8Array> | undefined = undefined;

  constructor() {
    this.#state = new Source<SerialState>(ports() === null ? 'none' : 'closed');
  }

  get state(): Watched<SerialState> {
    return this.#state;
  }

  /** Hears every line; the answer ends it. */
  onLine(hear: (line: string) => void): () => void {
    this.#listeners.add(hear);
    return () => void this.#listeners.delete(hear);
  }

  /** Has the person choose a port and opens it. Must follow a touch: browsers ask for one. */
  async choose(settings: SerialSettings): Promise<void> {
    const there = ports();
    if (there === null) return;
    const port = await there.requestPort().catch(() => null);
    // Nobody chose: nothing has changed.
    if (port === null) return;
    await this.#end();
    this.#settings = settings;
    rememberSettings(settings);
    await this.#open(port, 'refused');
  }

  /** Opens a port that was allowed here before, without a touch. */
  async resume(settings: SerialSettings): Promise<void> {
    const [port] = (await ports()?.getPorts().catch(() => [])) ?? [];
    if (port === undefined || this.#state.value !== 'closed') return;
    this.#settings = settings;
    await this.#open(port, 'closed');
  }

  async close(): Promise<void> {
    await this.#end();
    if (this.#state.value !== 'none') this.#state.set('closed');
  }

  async #open(port: Port, otherwise: SerialState): Promise<void> {
    const settings = this.#settings;
    if (settings === null) return;
    this.#port = port;
    this.#state.set('opening');
    try {
      await port.open(settings);
    } catch {
      // Another program has it, or the cable is out.
      if (this.#port === port) this.#state.set(otherwise);
      if (otherwise === 'lost') this.#later(port);
      return;
    }
    this.#state.set('open');
    void this.#read(port);
  }

  async #read(port: Port): Promise<void> {
    const joiner = new LineJoiner();
    const decoder = new TextDecoder('latin1');
    const reader = port.readable?.getReader();
    this.#reader = reader;
    try {
      for (let piece = await reader?.read(); piece !== undefined && !piece.done; piece = await reader?.read()) {
        for (const line of joiner.take(decoder.decode(piece.value, { stream: true }))) for (const hear of this.#listeners) hear(line);
      }
    } catch {
      // The cable was pulled: what follows is the same as for a port that ended by itself.
    }
    reader?.releaseLock();
    await port.close().catch(() => undefined);
    if (this.#port !== port) return;
    this.#state.set('lost');
    this.#later(port);
  }

  #later(port: Port): void {
    setTimeout(() => {
      if (this.#port === port && this.#state.value === 'lost') void this.#open(port, 'lost');
    }, againMs);
  }

  async #end(): Promise<void> {
    // The port is closed where it was read, once its reader has let go of it.
    this.#port = null;
    await this.#reader?.cancel().catch(() => undefined);
    this.#reader = undefined;
  }
}

/** The browser's serial ports; null where it has none, such as over plain HTTP from another machine. */
function ports(): Ports | null {
  return 'serial' in navigator ? (navigator.serial as Ports) : null;
}

export const serialGauge = new SerialGauge();
