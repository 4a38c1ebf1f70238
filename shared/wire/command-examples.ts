import type { Command, CommandType, InspectionPlan } from '../traveller/index.ts';

const at = { subject: 'lot:L26-0417', gate: 'dimensions', characteristic: 'thickness' } as const;
const look = { subject: 'lot:L26-0417', gate: 'final', characteristic: 'look' } as const;
const box = { lot: 'L26-0417', box: 'L26-0417-001' } as const;

const plan: InspectionPlan = {
  id: 'ROUTE-A', name: 'Turning inserts, uncoated', appliesTo: 'lot',
  gates: [
    { id: 'powder', name: 'Powder', workedOn: 'batch', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [] },
    {
      id: 'dimensions', name: 'Dimensions', workedOn: 'lot', bench: 'Dimensions', roles: ['inspector'], cautions: ['sharpEdges'],
      characteristics: [{
        kind: 'measured', id: 'thickness', name: 'Thickness', method: 'Micrometer', destructive: false, unit: 'mm', decimals: 3, lower: 4.71, upper: 4.81, target: 4.76,
        plausible: { least: 4.5, most: 5 }, gaugeKind: 'micrometer', decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null,
        sampling: { rule: 'variables', level: 'IV', aqlPercent: 1 },
      }],
    },
    {
      id: 'final', name: 'Final visual', workedOn: 'lot', bench: 'Final visual', roles: ['inspector'], cautions: ['sharpEdges', 'eyes'],
      characteristics: [{
        kind: 'counted', id: 'look', name: 'Look', method: 'Loupe', destructive: false, kinds: [{ code: 'crack', name: 'Crack', class: 'critical' }, { code: 'chip', name: 'Chipped edge', class: 'major' }],
        sampling: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { critical: 0.15, major: 0.65 } },
      }],
    },
  ],
};

