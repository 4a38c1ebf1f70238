import { decimalsOfStep, type Study, type StudyResult } from '../../../shared/traveller/index.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { letterOf } from './person-letter.ts';
import type { Plot } from './study-plot-drawing.ts';

const words = studiesDeskWords.result;

/** Every reading over its part, each person in a column of the part. */
export function readingsPlot(study: Study): Plot {
  const { parts, people, gaugeThen: { unit, resolution } } = study;
  const slot = 1 / parts.length;
  return {
    marks: study.readings.map(({ part, badge, value }) => {
      const person = Math.max(0, people.findIndex((each) => each.badge === badge));
      return { at: (part - 1 + (person + 1) / (people.length + 1)) * slot, value, letter: letterOf(person) };
    }),
    lines: [], ...slotsOf(study), levels: [], x: words.axisPart, y: words.axisValue(study.characteristic, unit), show: (value) => showNumber(value, decimalsOfStep(resolution)),
  };
}

/** The mean of each person by part: lines that cross are an interaction. */
export function interactionPlot(study: Study): Plot {
  const { parts, people, gaugeThen: { unit, resolution } } = study;
  const points = people.map(({ badge }) => parts.map((_, part) => ({ at: (part + 0.5) / parts.length, value: meanOf(study.readings.filter((reading) => reading.badge === badge && reading.part === part + 1).map(({ value }) => value)) })));
  return {
    marks: points.flatMap((line, person) => line.map((point) => ({ ...point, letter: letterOf(person) }))), lines: points.map((line, person) => ({ letter: letterOf(person), points: line })), ...slotsOf(study), borders: [],
    levels: [], x: words.axisPart, y: words.axisValue(study.characteristic, unit), show: (value) => showNumber(value, decimalsOfStep(resolution)),
  };
}

/** Every reading's bias over its reference, with the fitted line where there is one. */
export function biasPlot(study: Study, result: StudyResult): Plot {
  const references = study.parts.map(({ reference }) => reference ?? 0);
  const [least, most] = [Math.min(...references), Math.max(...references)];
  const place = (reference: number): number => (most > least ? 0.06 + (0.88 * (reference - least)) / (most - least) : 0.5);
  const line = result.by === 'linearity' ? [{ letter: letterOf(study.people.length), points: [least, most].map((reference) => ({ at: place(reference), value: result.linearity.intercept.value + result.linearity.slope.value * reference })) }] : [];
  return {
    marks: study.readings.map(({ part, badge, value }) => {
      const reference = references[part - 1] ?? 0;
      return { at: place(reference), value: value - reference, letter: letterOf(Math.max(0, study.people.findIndex((each) => each.badge === badge))) };
    }),
    lines: line, slots: [...new Set(references)].map((reference) => ({ at: place(reference), text: showFigure(reference) })), borders: [], levels: [{ value: 0, text: words.zero }],
    x: words.axisReference(study.gaugeThen.unit), y: words.axisBias(study.gaugeThen.unit), show: (value) => showNumber(value, decimalsOfStep(study.gaugeThen.resolution)),
  };
}

function slotsOf({ parts }: Study): Pick<Plot, 'slots' | 'borders'> {
  return { slots: parts.map(({ label }, at) => ({ at: (at + 0.5) / parts.length, text: label })), borders: parts.slice(1).map((_, at) => (at + 1) / parts.length) };
}
function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);
}
