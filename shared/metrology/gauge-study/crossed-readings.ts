import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';

/** Every person measured every part the same number of times: readings by part, then person, then trial, all in one unit. */
export type CrossedReadings = readonly (readonly (readonly number[])[])[];
/** How many of each. */
export type CrossedSize = { readonly parts: number; readonly people: number; readonly trials: number };

/**
 * The size of a whole crossed study.
 * @throws OutsideDomain unless it has 2 … 1000 parts, 1 … 100 people, 2 … 10 000 trials, each part the same people and each person the same trials,
 * and every reading is a finite number to ±1e150. Nothing is filled in: a missing reading is measured, not estimated.
 */
export function crossedSize(readings: CrossedReadings): CrossedSize {
  const [first] = readings;
  const [parts, people, trials] = [readings.length, first?.length ?? 0, first?.[0]?.length ?? 0];
  requireWhole('parts', parts, 2, 1000);
  requireWhole('people', people, 1, 100);
  requireWhole('trials', trials, 2, 10_000);
  for (const [part, byPerson] of readings.entries()) {
    if (byPerson.length !== people) throw new OutsideDomain(`people who measured part ${part + 1}`, `${people}, as for part 1`, byPerson.length);
    for (const [person, byTrial] of byPerson.entries()) {
      if (byTrial.length !== trials) throw new OutsideDomain(`trials of person ${person + 1} on part ${part + 1}`, `${trials}, as of person 1 on part 1`, byTrial.length);
      for (const value of byTrial) requireFinite(`a reading of person ${person + 1} on part ${part + 1}`, value, -1e150, 1e150);
    }
  }
  return { parts, people, trials };
}
