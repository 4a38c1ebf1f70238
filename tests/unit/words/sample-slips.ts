import { singlePlan } from '../../../shared/sampling/attributes/index.ts';
import { judgeVariables, sMethodPlan } from '../../../shared/sampling/variables/index.ts';
import type { Basis, Characteristic, CharacteristicResult, Demand, GatePlan, LotProduct, Measured, Place, ResultDetail, Signature, SlipBody, Verdict } from '../../../shared/traveller/index.ts';

/** One of everything a traveller may hold, from a plant of our own invention. A slip, basis or result that is missing here does not compile. */
const measured: Measured = {
  id: 'thickness', kind: 'measured', name: 'Thickness', method: 'Micrometer', destructive: false, unit: 'mm', decimals: 3, lower: 4.71, upper: 4.81, target: 4.76,
  plausible: { least: 4.5, most: 5 }, gaugeKind: 'micrometer', decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'fixed', n: 5, accept: 'each' },
};
const counted: Characteristic = {
  id: 'look', kind: 'counted', name: 'Final visual', method: 'Loupe 10×', destructive: false, kinds: [{ code: 'chip', name: 'Chipped edge', class: 'major' }, { code: 'stain', name: 'Stain', class: 'minor' }],
  sampling: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 0.65, minor: 2.5 } },
};
const graded: Characteristic = { id: 'porosity', kind: 'graded', name: 'Porosity', method: 'ISO 4499-4', destructive: true, scale: ['A00', 'A02', 'A04'], worstAccepted: 'A02', sampling: { rule: 'fixed', n: 1, accept: 'each' } };
const confirmed: Characteristic = { id: 'cleared', kind: 'confirmed', name: 'Cleared', method: 'Look', destructive: false, statement: 'The press is cleared', sampling: { rule: 'once' } };

export const attributesPlan = singlePlan({ lotSize: 1000, level: 'II', aqlPercent: 2.5, severity: 'normal' });
const majorPlan = singlePlan({ lotSize: 1000, level: 'II', aqlPercent: 0.65, severity: 'normal' });
const variablesPlan = sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal' });
const values = [4.758, 4.76, 4.761, 4.759, 4.762];
const limits = { lower: 4.71, upper: 4.81, acceptLower: 4.71, acceptUpper: 4.81, uncertainty: 0.002 };
const summary = { n: 5, mean: 4.76, s: 0.00158, min: 4.758, max: 4.762 };

const basisOf: { readonly [By in Basis['by']]: { readonly basis: Extract<Basis, { by: By }>; readonly characteristic: Characteristic; readonly n: number; readonly places: readonly Place[] } } = {
  attributes: {
    basis: { by: 'attributes', classes: [{ class: 'major', plan: majorPlan, switching: 'switching:P/g/look/major' }, { class: 'minor', plan: attributesPlan, switching: 'switching:P/g/look/minor' }] },
    characteristic: counted, n: 80, places: [{ at: 'tray', piece: 212, tray: 3, position: 12 }],
  },
  variables: { basis: { by: 'variables', plan: variablesPlan, switching: 'switching:P/g/thickness' }, characteristic: measured, n: 5, places: [] },
  skipped: { basis: { by: 'skipped', clearance: 10, oneIn: 4, lots: ['L26-0401', 'L26-0409'] }, characteristic: counted, n: 0, places: [] },
  limits: { basis: { by: 'limits', accept: 'each' }, characteristic: measured, n: 4, places: [{ at: 'barrel', barrel: 7, nth: 1 }, { at: 'barrel', barrel: 7, nth: 2 }, { at: 'barrel', barrel: 9, nth: 1 }, { at: 'barrel', barrel: 9, nth: 2 }] },
  everyPiece: { basis: { by: 'everyPiece' }, characteristic: measured, n: 1000, places: [] },
  interval: { basis: { by: 'interval', everyPieces: 500, looks: 2 }, characteristic: counted, n: 5, places: [] },
  grade: { basis: { by: 'grade' }, characteristic: graded, n: 1, places: [{ at: 'position', position: 'Middle', nth: 1 }] },
  once: { basis: { by: 'once' }, characteristic: confirmed, n: 1, places: [] },
};
export const sampleDemands: readonly Demand[] = Object.values(basisOf);

