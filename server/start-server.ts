import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pino, type Logger } from 'pino';
import { Checkpoints } from './door/checkpoints.ts';
import { Door } from './door/door.ts';
import { activePerson } from './door/person-at-hand.ts';
import { plantKey } from './door/plant-key.ts';
import { httpApp } from './http/app.ts';
import { Certificates } from './http/certificates.ts';
import { Painter } from './http/paint.ts';
import type { PersonAtDoor, Plant } from './http/plant.ts';
import { StaticKiosk } from './http/static-kiosk.ts';
import { DropFolder } from './feed/drop-folder.ts';
import { LookClock } from './feed/look-clock.ts';
import { PressFeeds } from './feed/press-feeds.ts';
import { PressTokens } from './feed/press-tokens.ts';
import { openSqliteJournal } from './journal/sqlite/open-sqlite-journal.ts';
import type { SqliteJournal } from './journal/sqlite/sqlite-journal.ts';
import { Live } from './live/live.ts';
import { AddressLimit } from './people/address-limit.ts';
import { PinDesk } from './people/pin-desk.ts';
import { Sessions, type SessionsOptions } from './people/sessions.ts';
import { SignOn } from './people/sign-on.ts';
import { BenchLists } from './readmodels/bench-lists.ts';
import { readModels } from './readmodels/read-models-projection.ts';
import { Records } from './readmodels/records.ts';

export interface ServerOptions {
  /** Where the journal is, or is to be laid out. */
  readonly folder: string;
  /** 0 for any free one. */
  readonly port: number;
  readonly host: string;
  /** Logs nothing but faults. */
  readonly quiet?: boolean;
  /** Behind a proxy that sets X-Forwarded-For, -Proto and -Host. */
  readonly trustProxy?: boolean;
  /** Where the built kiosk is; found beside the server unless given. Null serves none. */
  readonly kioskFolder?: string | null;
  readonly sessions?: SessionsOptions;
  /** Where balances drop files of weights; `drop` in the data folder unless given. Null watches none. */
  readonly dropFolder?: string | null;
  /** The clock that entries are stamped by; the machine's own unless given. */
  readonly now?: () => Date;
  /** How often the server looks for looks that fall due, and at the drop folder, ms. */
  readonly lookEveryMs?: number;
  /** People of an invented plant, shown with their PINs before anyone signs on. */
  readonly demoPeople?: readonly PersonAtDoor[];
}

export interface RunningServer {
  readonly url: string;
  readonly door: Door;
  readonly journal: SqliteJournal;
  readonly feeds: PressFeeds;
  /** Finishes what was entered, then stops. */
  close(): Promise<void>;
}

/** The journal's file in a data folder. */
export function journalFile(folder: string): string {
  return join(folder, 'gatehand.db');
}

/** Opens the plant in a folder and answers for it. @throws JournalFault with a sentence for whoever starts it */
export async function startServer({ folder, port, host, quiet = false, trustProxy = false, kioskFolder = builtKiosk(), sessions: sessionsOptions = {}, demoPeople = [], dropFolder = join(folder, 'drop'), now = () => new Date(), lookEveryMs = 2_000 }: ServerOptions): Promise<RunningServer> {
  const log = pino({ level: quiet ? 'error' : 'info', redact: ['pin', '*.pin', 'token', '*.token', 'req.headers'] });
  const journal = await openSqliteJournal({ file: journalFile(folder), projections: [readModels] });
  try {
    return await serve(journal, log, { port, host, trustProxy, kioskFolder, sessionsOptions, demoPeople, dropFolder, now, lookEveryMs });
  } catch (fault) {
    await journal.close();
    throw fault;
  }
}

interface Serving { readonly port: number; readonly host: string; readonly trustProxy: boolean; readonly kioskFolder: string | null; readonly sessionsOptions: SessionsOptions; readonly demoPeople: readonly PersonAtDoor[]; readonly dropFolder: string | null; readonly now: () => Date; readonly lookEveryMs: number }

