import { workOf, type Job, type Subject, type Told } from './reckoned.ts';
import { Turns } from './turns.ts';

/* Runs beside the page, so that no curve, however long it takes, keeps a finger waiting. */
const under = new Map<Subject, AbortController>();
const say = (told: Told): void => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Job>) => void run(data));

async function run(job: Job): Promise<void> {
  under.get(job.subject)?.abort();
  const abort = new AbortController();
  under.set(job.subject, abort);
  const { number } = job;
  try {
    say({ number, state: 'done', value: await workOf(job)(new Turns(abort.signal), (done, all) => say({ number, state: 'working', done, all })) });
  } catch (error) {
    if (!abort.signal.aborted) say({ number, state: 'failed', why: String(error) });
  }
}
