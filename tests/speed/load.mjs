// Kiosks that send readings and watch each other, against any server that speaks the live channel's `watch`, `command` and `slips`.
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { io } from 'socket.io-client';

const whole = createRequire(fileURLToPath(import.meta.resolve('socket.io-client')))('socket.io-parser');

/**
 * Reads packets as usual, but of the slips told to it only the client ids: two hundred kiosks share one process here, and what the load
 * costs must not hide what the servers cost.
 */
class SparingDecoder extends whole.Decoder {
  add(packet) {
    if (typeof packet !== 'string' || !packet.startsWith('2["slips",')) return super.add(packet);
    this.emitReserved('decoded', { type: whole.PacketType.EVENT, nsp: '/', data: ['slips', clientIdsIn(packet)] });
  }
}
const parser = { ...whole, Decoder: SparingDecoder };

const key = '"clientId":"';
function clientIdsIn(packet) {
  const found = [];
  for (let at = packet.indexOf(key); at !== -1; at = packet.indexOf(key, at)) {
    at += key.length;
    found.push(packet.slice(at, packet.indexOf('"', at)));
  }
  return found;
}

/** Percentile of ascending numbers. */
export function percentile(sorted, share) {
  return sorted.length === 0 ? Number.NaN : sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
}

/**
 * Drives `kiosks` connections. Kiosk i sends readings of its own subject; the `watchers` kiosks after it watch that subject, so that every
 * reading is timed from the sending socket to each of the other kiosks. `perSecond` paces each kiosk; null sends as fast as `inFlight`
 * unanswered ones allow. The first `warmUp` seconds are not counted; `onCounting` and `onCounted` stand around those that are.
 */
export async function drive({ url, tokens, kiosks, watchers, warmUp, seconds, perSecond, inFlight, commandFor, subjectOf, onCounting, onCounted }) {
  const sentAt = new Map();
  const toKiosk = [];
  const toAnswer = [];
  let counting = false;
  let acknowledged = 0;
  let refused = 0;
  const sockets = await Promise.all(Array.from({ length: kiosks }, (_, at) => new Promise((resolve, reject) => {
    const socket = io(url, { transports: ['websocket'], forceNew: true, reconnection: false, parser, auth: tokens ? { token: tokens[at % tokens.length] } : {} });
    socket.once('connect', () => resolve(socket));
    socket.once('connect_error', reject);
  })));
  const watchedBy = (at) => Array.from({ length: watchers }, (_, before) => subjectOf((at + kiosks - 1 - before) % kiosks));
  await Promise.all(sockets.map((socket, at) => new Promise((resolve) => socket.emit('watch', watchedBy(at), resolve))));
  sockets.forEach((socket) => socket.on('slips', (clientIds) => {
    const now = performance.now();
    for (const clientId of clientIds) {
      const sent = sentAt.get(clientId);
      if (sent !== undefined) toKiosk.push(now - sent);
    }
  }));

  const start = performance.now();
  const end = start + (warmUp + seconds) * 1000;
  const counters = new Array(kiosks).fill(0);
  let serial = 0;
  const send = (at) => new Promise((resolve) => {
    const command = commandFor(at, counters[at]);
    counters[at] += 1;
    if (command === null) return resolve(false);
    serial += 1;
    const clientId = `${Date.now().toString(16).padStart(12, '0')}-${serial.toString(16).padStart(12, '0')}`;
    const sent = performance.now();
    if (counting) sentAt.set(clientId, sent);
    sockets[at].emit('command', { clientId, bench: 'Bench', command }, (reply) => {
      if (reply?.ok) { if (counting) { acknowledged += 1; toAnswer.push(performance.now() - sent); } } else { refused += 1; if (refused === 1) console.error('first refusal', JSON.stringify(reply).slice(0, 400)); }
      resolve(true);
    });
  });
  const paced = async (at) => {
    const each = 1000 / perSecond;
    for (let next = start + (each * at) / kiosks; next < end; next += each) {
      await new Promise((resolve) => setTimeout(resolve, Math.max(0, next - performance.now())));
      void send(at);
    }
  };
  const pressing = async (at) => {
    await Promise.all(Array.from({ length: inFlight }, async () => {
      while (performance.now() < end && await send(at)) { /* the answer paces the next */ }
    }));
  };
  let countedFrom = start;
  const warm = new Promise((resolve) => setTimeout(resolve, warmUp * 1000)).then(async () => {
    await onCounting();
    counting = true;
    countedFrom = performance.now();
  });
  await Promise.all([warm, ...sockets.map((_, at) => (perSecond === null ? pressing(at) : paced(at)))]);
  const took = (performance.now() - countedFrom) / 1000;
  await onCounted();
  await new Promise((resolve) => setTimeout(resolve, 500));
  sockets.forEach((socket) => socket.disconnect());
  toKiosk.sort((a, b) => a - b);
  toAnswer.sort((a, b) => a - b);
  return { acknowledged, refused, perSecond: acknowledged / took, p50: percentile(toKiosk, 0.5), p99: percentile(toKiosk, 0.99), answerP50: percentile(toAnswer, 0.5), answerP99: percentile(toAnswer, 0.99), seen: toKiosk.length };
}
