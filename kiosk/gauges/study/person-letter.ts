import { LINE_LETTERS, type LineLetter } from '../../parts/line-letters.ts';

/** Mark and dash of the nth person of a study, from 0. There are four; a fifth person begins again with the first, and the table tells them apart. */
export function letterOf(person: number): LineLetter {
  return LINE_LETTERS[person % LINE_LETTERS.length] ?? 'A';
}
