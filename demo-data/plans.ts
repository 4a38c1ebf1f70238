import type { Characteristic, Confirmed, CountedRule, GatePlan, Graded, InspectionPlan, Measured, NonconformityKind, Role } from '../shared/traveller/index.ts';
import { blendPlan } from './blend-plans.ts';

/**
 * The invented plant's inspection plans. Gates, methods and kinds of nonconformity follow what the trade commonly checks;
 * targets and tolerances are invented (common practice, no source). Standards named: numbers seen or from memory, see docs/gates.
 */
const LAB: readonly Role[] = ['lab'];
const FLOOR: readonly Role[] = ['inspector'];

type MeasuredText = Pick<Measured, 'id' | 'name' | 'method' | 'unit' | 'decimals' | 'lower' | 'upper' | 'target' | 'plausible' | 'sampling'> & Partial<Measured>;
function measured(text: MeasuredText): Measured {
  return {
    kind: 'measured', destructive: false, gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, ...text,
    lower: exact(text.lower), upper: exact(text.upper),
  };
}
/** A limit worked out as target ± tolerance, freed of the binary dust behind its sixth decimal. */
function exact(limit: number | null): number | null {
  return limit === null ? null : Number(limit.toFixed(6));
}
function graded(text: Omit<Graded, 'kind' | 'destructive'>): Graded {
  return { kind: 'graded', destructive: false, ...text };
}
function confirmed(id: string, name: string, statement: string): Confirmed {
  return { kind: 'confirmed', id, name, method: 'record', destructive: false, statement, sampling: { rule: 'once' } };
}

interface GradeNumbers { readonly density: number; readonly coercivity: number; readonly hardness: number; readonly carbon: number; readonly saturation: number }
const F8: GradeNumbers = { density: 14.65, coercivity: 15.5, hardness: 1600, carbon: 5.64, saturation: 86 };
const T10: GradeNumbers = { density: 14.45, coercivity: 12, hardness: 1450, carbon: 5.52, saturation: 86 };
const POROSITY = ['A00', 'A02', 'A04', 'A06', 'A08'];

function sinteredSet(grade: GradeNumbers, sampling: Measured['sampling'] & Graded['sampling'], asFactor: boolean): Characteristic[] {
  const { density, coercivity, hardness, saturation } = grade;
  return [
    measured({ id: 'density', name: 'Sintered density', method: 'ISO 3369', unit: 'g/cm³', decimals: 2, lower: density - 0.06, upper: density + 0.06, target: density, plausible: { least: 10, most: 16 }, gaugeKind: 'density balance', factor: asFactor ? 'sinteredDensityGPerCm3' : null, sampling }),
    measured({ id: 'coercivity', name: 'Coercivity', method: 'ISO 3326', unit: 'kA/m', decimals: 1, lower: coercivity - 1.5, upper: coercivity + 1.5, target: coercivity, plausible: { least: 3, most: 45 }, gaugeKind: 'coercivity meter', sampling }),
    measured({ id: 'saturation', name: 'Relative magnetic saturation', method: 'IEC 60404-14', unit: '%', decimals: 1, lower: saturation - 5, upper: saturation + 5, target: saturation, plausible: { least: 50, most: 105 }, sampling }),
    measured({ id: 'hardness', name: 'Hardness', method: 'ISO 3878', unit: 'HV30', decimals: 0, lower: hardness - 50, upper: hardness + 50, target: hardness, plausible: { least: 700, most: 2400 }, gaugeKind: 'hardness tester', sampling }),
    graded({ id: 'porosity', name: 'Porosity, type A', method: 'ISO 4499-4', scale: POROSITY, worstAccepted: 'A02', sampling }),
    confirmed('phases', 'Free carbon and eta phase', 'C00 and no eta phase seen on the polished sections'),
  ];
}

