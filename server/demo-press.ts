import type { RunningServer } from './start-server.ts';

/** Two pieces a second, sent in pairs. */
const everyMs = 1_000;
const pieces = 2;

/** A press that is none: its id, and the weight of its nth piece between the limits of the lot. */
export interface PretendPress { readonly id: string; readonly weightG: (n: number, limits: { readonly lower: number; readonly upper: number }) => number }

/** Sends the weights of the pretend press through the feed as a balance would, until its lot is full or it is stopped. */
export function startDemoPress({ feeds, door }: RunningServer, press: PretendPress): { stop(): void } {
  let next: number | null = null;
  const round = async (): Promise<void> => {
    const limits = await limitsOfLot(door, press.id);
    if (limits === null) return;
    const fromSeq = next ?? limits.made + 1;
    const reply = await feeds.take(press.id, { fromSeq, values: Array.from({ length: pieces }, (_, at) => press.weightG(fromSeq + at, limits)) });
    next = reply.next;
  };
  let running = Promise.resolve();
  const timer = setInterval(() => (running = running.then(round).catch(() => undefined)), everyMs);
  return { stop: () => clearInterval(timer) };
}

/** Limits of the weight of the lot the pretend press is set on, and how many of its pieces are written; null while it presses none. */
async function limitsOfLot(door: RunningServer['door'], id: string): Promise<{ readonly lower: number; readonly upper: number; readonly made: number } | null> {
  const { state: press } = await door.states.get(`press:${id}`);
  if (press?.kind !== 'press' || press.running === null) return null;
  const { lot: lotId, gate: gateId, characteristic: at } = press.running;
  const { state: lot } = await door.states.get(`lot:${lotId}`);
  if (lot?.kind !== 'lot') return null;
  const work = lot.gates.find((gate) => gate.id === gateId && gate.status === 'open')?.work.find(({ demand }) => demand.characteristic.id === at);
  const characteristic = work?.demand.characteristic;
  if (work === undefined || characteristic?.kind !== 'measured' || characteristic.lower === null || characteristic.upper === null) return null;
  const made = lot.feeds?.find(({ press: from }) => from === id)?.toSeq ?? press.afterSeq ?? 0;
  return made >= work.demand.n ? null : { lower: characteristic.lower, upper: characteristic.upper, made };
}
