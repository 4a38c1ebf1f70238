// Kiosks that send readings and watch each other, against any server that speaks the live channel's `watch`, `command` and `slips`.
import { io } from 'socket.io-client';

/** Percentile of ascending numbers. */
export function percentile(sorted, share) {
  return sorted.length === 0 ? Number.NaN : sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
}

/**
 * Drives `kiosks` connections. Kiosk i sends readings of its own subject; kiosk i + 1 watches that subject, so that every reading is timed
 * from the sending socket to another kiosk's screen. `perSecond` paces each kiosk; null sends as fast as `inFlight` unanswered ones allow.
 */
export async function drive({ url, tokens, kiosks, seconds, perSecond, inFlight, commandFor, subjectOf }) {
  const sentAt = new Map();
  const toKiosk = [];
  const toAnswer = [];
  let acknowledged = 0;
  let refused = 0;
  const sockets = await Promise.all(Array.from({ length: kiosks }, (_, at) => new Promise((resolve, reject) => {
    const socket = io(url, { transports: ['websocket'], forceNew: true, reconnection: false, auth: tokens ? { token: tokens[at % tokens.length] } : {} });
    socket.once('connect', () => resolve(socket));
    socket.once('connect_error', reject);
  })));
  await Promise.all(sockets.map((socket, at) => new Promise((resolve) => socket.emit('watch', [subjectOf((at + kiosks - 1) % kiosks)], resolve))));
  sockets.forEach((socket) => socket.on('slips', (slips) => {
    const now = performance.now();
    for (const { clientId } of slips) {
      const sent = sentAt.get(clientId);
      if (sent !== undefined) toKiosk.push(now - sent);
    }
  }));

  const start = performance.now();
  const end = start + seconds * 1000;
  const counters = new Array(kiosks).fill(0);
  let serial = 0;
  const send = (at) => new Promise((resolve) => {
    const command = commandFor(at, counters[at]);
    counters[at] += 1;
    if (command === null) return resolve(false);
    serial += 1;
    const clientId = `${Date.now().toString(16).padStart(12, '0')}-${serial.toString(16).padStart(12, '0')}`;
    const sent = performance.now();
    sentAt.set(clientId, sent);
    sockets[at].emit('command', { clientId, bench: 'Bench', command }, (reply) => {
      toAnswer.push(performance.now() - sent);
      if (reply?.ok) acknowledged += 1; else { refused += 1; if (refused === 1) console.error('first refusal', JSON.stringify(reply).slice(0, 400)); }
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
  await Promise.all(sockets.map((_, at) => (perSecond === null ? pressing(at) : paced(at))));
  const took = (performance.now() - start) / 1000;
  await new Promise((resolve) => setTimeout(resolve, 500));
  sockets.forEach((socket) => socket.disconnect());
  toKiosk.sort((a, b) => a - b);
  toAnswer.sort((a, b) => a - b);
  return { acknowledged, refused, perSecond: acknowledged / took, p50: percentile(toKiosk, 0.5), p99: percentile(toKiosk, 0.99), answerP50: percentile(toAnswer, 0.5), answerP99: percentile(toAnswer, 0.99), seen: toKiosk.length };
}