function powderPlan(id: string, name: string, grade: GradeNumbers): InspectionPlan {
  const barrels = (each: number): Measured['sampling'] & Graded['sampling'] => ({ rule: 'barrels', barrels: 3, each, accept: 'each' });
  const gate: GatePlan = {
    id: 'powder-lab', name: 'Powder lab', workedOn: 'batch', bench: 'Lab', roles: LAB, cautions: ['dust', 'labChemicals'],
    characteristics: [
      measured({ id: 'moisture', name: 'Moisture', method: 'drying loss', unit: '%', decimals: 2, lower: null, upper: 0.2, target: 0.1, plausible: { least: 0, most: 2 }, sampling: barrels(1) }),
      measured({ id: 'flow', name: 'Flow time', method: 'ISO 4490', unit: 's/50 g', decimals: 1, lower: 28, upper: 36, target: 32, plausible: { least: 10, most: 90 }, sampling: barrels(1) }),
      measured({ id: 'apparent', name: 'Apparent density', method: 'ISO 3923-1', unit: 'g/cm³', decimals: 2, lower: 2.9, upper: 3.2, target: 3.05, plausible: { least: 1, most: 6 }, sampling: barrels(1) }),
      measured({ id: 'granules', name: 'Granules 63 to 250 µm', method: 'ISO 4497', unit: '%', decimals: 1, lower: 90, upper: null, target: 94, plausible: { least: 20, most: 100 }, sampling: barrels(1) }),
      measured({ id: 'binder', name: 'Pressing binder', method: 'burn-off', unit: '%', decimals: 2, lower: 1.9, upper: 2.1, target: 2, plausible: { least: 0.5, most: 5 }, factor: 'binderPercent', sampling: barrels(1) }),
      measured({ id: 'carbon', name: 'Total carbon', method: 'ISO 3907', unit: '%', decimals: 2, lower: grade.carbon - 0.03, upper: grade.carbon + 0.03, target: grade.carbon, plausible: { least: 3, most: 9 }, sampling: barrels(1) }),
      measured({ id: 'shrinkage', name: 'Linear shrinkage of test pieces', method: 'pressed at 150 MPa and sintered', unit: '%', decimals: 2, lower: 17.7, upper: 18.3, target: 18, plausible: { least: 10, most: 25 }, gaugeKind: 'micrometer', entry: { how: 'shrinkage', dieMm: 25 }, factor: 'linearShrinkagePercent', sampling: barrels(1) }),
      measured({ id: 'height', name: 'Shrinkage along pressing', method: 'green and sintered height of the same test pieces', unit: '%', decimals: 2, lower: 18.3, upper: 19.3, target: 18.8, plausible: { least: 10, most: 25 }, gaugeKind: 'micrometer', entry: { how: 'shrinkage', dieMm: 6, greenRead: true }, factor: 'heightShrinkagePercent', sampling: barrels(1) }),
      ...sinteredSet(grade, barrels(1), true),
    ],
  };
  return { id, name, appliesTo: 'batch', gates: [gate] };
}

function furnacePlan(id: string, name: string, grade: GradeNumbers): InspectionPlan {
  return {
    id, name, appliesTo: 'furnace',
    gates: [{
      id: 'sinter-check', name: 'Sintered check', workedOn: 'furnace', bench: 'Lab', roles: LAB, cautions: ['furnace', 'inertGas'],
      characteristics: [
        { ...confirmed('programme', 'Furnace log', 'Programme, soak and pressure stage lie within their windows on the log'), backedBy: 'furnaceLog' },
        ...sinteredSet(grade, { rule: 'positions', positions: ['Top', 'Middle', 'Bottom'], each: 1, accept: 'each' }, false),
      ],
    }],
  };
}

interface LayerNumbers { readonly name: string; readonly um: number; readonly toleranceUm: number }
/** The layers from the surface to the substrate; none where the coating is judged as a whole. */
function coatingPlan(id: string, name: string, thickness: number, tolerance: number, layers: readonly LayerNumbers[]): InspectionPlan {
  const positions = ['Level 1', 'Level 4', 'Level 8'];
  return {
    id, name, appliesTo: 'coating',
    gates: [{
      id: 'coating-check', name: 'Coating check', workedOn: 'coating', bench: 'Lab', roles: LAB, cautions: ['coatingGases', 'indent'],
      characteristics: [
        measured({ id: 'thickness', name: 'Coating thickness', method: 'ISO 26423, ball 30 mm', unit: 'µm', decimals: 2, lower: thickness - tolerance, upper: thickness + tolerance, target: thickness, plausible: { least: 0.5, most: 40 }, gaugeKind: 'crater microscope', entry: { how: 'crater', ballDiameterMm: 30, ...(layers.length === 0 ? {} : { layers: layers.length }) }, sampling: { rule: 'positions', positions, each: 1, accept: 'each' } }),
        ...layers.map((layer, at) => measured({ id: `layer-${at + 1}`, name: layer.name, method: 'ISO 26423, ball 30 mm', unit: 'µm', decimals: 2, lower: layer.um - layer.toleranceUm, upper: layer.um + layer.toleranceUm, target: layer.um, plausible: { least: 0.1, most: 30 }, gaugeKind: 'crater microscope', entry: { how: 'craterLayer', of: 'thickness', layer: at + 1 }, sampling: { rule: 'positions', positions, each: 1, accept: 'each' } })),
        graded({ id: 'adhesion', name: 'Adhesion class', method: 'ISO 26443, scale A', scale: ['0', '1', '2', '3'], worstAccepted: '1', reference: 'adhesion', sampling: { rule: 'positions', positions, each: 1, accept: 'each' } }),
        confirmed('colour', 'Colour and coverage', 'Colour even and like the master piece, no bare spot'),
      ],
    }],
  };
}

