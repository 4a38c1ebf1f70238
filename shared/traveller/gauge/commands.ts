import type { GaugeLine } from '../../metrology/gauge-line/index.ts';
import type { AsFound, GaugeCard } from './slips.ts';

export type GaugeCommand =
  | { readonly type: 'registerGauge'; readonly gauge: GaugeCard }
  | { readonly type: 'calibrateGauge'; readonly gauge: string; readonly calibrationDue: string; readonly expandedUncertainty: number; readonly certificate: string; readonly coverageFactor?: number; readonly asFound?: AsFound }
  /** A check against a master: `nominal` is its true value, `found` what the gauge showed. `allowedError` may be left out where the card says it. */
  | { readonly type: 'checkGauge'; readonly gauge: string; readonly master: string; readonly nominal: number; readonly found: number; readonly allowedError?: number }
  | { readonly type: 'setGaugeLine'; readonly gauge: string; readonly line: GaugeLine }
  /** Signed. Puts these subjects on hold, all in one commit; whatever has ended or is held for this recall already is passed over. */
  | { readonly type: 'holdRecall'; readonly gauge: string; readonly recall: string; readonly subjects: readonly string[]; readonly reason: string }
  /** Signed. Says that everything the recall lists has been decided about. */
  | { readonly type: 'closeRecall'; readonly gauge: string; readonly recall: string; readonly reason: string }
  /** Signed. Takes the gauge's own spread from a closed crossed study of it. */
  | { readonly type: 'setGaugeUncertainty'; readonly gauge: string; readonly study: string }
  | { readonly type: 'withdrawGauge'; readonly gauge: string; readonly reason: string };
