export { checkFurnaceLog, MOST_FINDINGS } from './check-furnace-log.ts';
export type { FurnaceLog, LogCheck, LogColumn, LogFault, LogFaultCode, LogFinding, LogFindingKind, ProgrammeLimits, ProgrammeSegment, RampSegment, ReducedLog, SegmentOutcome, SoakSegment } from './furnace-log.ts';
export { MOST_SEGMENTS, programmeFault } from './programme-fault.ts';
export type { ProgrammeFault } from './programme-fault.ts';
export { LONGEST_LOG, MOST_LOG_ROWS, readFurnaceLog } from './read-furnace-log.ts';
export { MOST_BUCKETS, reduceFurnaceLog } from './reduce-furnace-log.ts';
export { logDrawing } from './log-drawing.ts';
export type { DrawnMark, DrawnStretch, DrawnTick, DrawnWindow, LogDrawing } from './log-drawing.ts';
