import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { StudySlip } from './slips.ts';
import type { Study } from './study.ts';

/** A study after one more slip. @throws BrokenThread on a thread that does not begin with its opening */
export function evolveStudy(study: Study | null, { body, stream, version, at, by, bench }: Slip<StudySlip>): Study {
  if (body.type === 'studyOpened') {
    const { studyKind, gauge, characteristic, tolerance, plausible, parts, trials, people, gaugeThen, seed } = body;
    return {
      kind: 'study', stream, version, id: body.study, studyKind, gauge, characteristic, tolerance, plausible, parts, trials, people, gaugeThen, seed, openedBy: by, openedAt: at,
      readings: [], taken: 0, standing: 'open', closed: null, abandoned: null,
    };
  }
  if (study === null) throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
  const next = { ...study, version };
  switch (body.type) {
    case 'studyReadingTaken':
      return { ...next, taken: body.reading, readings: [...study.readings, { reading: body.reading, badge: by, part: body.part, trial: body.trial, value: body.value, at, bench, corrected: false }] };
    case 'studyReadingCorrected': return { ...next, readings: study.readings.map((each) => (each.reading === body.reading ? { ...each, value: body.to, corrected: true } : each)) };
    case 'studyReadingWithdrawn': return { ...next, readings: study.readings.filter(({ reading }) => reading !== body.reading) };
    case 'studyClosed': return { ...next, standing: 'closed', closed: { poolAbove: body.poolAbove, confidence: body.confidence, found: body.found, signature: body.signature } };
    case 'studyAbandoned': return { ...next, standing: 'abandoned', abandoned: { reason: body.reason, by, at } };
  }
}
