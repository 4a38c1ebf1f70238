export interface GaugeCard { readonly id: string; readonly name: string; readonly gaugeKind: string; readonly unit: string; readonly resolution: number; /** Expanded uncertainty U, k = 2. */ readonly expandedUncertainty: number; readonly least: number; readonly most: number; /** YYYY-MM-DD; the last day on which it may be used. */ readonly calibrationDue: string; readonly bench: string | null }
export type GaugeSlip =
  | { readonly type: 'gaugeRegistered'; readonly gauge: GaugeCard }
  | { readonly type: 'gaugeCalibrated'; readonly calibrationDue: string; readonly expandedUncertainty: number; readonly certificate: string }
  | { readonly type: 'gaugeWithdrawn'; readonly reason: string };
export type GaugeCommand =
  | { readonly type: 'registerGauge'; readonly gauge: GaugeCard }
  | { readonly type: 'calibrateGauge'; readonly gauge: string; readonly calibrationDue: string; readonly expandedUncertainty: number; readonly certificate: string }
  | { readonly type: 'withdrawGauge'; readonly gauge: string; readonly reason: string };
