import type { Answered, Asked, Job, Subject, Told } from './reckoned.ts';

/** Who waits for the worker, by the number of the job. */
const waiting = new Map<number, (told: Told) => void>();
let last = 0;

// Begun with the page and not when first asked: its code must be here before the network goes.
const worker = new Worker(new URL('./reckon-worker.ts', import.meta.url), { type: 'module' });
worker.addEventListener('message', ({ data }: MessageEvent<Told>) => waiting.get(data.number)?.(data));
worker.addEventListener('error', ({ message }) => {
  for (const [number, hear] of waiting) hear({ number, state: 'failed', why: message });
});

type Heard<Each extends Subject> = Exclude<Told, { readonly state: 'done' }> | { readonly state: 'done'; readonly value: Answered[Each] };

/** Has something worked out beside the page. A later job on the same subject ends it. @returns ends the hearing */
export function reckon<Each extends Subject>(subject: Each, asked: Asked[Each], hear: (told: Heard<Each>) => void): () => void {
  const number = (last += 1);
  waiting.set(number, (told) => {
    if (told.state !== 'working') waiting.delete(number);
    // The worker answers a job with the value of its subject; a message carries no types.
    hear(told as Heard<Each>);
  });
  worker.postMessage({ subject, number, asked } as Job);
  return () => void waiting.delete(number);
}