async function serve(journal: SqliteJournal, log: Logger, { port, host, trustProxy, kioskFolder, sessionsOptions, demoPeople, dropFolder, now, lookEveryMs }: Serving): Promise<RunningServer> {
  const onFault = (fault: unknown): void => log.error({ err: fault }, 'not written');
  const pins = new PinDesk(journal.pins);
  const door = new Door({ journal, vault: journal.pins, attachments: journal.attachments, pins, onFault, now });
  const sessions = await Sessions.open(journal.keys, sessionsOptions);
  const signOn = new SignOn({ pins, addresses: new AddressLimit(), sessions, person: (badge) => activePerson(door.states, badge) });
  const lists = new BenchLists(journal.reader);
  const records = new Records(journal.reader);
  const { privateKey, publicKey } = await plantKey(journal.keys);
  const certificates = new Certificates({ states: door.states, keys: journal.keys, privateKey, publicKey, names: () => records.names() });
  const checkpoints = new Checkpoints(door, journal, privateKey);
  const feeds = new PressFeeds(door, () => now().getTime());
  const clock = new LookClock(door, lists, { now, everyMs: lookEveryMs });
  const drop = dropFolder === null ? null : new DropFolder(dropFolder, feeds, lookEveryMs);
  const plant: Plant = { feeds, pressTokens: new PressTokens(journal.keys), door, journal, lists, records, sessions, signOn, certificates, checkpoints, log, trustProxy, demoPeople };
  const painter = new Painter();
  const http = createServer(httpApp(plant, painter, new StaticKiosk(kioskFolder)));
  const live = new Live(http, plant);
  issueOnRelease(plant, onFault);
  endSessionsOfTheInactive(plant, onFault);
  endTokensOfOtherCounts(plant, onFault);
  await new Promise<void>((resolve, reject) => {
    http.once('error', reject);
    http.listen(port, host, resolve);
  });
  checkpoints.start(onFault);
  feeds.start(onFault);
  clock.start(onFault);
  await drop?.start(onFault);
  const { port: taken } = http.address() as AddressInfo;
  const url = `http://${host === '0.0.0.0' || host === '::' ? 'localhost' : host}:${taken}`;
  log.info({ url }, 'the plant is open');
  return {
    url, door, journal, feeds,
    async close() {
      checkpoints.stop();
      clock.stop();
      await drop?.stop();
      await live.close();
      http.closeAllConnections();
      await feeds.close();
      await painter.close();
      await journal.close();
    },
  };
}

/** Each release is certified at once, while everything upstream still stands as the releaser saw it, and a checkpoint signed with it. */
function issueOnRelease({ door, certificates, checkpoints }: Plant, onFault: (fault: unknown) => void): void {
  door.onWritten((slips) => {
    for (const { body, stream, by } of slips) {
      if (body.type !== 'lotReleased') continue;
      certificates.of(stream.slice('lot:'.length)).then(() => checkpoints.sign(by)).catch(onFault);
    }
  });
}

function endSessionsOfTheInactive({ door, sessions }: Plant, onFault: (fault: unknown) => void): void {
  door.onWritten((slips) => {
    for (const { body, stream } of slips) if (body.type === 'personChanged' && !body.active) sessions.endAllOf(stream.slice('person:'.length)).catch(onFault);
  });
}

/** A token is one balance's: another one, or one that counts anew, gets its own, and what the one before still sends is not taken into the new count. */
function endTokensOfOtherCounts({ door, pressTokens }: Plant, onFault: (fault: unknown) => void): void {
  door.onWritten((slips) => {
    for (const { body } of slips) if (body.type === 'pressChanged' && body.count !== undefined) pressTokens.end(body.press.id).catch(onFault);
  });
}

/** The kiosk as the build leaves it: beside the bundled server, or under dist where the sources run. */
function builtKiosk(): string | null {
  const places = [join(import.meta.dirname, '..', 'kiosk'), join(import.meta.dirname, '..', 'dist', 'kiosk')];
  return places.find((place) => existsSync(join(place, 'index.html')) && !existsSync(join(place, 'main.ts'))) ?? null;
}
