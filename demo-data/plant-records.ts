import type { GaugeCard, GradeCard, LayerCard, PlantCard, ProductCard } from '../shared/traveller/index.ts';

/** Everything in this file is invented: plant, grades, coatings, products, gauges. Targets are plausible defaults (common practice, no source). */
export const PLANT: PlantCard = { name: 'Demo plant Lindenrath (invented)', address: '1 Invented Way, Lindenrath', country: 'XX', demo: true };

export const GRADES: readonly GradeCard[] = [
  { id: 'DEMO-F8', name: 'Demo fine 8', composition: [{ component: 'WC', massPercent: 91.65 }, { component: 'Co', massPercent: 8 }, { component: 'Cr3C2', massPercent: 0.35 }], powderPlan: 'POWDER-F8', blendPlan: 'BLEND-F8', furnacePlan: 'FURNACE-F8', limits: {
    densityGPerCm3: { lower: 14.59, upper: 14.71 }, coercivityKAPerM: { lower: 14, upper: 17 }, hardnessHv30: { lower: 1550, upper: 1650 }, saturation: { lowPercent: 78, warnLowPercent: 81, warnHighPercent: 91, highPercent: 94, unit: 'µT·m³/kg' },
    porosity: { A: 'A02', B: 'B00', C: 'C00' }, flags: { etaPhase: 'none', binderLakes: 'traces' },
  } },
  { id: 'DEMO-T10', name: 'Demo tough 10', composition: [{ component: 'WC', massPercent: 90 }, { component: 'Co', massPercent: 10 }], powderPlan: 'POWDER-T10', blendPlan: 'BLEND-T10', furnacePlan: 'FURNACE-T10', limits: {
    densityGPerCm3: { lower: 14.39, upper: 14.51 }, coercivityKAPerM: { lower: 10.5, upper: 13.5 }, hardnessHv30: { lower: 1400, upper: 1500 }, saturation: { lowPercent: 78, warnLowPercent: 81, warnHighPercent: 91, highPercent: 94, unit: 'A·m²/kg' },
    porosity: { A: 'A02', B: 'B00', C: 'C00' }, flags: { etaPhase: 'none', binderLakes: 'traces' },
  } },
];

export const LAYERS: readonly LayerCard[] = [
  { id: 'DEMO-CVD', name: 'Demo layer A (TiCN, Al2O3, TiN)', coatingPlan: 'COATING-CVD', layers: [{ name: 'TiN', lowerUm: 0.5, upperUm: 1.5 }, { name: 'Al2O3', lowerUm: 3, upperUm: 5 }, { name: 'TiCN', lowerUm: 5.5, upperUm: 8.5 }] },
  { id: 'DEMO-PVD', name: 'Demo layer B (TiAlN)', coatingPlan: 'COATING-PVD' },
];

export const PRODUCTS: readonly ProductCard[] = [
  { id: 'CNMG-D1', designation: 'CNMG 12 04 08', name: 'Turning insert D1, medium', itemCode: 'CNMG120408-D1', grade: 'DEMO-F8', layer: 'DEMO-CVD', marking: 'CNMG120408-D1 F8', piecesPerBox: 10, plan: 'ROUTE-CNMG', sinteredVolumeMm3: 661, thicknessMm: 4.76 },
  { id: 'TNMG-D2', designation: 'TNMG 16 04 04', name: 'Turning insert D2, finishing', itemCode: 'TNMG160404-D2', grade: 'DEMO-T10', layer: 'DEMO-PVD', marking: 'TNMG160404-D2 T10', piecesPerBox: 10, plan: 'ROUTE-TNMG', sinteredVolumeMm3: 490, thicknessMm: 4.76 },
  { id: 'SNMG-D3', designation: 'SNMG 12 04 08', name: 'Facing insert D3, medium', itemCode: 'SNMG120408-D3', grade: 'DEMO-F8', layer: 'DEMO-CVD', marking: 'SNMG120408-D3 F8', piecesPerBox: 10, plan: 'ROUTE-SNMG', sinteredVolumeMm3: 648, thicknessMm: 4.76 },
  { id: 'DCGT-D4', designation: 'DCGT 11 T3 04', name: 'Profiling insert D4, ground', itemCode: 'DCGT11T304-D4', grade: 'DEMO-T10', layer: 'DEMO-PVD', marking: 'DCGT11T304-D4 T10', piecesPerBox: 10, plan: 'ROUTE-DCGT', sinteredVolumeMm3: 318, thicknessMm: 3.97 },
];

/** Calibration days are counted from the day the data is made, so that one gauge is always overdue and one nearly due. */
export function gaugesOn(today: string): readonly GaugeCard[] {
  const inDays = (days: number): string => new Date(Date.parse(`${today}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
  return [
    { id: 'MIC-11', name: 'Micrometer 0–25, gauge room', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.003, least: 0, most: 25, calibrationDue: inDays(140), bench: 'Gauge room' },
    { id: 'MIC-12', name: 'Micrometer 0–25, spare (overdue)', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.003, least: 0, most: 25, calibrationDue: inDays(-3), bench: 'Gauge room' },
    { id: 'BAL-21', name: 'Press balance 2', gaugeKind: 'balance', unit: 'g', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 60, calibrationDue: inDays(200), bench: 'Press 2' },
    { id: 'OPT-31', name: 'Edge microscope', gaugeKind: 'edge microscope', unit: 'µm', resolution: 0.1, expandedUncertainty: 1.5, least: 0, most: 200, calibrationDue: inDays(9), bench: 'Edge bench' },
    { id: 'DEN-41', name: 'Density balance', gaugeKind: 'density balance', unit: 'g/cm³', resolution: 0.01, expandedUncertainty: 0.01, least: 1, most: 25, calibrationDue: inDays(90), bench: 'Lab' },
    { id: 'COE-42', name: 'Coercivity meter', gaugeKind: 'coercivity meter', unit: 'kA/m', resolution: 0.1, expandedUncertainty: 0.2, least: 0, most: 60, calibrationDue: inDays(120), bench: 'Lab' },
    { id: 'HAR-43', name: 'Hardness tester', gaugeKind: 'hardness tester', unit: 'HV30', resolution: 1, expandedUncertainty: 25, least: 100, most: 3000, calibrationDue: inDays(60), bench: 'Lab' },
    { id: 'CRA-44', name: 'Crater microscope', gaugeKind: 'crater microscope', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.004, least: 0, most: 10, calibrationDue: inDays(75), bench: 'Lab' },
  ];
}