const PRESS_FINDINGS: readonly NonconformityKind[] = [
  { code: 'PC', name: 'Crack in the green piece', class: 'critical' },
  { code: 'PL', name: 'Lamination', class: 'critical' },
  { code: 'PE', name: 'Chipped edge', class: 'major' },
];
const FINAL_FINDINGS: readonly NonconformityKind[] = [
  { code: 'CR', name: 'Crack', class: 'critical' },
  { code: 'BC', name: 'Broken corner', class: 'critical' },
  { code: 'CH', name: 'Chip on the cutting edge', class: 'major' },
  { code: 'FL', name: 'Coating flaked', class: 'major' },
  { code: 'CF', name: 'Chip former blurred', class: 'major' },
  { code: 'ST', name: 'Stain', class: 'minor' },
  { code: 'HM', name: 'Holder mark off the edge', class: 'minor' },
  { code: 'PT', name: 'Small pit off the edge', class: 'minor' },
];

interface CountedRules { readonly edge: CountedRule; readonly looks: CountedRule; readonly legible: CountedRule }
/** One sample of each lot, indexed by AQL. */
const SINGLE: CountedRules = {
  edge: { rule: 'attributes', switching: 'ISO 2859-1', level: 'S-3', aqlPercent: { major: 1 } },
  looks: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { critical: 0.15, major: 0.65, minor: 2.5 } },
  legible: { rule: 'attributes', switching: 'ISO 2859-1', level: 'S-2', aqlPercent: { major: 1, minor: 1 } },
};
/** The other kinds of plan: piece by piece, up to two samples, and none at all to be found. */
const VARIED: CountedRules = {
  edge: { rule: 'sequential', points: { major: { p1Percent: 1, producerRisk: 0.05, p2Percent: 12, consumerRisk: 0.1 } } },
  looks: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { critical: 0.15, major: 0.65, minor: 2.5 }, samples: 'double' },
  legible: { rule: 'zeroAcceptance', lqPercent: { major: 12.5, minor: 12.5 }, consumerRisk: 0.1 },
};

/** A size with the tolerance of its class (ISO 1832, from memory: docs/methods). */
interface Size { readonly mm: number; readonly plusMinusMm: number }
interface Route { readonly id: string; readonly name: string; readonly circle: Size; readonly thickness: Size; /** Control dimension m; asked for where the sides and corners are ground. */ readonly corner?: Size; readonly marking: string; readonly rules: CountedRules }

function size(id: string, name: string, method: string, { mm, plusMinusMm }: Size, plausible: Measured['plausible'], level: 'I' | 'II'): Measured {
  return measured({ id, name, method, unit: 'mm', decimals: 3, lower: mm - plusMinusMm, upper: mm + plusMinusMm, target: mm, plausible, gaugeKind: 'micrometer', decisionRule: 'guardedAcceptance', sampling: { rule: 'variables', level, aqlPercent: 1 } });
}

