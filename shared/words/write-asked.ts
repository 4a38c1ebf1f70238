import type { AskedLine } from '../traveller/plan/asked-at-size.ts';
import type { Format } from './format.ts';
import { labels } from './labels.en.ts';
import { planRuleWords } from './plan-rules.en.ts';

const words = planRuleWords.asked;

/** One line of what a rule asks, ready to be read; empty texts where nothing is to be said. */
export interface WrittenLine { readonly class: string; readonly severity: string; readonly letter: string; readonly n: string; readonly samples: readonly string[]; readonly rest: readonly string[]; /** The arrow followed and the table read. */ readonly origin: readonly string[]; readonly notes: readonly string[] }

export function writeAsked(line: AskedLine, format: Format): WrittenLine {
  const n = (value: number): string => format.number(value);
  const { startLetter, letter, arrow, k, mPercent, lines, table } = line;
  const counted = line.samples.some(({ re }) => re !== null);
  return {
    class: line.class === null ? words.all : line.class === 'lower' || line.class === 'upper' ? words.ofLimit[line.class] : labels.findingClasses[line.class],
    severity: line.severity === null ? '' : labels.severities[line.severity], letter: letter ?? '', n: line.pieces === null ? '' : n(line.pieces),
    samples: counted ? line.samples.map(({ sampleSize, ac, re }) => words.sample(n(sampleSize), ac === null ? words.noAcceptance : n(ac), re === null ? words.noAcceptance : n(re))) : [],
    rest: [
      ...(k === null ? [] : [words.k(format.number(k))]), ...(mPercent === null ? [] : [words.m(format.number(mPercent))]),
      ...(lines === null ? [] : [words.lines(format.number(lines.slope, 4), format.number(lines.h1, 3), format.number(lines.h2, 3))]),
    ],
    origin: [...(arrow === 'none' || startLetter === null || letter === null ? [] : [words.arrow(startLetter, letter)]), ...(table === null ? [] : [words.table(table)])],
    notes: line.notes.map((note) => planRuleWords.notes[note]),
  };
}
