// A soak of the weight stream: fifty presses at two pieces a second, first at their own pace, then the rest of a shift's weights in a little over a minute.
const PRESSES = 50;
export const PIECES = 57_600;
const PER_SECOND = 2;
/** Rounds of the bench list alone and beside the stream at its own pace, in turn, so that a slow spell of the machine touches both; seconds of each; and the longest the fast part may take. */
const [ROUNDS, QUIET_S, PACED_S, FAST_S] = [6, 5, 10, 100];
const BATCH = 10;
const FAST_BATCH = 600;
/** The fast part is spread over so many seconds: long enough for the garbage of a shift's weights to be collected many times while memory is watched. */
const SPREAD_S = 70;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const share = (values, part) => [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.ceil(part * values.length) - 1)];
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

const asked = (child) => new Promise((resolve) => {
  child.once('message', resolve);
  child.send('memory');
});

/** Asks for the bench list every 50 ms for so long; milliseconds of each answer. */
async function benchLatency({ url, token }, seconds) {
  const took = [];
  const end = performance.now() + seconds * 1000;
  while (performance.now() < end) {
    const begun = performance.now();
    const response = await fetch(`${url}/api/bench?bench=Press%202`, { headers: { authorization: `Bearer ${token}` } });
    if (!response.ok) throw new Error(`the bench list answered ${response.status}`);
    await response.arrayBuffer();
    took.push(performance.now() - begun);
    await pause(50);
  }
  return took;
}

/** A press's weights: steady around the target, rounded as its balance shows them. Nobody looks here, so the feed misses its looks, as it would. */
function weigher(target, at) {
  let turn = at;
  return (count) => Array.from({ length: count }, () => Number((target + (((turn = (turn * 1103515245 + 12345) % 2147483648) / 2147483648) - 0.5) * 0.03).toFixed(3)));
}

async function send(url, { press, token }, fromSeq, values) {
  const response = await fetch(`${url}/api/presses/${press}/weights`, { method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` }, body: JSON.stringify({ fromSeq, values }) });
  const reply = await response.json();
  if (!reply.ok) throw new Error(`${press} was refused: ${JSON.stringify(reply).slice(0, 300)}`);
}

/** @param server what feed-server told */
export async function measureFeed({ child, ...server }) {
  const { url, feeds, target } = server;
  const next = feeds.map(() => 1);
  const weigh = feeds.map((_, at) => weigher(target, at + 1));
  const give = async (at, count) => {
    const values = weigh[at](Math.min(count, PIECES - next[at] + 1));
    if (values.length === 0) return false;
    await send(url, feeds[at], next[at], values);
    next[at] += values.length;
    return true;
  };
  const [quiet, streamed] = [[], []];
  const each = (1000 * BATCH) / PER_SECOND;
  for (let round = 0; round < ROUNDS; round += 1) {
    quiet.push(...await benchLatency(server, QUIET_S));
    const begun = performance.now();
    const paced = feeds.map(async (_, at) => {
      for (let due = begun + (each * at) / PRESSES; due < begun + PACED_S * 1000; due += each) {
        await pause(Math.max(0, due - performance.now()));
        await give(at, BATCH);
      }
    });
    const [some] = await Promise.all([benchLatency(server, PACED_S), ...paced]);
    streamed.push(...some);
  }
  const pacedWeights = next.reduce((sum, seq) => sum + seq - 1, 0);

  const before = await asked(child);
  const held = [];
  const begun = performance.now();
  let running = true;
  const watch = (async () => {
    while (running) {
      held.push((await asked(child)).held);
      await pause(250);
    }
  })();
  await Promise.all(feeds.map(async (_, at) => {
    const apart = (SPREAD_S * 1000 * FAST_BATCH) / PIECES;
    for (let due = begun + (apart * at) / PRESSES; performance.now() - begun < FAST_S * 1000 && await give(at, FAST_BATCH); due += apart) await pause(Math.max(0, due - performance.now()));
  }));
  running = false;
  await watch;
  const after = await asked(child);
  const fastWeights = next.reduce((sum, seq) => sum + seq - 1, 0) - pacedWeights;
  const seconds = (performance.now() - begun) / 1000;
  const third = Math.floor(held.length / 3);
  const [middle, last] = [mean(held.slice(third, 2 * third)), mean(held.slice(2 * third))];
  const written = next.reduce((sum, seq) => sum + seq - 1, 0);
  const MiB = (bytes) => `${(bytes / 1048576).toFixed(0)} MiB`;
  const ratio = (one, other) => (one / other).toFixed(2);
  return [
    [`weights of ${PRESSES} presses taken in all, of the ${(PRESSES * PIECES).toLocaleString('en')} of a shift`, written.toLocaleString('en'), null, ratio(written, PRESSES * PIECES), null, null],
    ['those left of the shift, spread over 70 s: weights a second beside the presses’ own pace', (fastWeights / seconds).toFixed(0), String(PRESSES * PER_SECOND), ratio(fastWeights / seconds, PRESSES * PER_SECOND), '≥ 10', fastWeights / seconds >= 10 * PRESSES * PER_SECOND],
    ['memory of the server, last third beside middle third of that', MiB(last), MiB(middle), ratio(last, middle), '≤ 1.1', last <= 1.1 * middle],
    ['bytes of the journal’s file a weight', ((after.journal - before.journal) / fastWeights).toFixed(0), null, null, null, null],
    ['bench list, p50, with the stream beside without', `${median(streamed).toFixed(1)} ms`, `${median(quiet).toFixed(1)} ms`, ratio(median(streamed), median(quiet)), '≤ 1.5', median(streamed) <= 1.5 * median(quiet)],
    ['bench list, p99, with the stream beside without', `${share(streamed, 0.99).toFixed(1)} ms`, `${share(quiet, 0.99).toFixed(1)} ms`, ratio(share(streamed, 0.99), share(quiet, 0.99)), null, null],
  ];
}