function route({ id, name, circle, thickness, corner, marking, rules }: Route): InspectionPlan {
  return {
    id, name, appliesTo: 'lot',
    gates: [
      { id: 'powder', name: 'Powder', workedOn: 'batch', bench: 'Lab', roles: LAB, cautions: [], characteristics: [] },
      {
        id: 'pressing', name: 'Pressing', workedOn: 'lot', bench: 'Press 2', roles: FLOOR, cautions: ['dust', 'press'],
        characteristics: [
          measured({ id: 'weight', name: 'Weight of every piece', method: 'in-line balance', unit: 'g', decimals: 3, lower: null, upper: null, target: null, plausible: { least: 1, most: 50 }, gaugeKind: 'balance', pressTolerancePercent: 0.5, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 } }),
          { kind: 'counted', id: 'looks', name: 'Look under the lens', method: '8 to 10 ×', destructive: false, kinds: PRESS_FINDINGS, sampling: { rule: 'interval', everyPieces: 250, n: 5 } },
        ],
      },
      { id: 'sintered', name: 'Sintered check', workedOn: 'furnace', bench: 'Lab', roles: LAB, cautions: [], characteristics: [] },
      {
        id: 'dimensions', name: 'Ground dimensions', workedOn: 'lot', bench: 'Gauge room', roles: FLOOR, cautions: ['sharpEdges'],
        characteristics: [
          size('circle', 'Inscribed circle d', 'micrometer with nest', circle, { least: 3, most: 40 }, 'II'),
          ...(corner === undefined ? [] : [size('corner', 'Control dimension m', 'V nest and plunger, set with a master', corner, { least: 0.2, most: 30 }, 'I')]),
          size('thickness', 'Thickness s', 'micrometer', thickness, { least: 1, most: 20 }, 'I'),
        ],
      },
      {
        id: 'edge', name: 'Edge preparation', workedOn: 'lot', bench: 'Edge bench', roles: FLOOR, cautions: ['sharpEdges', 'eyes'],
        characteristics: [
          measured({ id: 'radius', name: 'Edge radius', method: 'edge microscope', unit: 'µm', decimals: 1, lower: 27, upper: 43, target: 35, plausible: { least: 3, most: 150 }, gaugeKind: 'edge microscope', sampling: { rule: 'fixed', n: 5, accept: 'each' } }),
          { kind: 'counted', id: 'edge-look', name: 'Edges at 40 ×', method: 'microscope', destructive: false, kinds: [{ code: 'MC', name: 'Micro-chip after honing', class: 'major' }], sampling: rules.edge },
        ],
      },
      { id: 'coating', name: 'Coating check', workedOn: 'coating', bench: 'Lab', roles: LAB, cautions: [], characteristics: [] },
      {
        id: 'final-visual', name: 'Final visual', workedOn: 'lot', bench: 'Final visual 1', roles: FLOOR, cautions: ['sharpEdges', 'eyes'],
        characteristics: [{ kind: 'counted', id: 'looks', name: 'Looks', method: 'eye and 10 ×, good light', destructive: false, kinds: FINAL_FINDINGS, sampling: rules.looks }],
      },
      {
        id: 'marking', name: 'Marking', workedOn: 'lot', bench: 'Marking', roles: FLOOR, cautions: ['laser'],
        characteristics: [
          confirmed('text', 'Marked text', `Text on the first and the last piece reads ${marking}`),
          { kind: 'counted', id: 'legible', name: 'Legible and in place', method: '10 ×', destructive: false, kinds: [{ code: 'IL', name: 'Illegible', class: 'major' }, { code: 'OP', name: 'Out of place', class: 'minor' }], sampling: rules.legible },
        ],
      },
    ],
  };
}

const POWDER_F8 = powderPlan('POWDER-F8', 'Powder, Demo fine 8', F8);
const POWDER_T10 = powderPlan('POWDER-T10', 'Powder, Demo tough 10', T10);

export const PLANS: readonly InspectionPlan[] = [
  POWDER_F8,
  POWDER_T10,
  blendPlan('BLEND-F8', 'Blend of powder, Demo fine 8', POWDER_F8),
  blendPlan('BLEND-T10', 'Blend of powder, Demo tough 10', POWDER_T10),
  furnacePlan('FURNACE-F8', 'Furnace charge, Demo fine 8', F8),
  furnacePlan('FURNACE-T10', 'Furnace charge, Demo tough 10', T10),
  coatingPlan('COATING-CVD', 'Coating charge, Demo layer A', 12, 2, [{ name: 'TiN', um: 1, toleranceUm: 0.5 }, { name: 'Al2O3', um: 4, toleranceUm: 1 }, { name: 'TiCN', um: 7, toleranceUm: 1.5 }]),
  coatingPlan('COATING-PVD', 'Coating charge, Demo layer B', 3, 0.7, []),
  route({ id: 'ROUTE-CNMG', name: 'Route of CNMG-D1', circle: { mm: 12.7, plusMinusMm: 0.08 }, thickness: { mm: 4.76, plusMinusMm: 0.13 }, marking: 'CNMG120408-D1 F8', rules: SINGLE }),
  route({ id: 'ROUTE-TNMG', name: 'Route of TNMG-D2', circle: { mm: 9.525, plusMinusMm: 0.05 }, thickness: { mm: 4.76, plusMinusMm: 0.13 }, marking: 'TNMG160404-D2 T10', rules: VARIED }),
  route({ id: 'ROUTE-SNMG', name: 'Route of SNMG-D3', circle: { mm: 12.7, plusMinusMm: 0.08 }, corner: { mm: 2.301, plusMinusMm: 0.13 }, thickness: { mm: 4.76, plusMinusMm: 0.13 }, marking: 'SNMG120408-D3 F8', rules: SINGLE }),
  route({ id: 'ROUTE-DCGT', name: 'Route of DCGT-D4', circle: { mm: 9.525, plusMinusMm: 0.025 }, corner: { mm: 5.089, plusMinusMm: 0.025 }, thickness: { mm: 3.97, plusMinusMm: 0.13 }, marking: 'DCGT11T304-D4 T10', rules: SINGLE }),
];
