import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from './axe.ts';
import { test as base, expect } from 'playwright/test';
import type { Browser, BrowserContext, Locator, Page } from 'playwright/test';
import { chanceFrom } from '../../demo-data/chance.ts';
import { Floor } from '../../demo-data/floor.ts';
import { openThePlant } from '../../demo-data/open-the-plant.ts';
import { KEEPER, PEOPLE } from '../../demo-data/people.ts';
import type { DemoPerson } from '../../demo-data/people.ts';
import { workGate } from '../../demo-data/work-gate.ts';
import { hashPin } from '../../server/people/pin-hash.ts';
import { startServer } from '../../server/start-server.ts';
import type { RunningServer } from '../../server/start-server.ts';

export { expect };

/** Pictures go beside the other results; into the docs only when they are to be renewed: GATEHAND_PICTURES=docs/pictures. */
const PICTURES = process.env['GATEHAND_PICTURES'] ?? join('tests', 'results', 'pictures');

/** Somebody of the invented plant by badge. */
export function someone(badge: string): DemoPerson {
  const found = [KEEPER, ...PEOPLE].find((each) => each.badge === badge);
  if (found === undefined) throw new Error(`nobody has the badge ${badge}`);
  return found;
}

/** What is to have happened before the page is opened. */
export interface Story { readonly floor: Floor; readonly gate: (badge: string, stream: string, gate: string, quality?: Parameters<typeof workGate>[5]) => boolean | null }