const detailOf: { readonly [By in ResultDetail['by']]: Extract<ResultDetail, { by: By }> } = {
  attributes: { by: 'attributes', classes: [{ class: 'minor', plan: attributesPlan, found: 2, beyond: 0, outcome: 'accepted' }] },
  variables: { by: 'variables', plan: variablesPlan, judged: judgeVariables({ values, lower: 4.71, upper: 4.81, plan: variablesPlan }), summary, limits, outside: 0 },
  skipped: { by: 'skipped', clearance: 10, oneIn: 4, lots: ['L26-0401', 'L26-0409'] },
  limits: { by: 'limits', accept: 'each', summary, limits, outside: 2 },
  everyPiece: { by: 'everyPiece', summary: { ...summary, n: 1000 }, limits, ejectAtMostPercent: 2, outside: 3 },
  interval: { by: 'interval', looks: 2, looked: 10, found: 0 },
  grade: { by: 'grade', n: 1, worst: 'A02', worstAccepted: 'A02' },
  once: { by: 'once', statement: 'The press is cleared', confirmed: true },
};
const resultOf = (detail: ResultDetail): CharacteristicResult => ({
  characteristic: detail.by, name: `Characteristic ${detail.by}`, method: 'method', unit: detail.by === 'attributes' ? null : 'mm', decimals: 3, decisionRule: 'simple', accepted: detail.by !== 'limits', detail,
});
export const sampleResults: readonly CharacteristicResult[] = Object.values(detailOf).map(resultOf);
export const oneFound: CharacteristicResult = resultOf(detailOf.attributes);
export const verdictOfOne: Verdict = { accepted: true, attempt: 1, original: true, results: [oneFound], workers: ['P-07'] };
export const verdictOfAll: Verdict = { accepted: false, attempt: 1, original: true, results: sampleResults, workers: ['P-07', 'P-08'] };

export const signature: Signature = { badge: 'P-02', name: 'R. Test', role: 'releaser', at: '2026-03-05T06:40:00.000Z', meaning: 'releasedBy' };
const product: LotProduct = { id: 'P-100', designation: 'CNMG 120408', name: 'Turning insert', grade: 'GR10', layer: null, marking: 'GR10', piecesPerBox: 10, itemCode: 'IT-100' };
const gate: GatePlan = { id: 'final', name: 'Final visual', workedOn: 'lot', bench: 'Final visual', roles: ['inspector'], cautions: ['sharpEdges'], characteristics: [counted] };
const route = [{ id: 'final', name: 'Final visual', workedOn: 'lot' as const, bench: 'Final visual' }];
const press = { weightG: 9.876, greenThicknessLimits: { lowerMm: 5.7, upperMm: 5.9 }, dieFactor: 1.2195, greenThicknessMm: 5.8, linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.9, binderPercent: 2, fromBatch: 'B26-031' };
const gauge = { id: 'M-11', expandedUncertainty: 0.002, calibrationDue: '2026-06-30' };
const at = { gate: 'final', characteristic: 'thickness' };
const counting = { type: 'lotJudged' as const, lot: 'L26-0417', original: true, accepted: false, inGap: false, plan: { kind: 'variables' as const }, sampleSize: 80, found: 6 };
const moved = { from: 'normal' as const, to: 'tightened' as const, why: 'twoOfFiveNotAccepted' as const, lots: ['L26-0411', 'L26-0417'] };

const about = { subjectKind: 'lot' as const, owner: 'P-100', ownerName: 'CNMG 120408', gate: 'final', gateName: 'Final visual', characteristic: 'thickness', characteristicName: 'Thickness', unit: 'mm', decimals: 3 };
const charted = { by: 'measured' as const, n: 5, mean: 4.76, s: 0.00158, min: 4.758, max: 4.762, outside: 0, lower: 4.71, upper: 4.81, values };

