import type { StudyDesign } from './slips.ts';

/** Opens a study; the server's seed gives the order of measuring. */
export interface OpenStudy extends StudyDesign { readonly type: 'openStudy'; readonly study: string; /** Badges. */ readonly people: readonly string[] }
/** `part` counts from 1 and is the one the person was told to take: their next in the blind order. */
export interface TakeStudyReading { readonly type: 'takeStudyReading'; readonly study: string; readonly part: number; readonly value: number; /** An unlikely value was questioned, and the person says it is right. */ readonly sure?: boolean }
/** Puts a slip of the finger right; only by whoever took the reading. */
export interface CorrectStudyReading { readonly type: 'correctStudyReading'; readonly study: string; readonly reading: number; readonly value: number; readonly reason: string; readonly sure?: boolean }
/** Takes a reading out, so that it is measured again. */
export interface WithdrawStudyReading { readonly type: 'withdrawStudyReading'; readonly study: string; readonly reading: number; readonly reason: string }
/** Signed. The choices are part of the result: other choices give other components. */
export interface CloseStudy { readonly type: 'closeStudy'; readonly study: string; /** p of the interaction above which it is pooled, a fraction 0 … 1. */ readonly poolAbove: number; /** Of the intervals, a fraction 0.5 … 0.999. */ readonly confidence: number }
export interface AbandonStudy { readonly type: 'abandonStudy'; readonly study: string; readonly reason: string }
export type StudyCommand = OpenStudy | TakeStudyReading | CorrectStudyReading | WithdrawStudyReading | CloseStudy | AbandonStudy;