/** One kiosk: a page of its own, signed on by one person at one bench. Touches and keystrokes of the person are counted. */
export class Kiosk {
  readonly page: Page;
  readonly #context: BrowserContext;
  touches = 0;
  keystrokes = 0;
  constructor(page: Page, context: BrowserContext) { this.page = page; this.#context = context; }

  async tap(target: Locator): Promise<void> { this.touches += 1; await target.tap(); }
  async type(text: string): Promise<void> { this.keystrokes += text.length; await this.page.keyboard.type(text); }
  async press(key: string): Promise<void> { this.keystrokes += 1; await this.page.keyboard.press(key); }
  /** Goes on with Tab until the target has the focus, as somebody without a pointer does. @throws when so many presses do not reach it */
  async reach(target: Locator, most = 60): Promise<void> {
    for (let pressed = 0; pressed <= most; pressed += 1) {
      if (await target.evaluate((element) => element.matches(':focus'))) return;
      await this.press('Tab');
    }
    throw new Error(`${String(target)} is not reached with ${most} presses of Tab`);
  }
  /** Starts counting effort anew. */
  countFromHere(): void { this.touches = 0; this.keystrokes = 0; }
  async offline(off: boolean): Promise<void> { await this.#context.setOffline(off); }
  /**
   * A scanner that types: the whole text and Enter at its own even pace, control characters with the Ctrl key (ASCII, ISO/IEC 646).
   * The keys carry the times of the device, so that a slow machine does not make it a person's typing.
   */
  async scan(text: string): Promise<void> {
    const device = await this.#context.newCDPSession(this.page);
    const begun = Date.now() / 1000;
    for (const [at, character] of [...text, '\r'].entries()) {
      const ctrl = character < ' ' && character !== '\r';
      const key = character === '\r' ? 'Enter' : ctrl ? String.fromCharCode(character.charCodeAt(0) + 0x40) : character;
      const typed = ctrl ? {} : { text: character };
      const stroke = { key, modifiers: ctrl ? 2 : 0, timestamp: begun + at * 0.004, ...(character === '\r' ? { windowsVirtualKeyCode: 13 } : {}) };
      await device.send('Input.dispatchKeyEvent', { type: ctrl ? 'rawKeyDown' : 'keyDown', ...stroke, ...typed });
      await device.send('Input.dispatchKeyEvent', { type: 'keyUp', ...stroke });
    }
    await device.detach();
  }
  /** A picture for the docs. */
  async picture(name: string): Promise<void> { await this.page.screenshot({ path: join(PICTURES, `${name}.png`), animations: 'disabled' }); }
  /** A gauge that types: the figure at once, then Enter. It is no effort of the person's. */
  async gauge(figure: string): Promise<void> { await this.page.keyboard.type(figure); await this.page.keyboard.press('Enter'); }
  /** axe finds nothing on the page as it stands, light, dark and in high contrast, as the device asks for each. */
  async accessibleInEveryTheme(): Promise<void> {
    for (const wish of [{ colorScheme: 'dark' }, { contrast: 'more' }, { colorScheme: 'light', contrast: 'no-preference' }] as const) {
      await this.page.emulateMedia({ ...wish, reducedMotion: 'reduce' });
      await this.accessible();
    }
  }
  /** axe finds nothing on the page as it stands. */
  async accessible(): Promise<void> {
    const { violations } = await new AxeBuilder(this.page).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
  }
}

/** A plant with its server, in a folder of its own. */
export class Plant {
  readonly server: RunningServer;
  readonly #browser: Browser;
  readonly #kiosks: BrowserContext[] = [];
  constructor(server: RunningServer, browser: Browser) { this.server = server; this.#browser = browser; }

  /** Opens a kiosk and signs this person on at the bench. `portrait` for the tablet. */
  async openKiosk(badge: string, bench: string, { portrait = false, signOn = true }: { readonly portrait?: boolean; readonly signOn?: boolean } = {}): Promise<Kiosk> {
    const context = await this.#browser.newContext({ baseURL: this.server.url, hasTouch: true, locale: 'en-GB', timezoneId: 'UTC', viewport: portrait ? { width: 800, height: 1280 } : { width: 1280, height: 800 } });
    this.#kiosks.push(context);
    const kiosk = new Kiosk(await context.newPage(), context);
    if (signOn) {
      // As if the person had signed on here by hand: the kiosk remembers where it stands.
      await context.addInitScript((at) => localStorage.setItem('gatehand-bench', at), bench);
      const { pin } = someone(badge);
      const reply = await context.request.post('/api/session', { data: { badge, pin, bench } });
      expect(reply.status()).toBe(200);
    }
    await kiosk.page.goto('/');
    return kiosk;
  }
  async close(): Promise<void> {
    for (const context of this.#kiosks) await context.close();
    await this.server.close();
  }
}

/** `GATEHAND_KIOSK` names another folder with a built kiosk than the one under dist. */
const kioskBuild = process.env['GATEHAND_KIOSK'] === undefined ? {} : { kioskFolder: process.env['GATEHAND_KIOSK'] };

interface Fixtures { readonly startPlant: (story?: ((story: Story) => void) | null) => Promise<Plant> }

/** `startPlant` opens the invented plant, lets the story happen on its floor, and serves it; with `null` it serves an empty folder. */
export const test = base.extend<Fixtures>({
  startPlant: async ({ browser }, use) => {
    const plants: Plant[] = [];
    const folders: string[] = [];
    await use(async (story) => {
      const folder = mkdtempSync(join(tmpdir(), 'gatehand-journey-'));
      folders.push(folder);
      const server = await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true, ...kioskBuild });
      const plant = new Plant(server, browser);
      plants.push(plant);
      if (story === null) return plant;
      const today = new Date();
      const floor = new Floor(new Date(today.getTime() - 3 * 86_400_000).toISOString());
      openThePlant(floor, today.toISOString().slice(0, 10));
      const chance = chanceFrom('journeys');
      story?.({ floor, gate: (badge, stream, gate, quality) => workGate(floor, chance, someone(badge), stream, gate, quality) });
      for (const { badge, pin } of [KEEPER, ...PEOPLE]) await server.journal.pins.put(badge, await hashPin(pin));
      for (const text of floor.files.values()) await server.journal.attachments.put(Buffer.from(text, 'utf8'));
      for (const entry of floor.entries) await server.journal.append(entry);
      return plant;
    });
    for (const plant of plants) await plant.close();
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  },
});
