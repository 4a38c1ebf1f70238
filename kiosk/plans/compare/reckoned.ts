import type { Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { workCurves, type Curves } from './curves.ts';
import { workFigures, type Figures } from './figures.ts';
import { workSchemes, workYear, type Behaviours } from './schemes.ts';
import type { SimulatedYear } from '../../../shared/sampling/risk/index.ts';
import type { WorkedOut } from './turns.ts';
import type { LineLetter } from '../../parts/line-letters.ts';

/** What may be asked to be worked out beside the page, each with its own answer. */
export interface Asked {
  readonly curves: { readonly plans: readonly Compared[]; readonly curve: Settings['curve']; readonly model: Settings['model']; readonly upTo: number | null };
  readonly figures: { readonly plans: readonly Compared[]; readonly model: Settings['model']; readonly expected: number };
  readonly schemes: { readonly plans: readonly Compared[]; readonly settings: Settings; readonly expected: number };
  readonly year: { readonly plans: readonly Compared[]; readonly settings: Settings; readonly letter: LineLetter };
}
export interface Answered { readonly curves: Curves; readonly figures: readonly Figures[]; readonly schemes: Behaviours; readonly year: SimulatedYear | null }
export type Subject = keyof Asked;

/** One job for the worker; a later job on the same subject ends it. */
export type Job = { readonly [Each in Subject]: { readonly subject: Each; readonly number: number; readonly asked: Asked[Each] } }[Subject];
/** What the worker tells about a job. */
export type Told =
  | { readonly number: number; readonly state: 'working'; readonly done: number; readonly all: number }
  | { readonly number: number; readonly state: 'done'; readonly value: Answered[Subject] }
  | { readonly number: number; readonly state: 'failed'; readonly why: string };

/** The work of a job. */
export function workOf(job: Job): WorkedOut<Answered[Subject]> {
  switch (job.subject) {
    case 'curves': return workCurves(job.asked.plans, job.asked.curve, job.asked.model, job.asked.upTo);
    case 'figures': return workFigures(job.asked.plans, job.asked.model, job.asked.expected);
    case 'schemes': return workSchemes(job.asked.plans, job.asked.settings, job.asked.expected);
    case 'year': return workYear(job.asked.plans, job.asked.settings, job.asked.letter);
  }
}
