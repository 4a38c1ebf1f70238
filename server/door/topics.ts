import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import { isUnseen } from '../readmodels/unseen-slips.ts';

/** The lists that a kiosk may have to read again. */
export const TOPICS = ['bench', 'release', 'packing', 'switching', 'people', 'catalogue', 'presses', 'studies', 'charts'] as const;
export type Topic = (typeof TOPICS)[number];

const atPresses: readonly Topic[] = ['presses'];
const atPressesAndBench: readonly Topic[] = ['presses', 'bench'];
/** What changes the presses' desk; of weights nothing else does. */
const OF_PRESSES: ReadonlySet<string> = new Set(['weightsTaken', 'driftAnnounced', 'driftEnded', 'lookFellDue', 'lookMissed', 'lookTaken']);
const none: readonly Topic[] = [];
const ofSubject: readonly Topic[] = ['bench', 'release', 'packing'];

/** Which lists a slip may change. Rather one too many than one too few. */
export function topicsOf({ stream, body }: Pick<StampedSlip, 'stream' | 'body'>): readonly Topic[] {
  if (OF_PRESSES.has(body.type)) return body.type === 'weightsTaken' ? atPresses : atPressesAndBench;
  if (isUnseen(body.type)) return none;
  switch (streamParts(stream)?.kind) {
    case 'lot': case 'batch': case 'furnace': case 'coating': return ofSubject;
    case 'switching': case 'skip': return ['switching', 'bench'];
    case 'chart': return ['charts'];
    case 'table': case 'caution': return ['catalogue'];
    case 'person': return ['people'];
    case 'study': return ['studies'];
    case 'gauge': return ['catalogue', 'bench', 'presses'];
    case 'press': return ['presses', 'bench'];
    case 'plan': case 'product': case 'grade': case 'layer': case 'equipment': case 'programme': case 'plant': return ['catalogue'];
    case undefined: return none;
  }
}
