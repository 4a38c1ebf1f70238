import { takenAt } from '../gate/decide-gate.ts';
import { requireTrusted } from '../gate/read-value.ts';
import { dueAt } from '../gauge/gauge.ts';
import type { GaugeState } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId, requireReason } from '../pen.ts';
import { streamName } from '../stream.ts';
import { nextPlace } from './blind-order.ts';
import type { CorrectStudyReading, OpenStudy, StudyCommand, TakeStudyReading, WithdrawStudyReading } from './commands.ts';
import { requireSoundStudy } from './require-sound-study.ts';
import { requireStudyValue } from './study-value.ts';
import { readingsWanted } from './study.ts';
import type { Study, StudyReading } from './study.ts';
import { studyFound, studyResult } from './study-result.ts';

/** Decides every command of a gauge study. */
export function decideStudy(pen: Pen, command: StudyCommand): void {
  pen.requireRole(command.type);
  if (command.type === 'openStudy') return openStudy(pen, command);
  const study = pen.find(streamName('study', command.study), 'study', 'study');
  if (study.standing !== 'open') refuse({ code: 'studyNotOpen', study: study.id, standing: study.standing });
  switch (command.type) {
    case 'takeStudyReading': return takeReading(pen, study, command);
    case 'correctStudyReading': return correctReading(pen, study, command);
    case 'withdrawStudyReading': return withdrawReading(pen, study, command);
    case 'closeStudy': {
      const { poolAbove, confidence } = command;
      const result = studyResult(study, { poolAbove, confidence });
      if (result === null) return refuse({ code: 'studyNotWhole', study: study.id, taken: study.readings.length, wanted: readingsWanted(study) });
      return pen.write(study.stream, { type: 'studyClosed', poolAbove, confidence, found: studyFound(result), signature: pen.signature(command.type, 'studyClosedBy') });
    }
    case 'abandonStudy':
      requireReason(command.type, command.reason);
      return pen.write(study.stream, { type: 'studyAbandoned', reason: command.reason });
  }
}

function openStudy(pen: Pen, command: OpenStudy): void {
  const { study, studyKind, gauge: gaugeId, characteristic, tolerance, plausible, parts, trials } = command;
  requireFitId('study', study);
  const stream = streamName('study', study);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'study', id: study });
  const gauge = pen.find(streamName('gauge', gaugeId), 'gauge', 'gauge');
  requireFit(gauge, pen.stamp.at);
  const { name, unit, resolution, least, most } = gauge.card;
  const gaugeThen = { name, unit, resolution, least, most };
  requireSoundStudy(command, gaugeThen);
  const people = command.people.map((badge) => {
    const person = pen.find(streamName('person', badge), 'person', 'person');
    if (!person.active) refuse({ code: 'personInactive', badge });
    return { badge, name: person.name };
  });
  pen.write(stream, { type: 'studyOpened', study, studyKind, gauge: gaugeId, characteristic, tolerance, plausible, parts, trials, people, gaugeThen, seed: pen.stamp.seed });
}

/** A study judges a gauge in the state it is used in: an overdue, withdrawn or bad one gives no reading. */
function requireFit(gauge: GaugeState, at: string): void {
  requireTrusted(gauge, at);
  const due = dueAt(gauge, at);
  if (due < at.slice(0, 10)) refuse({ code: 'gaugeCannotCount', gauge: gauge.card.id, why: 'overdue', detail: due });
}

function takeReading(pen: Pen, study: Study, command: TakeStudyReading): void {
  const { badge } = pen.stamp.by;
  if (!study.people.some((person) => person.badge === badge)) refuse({ code: 'notInStudy', study: study.id, badge });
  requireFit(pen.find(streamName('gauge', study.gauge), 'gauge', 'gauge'), takenAt(pen));
  const next = nextPlace(study, badge);
  if (next === null || next.part !== command.part) {
    const label = (part: number | undefined): string | null => study.parts.find((_, at) => at + 1 === part)?.label ?? null;
    return refuse({ code: 'studyOutOfOrder', study: study.id, part: label(command.part) ?? String(command.part), next: label(next?.part) });
  }
  requireStudyValue(study, command);
  pen.write(study.stream, { type: 'studyReadingTaken', reading: study.taken + 1, part: next.part, trial: next.trial, value: command.value, ...(command.sure === true ? { sure: true as const } : {}) });
}

function readingOf(study: Study, number: number): StudyReading {
  return study.readings.find(({ reading }) => reading === number) ?? refuse({ code: 'notFound', what: 'reading', id: String(number) });
}

function correctReading(pen: Pen, study: Study, command: CorrectStudyReading): void {
  requireReason(command.type, command.reason);
  const reading = readingOf(study, command.reading);
  // Nobody else knows what the gauge showed.
  if (reading.badge !== pen.stamp.by.badge) refuse({ code: 'readingOfAnother', study: study.id, reading: reading.reading, badge: reading.badge });
  if (reading.value === command.value) refuse({ code: 'nothingChanged', what: study.characteristic });
  requireStudyValue(study, command);
  pen.write(study.stream, { type: 'studyReadingCorrected', reading: reading.reading, from: reading.value, to: command.value, reason: command.reason });
}

function withdrawReading(pen: Pen, study: Study, command: WithdrawStudyReading): void {
  requireReason(command.type, command.reason);
  const reading = readingOf(study, command.reading);
  if (reading.badge !== pen.stamp.by.badge) pen.requireOneOf(command.type, ['engineer', 'lab']);
  pen.write(study.stream, { type: 'studyReadingWithdrawn', reading: reading.reading, value: reading.value, reason: command.reason });
}