export const sampleSlips: { readonly [Type in SlipBody['type']]: Extract<SlipBody, { readonly type: Type }> } = {
  gateOpened: { type: 'gateOpened', gate, attempt: 2, original: false, lotSize: 1000, seed: 'a1', demands: sampleDemands },
  readingTaken: { type: 'readingTaken', ...at, ordinal: 3, value: 4.762, inputs: { outerMm: 0.9, innerMm: 0.5 }, gauge, sure: true },
  weightsTaken: { type: 'weightsTaken', ...at, fromPiece: 1, values: [9.87, 9.9], outside: 1, gauge, feed: { press: 'PR-2', fromSeq: 501, missing: 3 } },
  driftAnnounced: { type: 'driftAnnounced', ...at, alarm: 1, side: 'above', piece: 1190, mean: 4.772, target: 4.76, limit: 4.81, predicted: { piece: 2340, from: 1900, to: 3100 } },
  driftEnded: { type: 'driftEnded', ...at, alarm: 1, piece: 1480 },
  lookFellDue: { type: 'lookFellDue', ...at, look: 2, by: 'minutes', piece: 730 },
  lookMissed: { type: 'lookMissed', ...at, look: 2, piece: 730, why: 'nextDue' },
  pressRegistered: { type: 'pressRegistered', press: { id: 'PR-2', name: 'Press 2', bench: 'Press 2', balance: 'W-02' } },
  pressChanged: { type: 'pressChanged', press: { id: 'PR-2', name: 'Press 2', bench: 'Press 2', balance: 'W-03' }, reason: 'Balance W-02 is being repaired', count: 2 },
  pressSet: { type: 'pressSet', lot: 'L26-0417', gate: 'press', characteristic: 'weight', afterSeq: 1200 },
  findingRecorded: { type: 'findingRecorded', ...at, code: 'chip', class: 'major', pieces: 2, ordinals: [4, 17] },
  findingWithdrawn: { type: 'findingWithdrawn', ...at, finding: 12, reason: 'counted twice' },
  lookTaken: { type: 'lookTaken', ...at, look: 2, looked: 5, found: 1, code: 'chip' },
  sampleCompleted: { type: 'sampleCompleted', ...at, looked: 80 },
  readingCorrected: { type: 'readingCorrected', ...at, ordinal: 3, from: 47.62, to: 4.762, inputs: { sinteredMm: 12.7 }, reason: 'slipped decimal sign' },
  verdictGiven: { type: 'verdictGiven', gate: 'final', verdict: verdictOfOne },
  verdictRevised: { type: 'verdictRevised', gate: 'final', verdict: verdictOfAll, why: 'slipped decimal sign' },
  held: { type: 'held', hold: 'H1', cause: { by: 'charge', gate: 'final', charge: 'furnace:F26-031' }, reason: 'Sintering' },
  disposed: { type: 'disposed', hold: 'H1', gate: 'final', disposition: { kind: 'regrade', toProduct: 'P-200' }, reason: 'edge too small', signature, regraded: { product, plan: 'ROUTE-A', planVersion: 2 } },
  noteAdded: { type: 'noteAdded', text: 'Tray 3 was dropped' },
  lotOpened: { type: 'lotOpened', lot: 'L26-0417', product, plan: 'ROUTE-A', planVersion: 2, route, batch: 'B26-031', quantity: 1000, trayCapacity: 100, order: 'O-17', press, splitFrom: 'L26-0400', demo: true },
  pressTargetRevised: { type: 'pressTargetRevised', press },
  pressTargetOutdated: { type: 'pressTargetOutdated', press },
  chargeJoined: { type: 'chargeJoined', charge: 'furnace:F26-031', gate: 'sinter', places: ['Level 2', 'Level 3'] },
  gateVerdictInherited: { type: 'gateVerdictInherited', gate: 'sinter', from: 'furnace:F26-031', verdict: verdictOfAll, revised: true },
  gateReopened: { type: 'gateReopened', gate: 'sinter', from: 'furnace:F26-031', disposition: 'concession', statement: 'Density 14.7', hold: 'H1', signature },
  lotSorted: { type: 'lotSorted', gate: 'final', looked: 1000, removed: [{ code: 'chip', pieces: 7 }] },
  piecesDestroyed: { type: 'piecesDestroyed', pieces: 1, gate: 'final', reason: 'cut for porosity' },
  piecesScrapped: { type: 'piecesScrapped', pieces: 4, gate: null, reason: 'dropped' },
  piecesSplitOff: { type: 'piecesSplitOff', into: 'L26-0418', pieces: 200, reason: 'urgent order' },
  lotReleased: { type: 'lotReleased', certificate: 'C-L26-0417-1', quantity: 980, signatures: [signature] },
  releaseWithdrawn: { type: 'releaseWithdrawn', certificate: 'C-L26-0417-1', reason: 'wrong gauge', signature: { ...signature, meaning: 'releaseWithdrawnBy' } },
  lotMovedToPlan: { type: 'lotMovedToPlan', plan: 'ROUTE-A', from: 1, planVersion: 2, route, reason: 'new edge check', signature: { ...signature, meaning: 'movedBy' } },
  boxPacked: { type: 'boxPacked', box: 'L26-0417-001', pieces: 10 },
  labelPrinted: { type: 'labelPrinted', box: 'L26-0417-001', copy: 2, reason: 'torn', payload: 'x' },
  labelRead: { type: 'labelRead', box: 'L26-0417-001', payload: 'x' },
  boxVoided: { type: 'boxVoided', box: 'L26-0417-001', reason: 'wrong count' },
  boxShipped: { type: 'boxShipped', box: 'L26-0417-001', shipment: 'S-9', order: 'O-17', consignee: 'Example purchaser' },
  batchOpened: { type: 'batchOpened', batch: 'B26-031', grade: { id: 'GR10', name: 'Grade 10' }, plan: 'POWDER', planVersion: 1, route, barrels: 12, kgPerBarrel: 50, rawLots: [{ rawLot: 'R-1', material: 'Carbide', kg: 500 }], blendedFrom: [{ batch: 'B26-029', kg: 300 }, { batch: 'B26-030', kg: 300 }], demo: true },
  batchReleased: { type: 'batchReleased', factors: { linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.9, binderPercent: 2 }, signature },
  factorsRevised: { type: 'factorsRevised', from: { linearShrinkagePercent: 18, sinteredDensityGPerCm3: 14.9, binderPercent: 2 }, factors: { linearShrinkagePercent: 18.1, heightShrinkagePercent: 18.8, sinteredDensityGPerCm3: 14.9, binderPercent: 2, weighted: ['binderPercent'] }, retargeted: ['L26-0417'], pressed: ['L26-0411'] },
  batchBlended: { type: 'batchBlended', into: 'B26-033', kg: 300 },
  batchUsed: { type: 'batchUsed', lot: 'L26-0417', kg: 9.881 },
  chargeOpened: { type: 'chargeOpened', charge: 'F26-031', kind: 'furnace', specification: { id: 'GR10', name: 'Grade 10' }, plan: 'FURN', planVersion: 1, route, programme: 'S1', equipment: 'Furnace 2', members: [{ lot: 'L26-0417', pieces: 1000, places: ['Level 2'] }], demo: true },
  furnaceLogAttached: {
    type: 'furnaceLogAttached', attachment: 'ab12', bytes: 41_000, fileName: 'F26-031.csv', rows: 780, startedAt: null, lengthMin: 779, programmeVersion: 2,
    programme: { id: 'S1', name: 'Sintering', rateOverMin: 5, largestGapMin: 5, segments: [{ kind: 'heat', name: 'Heating', toC: 1402, leastRateCPerMin: null, mostRateCPerMin: 10 }] },
    check: { within: false, more: 0, findings: [{ kind: 'tooFast', segment: 'Heating', fromMin: 40, toMin: 52, value: 11.5, limit: 10 }], segments: [{ name: 'Heating', kind: 'heat', fromMin: 0, toMin: 200, minutesWithin: null, leastC: 20, mostC: 1402 }] },
    curve: { atMin: [0, 200], leastC: [20, 1402], mostC: [20, 1402], leastMbar: null, mostMbar: null },
  },
  equipmentDefined: { type: 'equipmentDefined', equipment: { id: 'FURNACE-2', kind: 'furnace', name: 'Furnace 2', levels: [{ name: 'Top', layout: { by: 'grid', rows: 2, columns: 3 } }], testPositions: [{ name: 'Door', level: 1, position: 2 }] } },
  programmeDefined: { type: 'programmeDefined', programme: { id: 'S1', name: 'Sintering', rateOverMin: 5, largestGapMin: 5, segments: [{ kind: 'heat', name: 'Heating', toC: 1402, leastRateCPerMin: null, mostRateCPerMin: 10 }, { kind: 'soak', name: 'Soak', lowerC: 1402, upperC: 1418, leastMin: 57, mostMin: 63, pressure: { lowerMbar: 57_000, upperMbar: 63_000, leastMin: 30 } }] } },
  switchingStarted: { type: 'switchingStarted', product: 'P-100', gate: 'final', characteristic: 'look', class: 'major', rule: 'ISO 2859-1', aqlPercent: 0.65 },
  switchingRuleSet: { type: 'switchingRuleSet', rule: 'MIL-STD-105E', aqlPercent: 0.65 },
  lotCounted: { type: 'lotCounted', event: counting, counts: true, moved },
  lotRecounted: { type: 'lotRecounted', event: counting, moved: null },
  switchingSet: { type: 'switchingSet', steady: true, reducedAllowed: false, reason: 'capability shown', moved: null },
  inspectionResumed: { type: 'inspectionResumed', reason: 'die replaced', signature: { ...signature, meaning: 'resumedBy' } },
  cautionWritten: { type: 'cautionWritten', caution: 'dust', text: 'Dust: see instruction S-14.', shown: true, reason: 'new instruction' },
  tableLoaded: { type: 'tableLoaded', table: { id: 'ISO-2C', name: 'Reduced, our copy', severity: 'reduced', samples: 'single', rows: [] }, reason: 'from the bought standard' },
  skipStarted: { type: 'skipStarted', product: 'P-100', gate: 'final', characteristic: 'look', clearance: 10, oneIn: 4 },
  skipRecounted: { type: 'skipRecounted', lot: 'L26-0417', accepted: false },
  skipCounted: { type: 'skipCounted', lot: 'L26-0417', accepted: true, skipped: true },
  planDrafted: { type: 'planDrafted', planVersion: 2, plan: { id: 'ROUTE-A', name: 'Route A', appliesTo: 'lot', gates: [gate] }, why: 'tighter edge' },
  planApproved: { type: 'planApproved', planVersion: 2, signature: { ...signature, meaning: 'planApprovedBy' }, inForce: true },
  productDefined: { type: 'productDefined', product: { ...product, plan: 'ROUTE-A', sinteredVolumeMm3: 660, thicknessMm: 4.76 } },
  gradeDefined: { type: 'gradeDefined', grade: { id: 'GR10', name: 'Grade 10', composition: [{ component: 'WC', massPercent: 94 }, { component: 'Co', massPercent: 6 }], powderPlan: 'POWDER', furnacePlan: 'FURN' } },
  layerDefined: { type: 'layerDefined', layer: { id: 'LY1', name: 'Layer 1', coatingPlan: 'COAT' } },
  gaugeRegistered: { type: 'gaugeRegistered', gauge: { id: 'M-11', name: 'Micrometer 11', gaugeKind: 'micrometer', unit: 'mm', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 25, calibrationDue: '2026-06-30', bench: null } },
  studyOpened: {
    type: 'studyOpened', study: 'S26-0007', studyKind: 'crossed', gauge: 'M-11', characteristic: 'Thickness', tolerance: 0.1, plausible: { least: 4.5, most: 5 }, parts: [{ label: 'A', reference: null }, { label: 'B', reference: 4.76 }],
    trials: 3, people: [{ badge: 'P-07', name: 'V. Test' }, { badge: 'P-08', name: 'W. Test' }], gaugeThen: { name: 'Micrometer 11', unit: 'mm', resolution: 0.001, least: 0, most: 25 }, seed: 'a1',
  },
  studyReadingTaken: { type: 'studyReadingTaken', reading: 5, part: 2, trial: 1, value: 4.762, sure: true },
  studyReadingCorrected: { type: 'studyReadingCorrected', reading: 5, from: 4.726, to: 4.762, reason: 'digits changed over' },
  studyReadingWithdrawn: { type: 'studyReadingWithdrawn', reading: 5, value: 4.762, reason: 'dirt on the part' },
  studyClosed: {
    type: 'studyClosed', poolAbove: 0.25, confidence: 0.95, signature: { ...signature, meaning: 'studyClosedBy' },
    found: { by: 'crossed', model: 'pooled', repeatabilityS: 0.0011, reproducibilityS: 0.0006, gaugeS: 0.00125, partS: 0.009, percentOfStudy: 13.8, percentOfTolerance: 7.5, categories: 10 },
  },
  studyAbandoned: { type: 'studyAbandoned', reason: 'part B was lost' },
  gaugeUncertaintySet: { type: 'gaugeUncertaintySet', study: 'S26-0007', s: 0.00125, calibrationUncertainty: 0.002, expandedUncertainty: 0.0032, signature: { ...signature, meaning: 'uncertaintySetBy' } },
  gaugeCalibrated: { type: 'gaugeCalibrated', calibrationDue: '2027-06-30', expandedUncertainty: 0.002, certificate: 'K-1' },
  gaugeChecked: { type: 'gaugeChecked', master: 'Gauge block 10 mm', nominal: 10.0002, found: 10.001, allowedError: 0.002, passed: true },
  gaugeLineChanged: { type: 'gaugeLineChanged', line: { number: 2, after: 'A', unit: 'mm', factor: 1 } },
  recallOpened: { type: 'recallOpened', recall: 'M-11-R1', found: 'check', since: '2026-03-04T06:00:00.000Z', error: 0.007, allowedError: 0.002 },
  recallHeld: { type: 'recallHeld', recall: 'M-11-R1', held: [{ subject: 'lot:L26-0417', hold: 'L26-0417-H1' }], reason: 'Micrometer 11', signature: { ...signature, meaning: 'recallHeldBy' } },
  recallClosed: { type: 'recallClosed', recall: 'M-11-R1', reason: 'All measured again', signature: { ...signature, meaning: 'recallClosedBy' } },
  gaugeWithdrawn: { type: 'gaugeWithdrawn', reason: 'dropped' },
  personEnrolled: { type: 'personEnrolled', badge: 'P-07', name: 'V. Test', roles: ['inspector', 'lab'] },
  personChanged: { type: 'personChanged', name: 'V. Test', roles: ['inspector'], active: false, reason: 'left' },
  pinChanged: { type: 'pinChanged', own: true },
  plantOpened: { type: 'plantOpened', plant: { name: 'Invented plant', address: 'Nowhere 1', country: 'SE', demo: true }, keeper: 'P-01' },
  headsSigned: { type: 'headsSigned', digest: 'ab', streams: 40, position: 1200, signature: 'cd' },
  chartDefined: { type: 'chartDefined', key: 'meanAndS', card: { spec: { kind: 'meanAndS' }, rules: ['beyondLimits', 'eightOnOneSide'], mayHold: true, class: null }, about },
  chartPointAdded: { type: 'chartPointAdded', subject: 'lot:L26-0417', judgedAt: '2026-03-05T06:40:00.000Z', value: charted },
  chartPointRevised: { type: 'chartPointRevised', subject: 'lot:L26-0417', value: { by: 'counted', of: 80, count: 2, classes: [{ class: 'major', of: 80, count: 2 }] }, why: 'Slipped decimal sign' },
  chartLimitsFrozen: { type: 'chartLimitsFrozen', key: 'p-major', base: { centre: 0.012, sigma: null }, lots: ['lot:L26-0411', 'lot:L26-0417'], reason: 'Steady since the new wheel', signature: { ...signature, role: 'engineer', meaning: 'limitsFrozenBy' } },
  chartLimitsUnfrozen: { type: 'chartLimitsUnfrozen', key: 'meanAndS', reason: 'Grinding moved to machine 4', signature: { ...signature, role: 'engineer', meaning: 'limitsUnfrozenBy' } },
  chartRestarted: { type: 'chartRestarted', key: 'cusum', reason: 'Wheel dressed' },
  chartWithdrawn: { type: 'chartWithdrawn', key: 'individuals', reason: 'Mean and s serves better' },
  chartSignalled: { type: 'chartSignalled', chart: 'chart:lot/P-100/final/thickness', about, key: 'meanAndS', rule: 'twoOfThreeBeyondTwo', line: 'mean', side: 'above', subject: 'lot:L26-0417', lots: ['lot:L26-0411', 'lot:L26-0417'] },
};