/** One command of every type, from a plant of our own invention: examples of the description of the interface. */
export const commandExamples: { readonly [Type in CommandType]: Extract<Command, { readonly type: Type }> } = {
  openGate: { type: 'openGate', subject: 'lot:L26-0417', gate: 'dimensions' },
  takeReading: { type: 'takeReading', ...at, ordinal: 3, value: 4.762, gauge: 'M-11' },
  takeWeights: { type: 'takeWeights', subject: 'lot:L26-0417', gate: 'press', characteristic: 'weight', fromPiece: 1, values: [9.87, 9.9, 9.88], gauge: 'W-02' },
  recordFinding: { type: 'recordFinding', ...look, code: 'chip', pieces: 2, ordinals: [4, 17] },
  withdrawFinding: { type: 'withdrawFinding', ...look, finding: 12, reason: 'Counted twice' },
  takeLook: { type: 'takeLook', subject: 'lot:L26-0417', gate: 'press', characteristic: 'edges', look: 2, found: 0 },
  completeSample: { type: 'completeSample', ...look, looked: 80 },
  correctReading: { type: 'correctReading', ...at, ordinal: 3, value: 4.762, reason: 'Slipped decimal sign' },
  hold: { type: 'hold', subject: 'lot:L26-0417', reason: 'Tray 3 was dropped' },
  dispose: { type: 'dispose', subject: 'lot:L26-0417', hold: 'H1', disposition: { kind: 'sort' }, reason: 'Chips come from tray 3 only' },
  addNote: { type: 'addNote', subject: 'lot:L26-0417', text: 'Tray 3 was taken last' },
  openLot: { type: 'openLot', lot: 'L26-0417', product: 'P-100', batch: 'B26-031', quantity: 1000, trayCapacity: 100, order: 'O-17' },
  recordSort: { type: 'recordSort', lot: 'L26-0417', gate: 'final', looked: 1000, removed: [{ code: 'chip', pieces: 7 }] },
  destroyPieces: { type: 'destroyPieces', lot: 'L26-0417', pieces: 1, reason: 'Cut for porosity' },
  scrapPieces: { type: 'scrapPieces', lot: 'L26-0417', pieces: 4, reason: 'Dropped' },
  splitLot: { type: 'splitLot', lot: 'L26-0417', into: 'L26-0418', pieces: 200, reason: 'Urgent order' },
  releaseLot: { type: 'releaseLot', lot: 'L26-0417' },
  withdrawRelease: { type: 'withdrawRelease', lot: 'L26-0417', reason: 'Gauge found out of order afterwards' },
  packBox: { type: 'packBox', lot: 'L26-0417', pieces: 10 },
  printLabel: { type: 'printLabel', ...box },
  readLabel: { type: 'readLabel', ...box, payload: '[)>\u001e06\u001d1PIT-100\u001d1TL26-0417\u001dSL26-0417-001\u001dQ10\u001d9D20260305\u001d4LSE\u001e\u0004' },
  voidBox: { type: 'voidBox', ...box, reason: 'Wrong count' },
  shipBox: { type: 'shipBox', ...box, shipment: 'S26-009', order: 'O-17', consignee: 'Example purchaser' },
  openBatch: { type: 'openBatch', batch: 'B26-031', grade: 'GR10', barrels: 12, kgPerBarrel: 50, rawLots: [{ rawLot: 'R26-004', material: 'Tungsten carbide', kg: 564 }, { rawLot: 'R26-011', material: 'Cobalt', kg: 36 }] },
  blendBatches: { type: 'blendBatches', batch: 'B26-033', from: [{ batch: 'B26-031', kg: 300 }, { batch: 'B26-032', kg: 100 }], barrels: 4 },
  releaseBatch: { type: 'releaseBatch', batch: 'B26-031' },
  openCharge: { type: 'openCharge', charge: 'F26-031', kind: 'furnace', specification: 'GR10', programme: 'S-1', equipment: 'Furnace 2', members: [{ lot: 'L26-0417', places: ['Level 2', 'Level 3'] }] },
  setSwitching: { type: 'setSwitching', switching: 'switching:P-100/final/look/major', steady: true, reducedAllowed: null, reason: 'Twenty lots without a change of tool' },
  resumeInspection: { type: 'resumeInspection', switching: 'switching:P-100/final/look/major', reason: 'Die replaced, first pieces looked at' },
  draftPlan: { type: 'draftPlan', plan, why: 'First version' },
  moveLotToPlan: { type: 'moveLotToPlan', lot: 'L26-0417', planVersion: 2, reason: 'The customer asks for the new edge check' },
  writeCaution: { type: 'writeCaution', caution: 'dust', text: 'Dust: extraction on and the mask of area 2, see S-14.', shown: true, reason: 'New instruction S-14' },
  loadTable: { type: 'loadTable', table: 'ISO-2C', name: 'Reduced, our copy', severity: 'reduced', csv: 'code_letter,sample_size,0.010,…', reason: 'Copied from the bought standard' },
  approvePlan: { type: 'approvePlan', plan: 'ROUTE-A', planVersion: 1 },
  defineProduct: {
    type: 'defineProduct',
    product: { id: 'P-100', designation: 'CNMG 120408', name: 'Turning insert', itemCode: 'IT-100', grade: 'GR10', layer: null, marking: 'GR10', piecesPerBox: 10, plan: 'ROUTE-A', sinteredVolumeMm3: 660, thicknessMm: 4.76 },
  },
  defineGrade: { type: 'defineGrade', grade: { id: 'GR10', name: 'Grade 10', composition: [{ component: 'WC', massPercent: 94 }, { component: 'Co', massPercent: 6 }], powderPlan: 'POWDER-A', furnacePlan: 'FURNACE-A' } },
  defineLayer: { type: 'defineLayer', layer: { id: 'LY1', name: 'Layer 1', coatingPlan: 'COATING-A' } },
  registerGauge: { type: 'registerGauge', gauge: { id: 'M-11', name: 'Micrometer 11', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, calibrationDue: '2026-06-30', bench: 'Dimensions' } },
  calibrateGauge: { type: 'calibrateGauge', gauge: 'M-11', calibrationDue: '2027-06-30', expandedUncertainty: 0.002, certificate: 'K-2026-118' },
  checkGauge: { type: 'checkGauge', gauge: 'M-11', master: 'Gauge block 10 mm', nominal: 10.0002, found: 10.001, allowedError: 0.002 },
  setGaugeLine: { type: 'setGaugeLine', gauge: 'M-11', line: { number: 1, after: '', unit: 'mm', factor: 1 } },
  holdRecall: { type: 'holdRecall', gauge: 'M-11', recall: 'M-11-R1', subjects: ['lot:L26-0417', 'batch:P26-101'], reason: 'Micrometer 11 showed 0.007 mm too much' },
  closeRecall: { type: 'closeRecall', gauge: 'M-11', recall: 'M-11-R1', reason: 'Every lot was measured again or conceded' },
  setGaugeUncertainty: { type: 'setGaugeUncertainty', gauge: 'M-11', study: 'S26-0007' },
  openStudy: {
    type: 'openStudy', study: 'S26-0007', studyKind: 'crossed', gauge: 'M-11', characteristic: 'Thickness', tolerance: 0.1, plausible: { least: 4.5, most: 5 },
    parts: [{ label: 'A', reference: null }, { label: 'B', reference: null }, { label: 'C', reference: null }], people: ['P-07', 'P-08'], trials: 2,
  },
  takeStudyReading: { type: 'takeStudyReading', study: 'S26-0007', part: 2, value: 4.762 },
  correctStudyReading: { type: 'correctStudyReading', study: 'S26-0007', reading: 5, value: 4.762, reason: 'Slipped decimal sign' },
  withdrawStudyReading: { type: 'withdrawStudyReading', study: 'S26-0007', reading: 5, reason: 'The part had dirt on it' },
  closeStudy: { type: 'closeStudy', study: 'S26-0007', poolAbove: 0.25, confidence: 0.95 },
  abandonStudy: { type: 'abandonStudy', study: 'S26-0007', reason: 'Part B was lost' },
  withdrawGauge: { type: 'withdrawGauge', gauge: 'M-11', reason: 'Dropped' },
  registerPress: { type: 'registerPress', press: { id: 'PR-2', name: 'Press 2', bench: 'Press 2', balance: 'W-02' } },
  changePress: { type: 'changePress', press: { id: 'PR-2', name: 'Press 2', bench: 'Press 2', balance: 'W-03' }, reason: 'Balance W-02 is being repaired' },
  setPress: { type: 'setPress', press: 'PR-2', lot: 'L26-0417' },
  enrolPerson: { type: 'enrolPerson', badge: 'P-07', name: 'V. Example', roles: ['inspector', 'lab'], pin: '204060' },
  changePerson: { type: 'changePerson', badge: 'P-07', name: 'V. Example', roles: ['inspector'], active: true, reason: 'Works at the benches only' },
  changePin: { type: 'changePin', badge: 'P-07', pin: '305070' },
  openPlant: { type: 'openPlant', plant: { name: 'Example plant', address: 'Invented street 1, Nowhere', country: 'SE', demo: true }, keeper: { badge: 'P-01', name: 'K. Example', pin: '102030' } },
};
