import type { Role, Study } from '../../shared/traveller/index.ts';
import { studyCsv } from '../documents/study-sheet/index.ts';
import { notFound, refused, type Answer, type Paper } from './answer.ts';
import type { PaintTask } from './paint-task.ts';
import type { Plant } from './plant.ts';
import type { PaperReader } from './route.ts';

const overseers: readonly Role[] = ['engineer', 'lab'];

/** A gauge study as a document: its readings for a spreadsheet, while it is open only for those who oversee it, its result on paper once it is closed. */
export function studyPapers(paint: (task: PaintTask, name: string) => Promise<Answer | Paper>): readonly PaperReader[] {
  return [
    { path: '/api/studies/:id/readings.csv', type: 'text/csv; charset=utf-8', summary: 'The readings of a gauge study for a spreadsheet', paint: async ({ plant, session, params: { id = '' } }) => {
      const study = await studyAt(plant, id);
      if ('status' in study) return study;
      // Whoever still measures must not read what was found.
      if (study.standing === 'open' && !overseers.some((role) => session?.roles.includes(role))) return refused({ code: 'notYourRole', command: 'closeStudy', needed: overseers });
      return { status: 200, bytes: Buffer.from(`\uFEFF${studyCsv(study)}`, 'utf8'), type: 'text/csv; charset=utf-8', name: `study-${id}.csv` };
    } },
    { path: '/api/studies/:id/study.pdf', type: 'application/pdf', summary: 'A closed gauge study on paper', paint: async ({ plant, params: { id = '' } }) => {
      const study = await studyAt(plant, id);
      if ('status' in study) return study;
      if (study.closed === null) return refused({ code: 'studyNotWhole', study: id, taken: study.readings.length, wanted: study.parts.length * study.people.length * study.trials });
      const card = plant.records.plant();
      return paint({ what: 'study', data: { plant: card?.name ?? '', demo: card?.demo ?? false, language: 'en', study, printedAt: new Date().toISOString() } }, `study-${id}.pdf`);
    } },
  ];
}

async function studyAt(plant: Plant, id: string): Promise<Study | Answer> {
  const { state } = await plant.door.states.fresh(`study:${id}`);
  return state?.kind === 'study' ? state : notFound('study', id);
}
