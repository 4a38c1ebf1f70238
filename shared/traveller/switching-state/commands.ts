/** `switching` is the stream's name. Null leaves a setting as it is. */
export interface SetSwitching { readonly type: 'setSwitching'; readonly switching: string; readonly steady: boolean | null; readonly reducedAllowed: boolean | null; readonly reason: string }
/** Signed: inspection goes on, on tightened, after corrective action. */
export interface ResumeInspection { readonly type: 'resumeInspection'; readonly switching: string; readonly reason: string }
export type SwitchingCommand = SetSwitching | ResumeInspection;
