import type { Characteristic } from '../traveller/index.ts';

/** What writing a plan says: its forms, its list of changes, its faults. */
export const planWritingWords = {
  title: (plan: string, version: string | null) => (version === null ? `New plan: ${plan}` : `New version of ${plan}, from version ${version}`),
  kept: 'What you write is kept on this kiosk, for you, until you draft it or throw it away.',
  fromOld: (from: string, latest: string) => `This was begun from version ${from}; version ${latest} has come since. What you draft starts from ${from}.`,
  outline: 'Gates and characteristics', planItself: 'The plan itself', faultHere: 'to be put right',
  addGate: 'Add a gate', newGate: 'Name of the new gate', addCharacteristic: 'Add a characteristic', newCharacteristic: 'Name of the new characteristic', newKind: 'What kind it is',
  up: 'Earlier', down: 'Later', remove: 'Take it out', addKind: 'Add a kind',
  undo: 'Undo the last change', discard: 'Throw this draft away', discardHeading: 'Throw the draft away?', discardText: 'Everything written since the last version is lost. Versions already drafted stay.', discardDo: 'Throw it away',
  changed: (count: string) => (count === '1' ? '1 change' : `${count} changes`), nothing: 'Nothing was changed yet.', review: 'Review and draft', back: 'Go on writing',
  reviewTitle: (count: string, version: string | null) => (version === null ? 'What the new plan says' : count === '1' ? `One change against version ${version}` : `${count} changes against version ${version}`),
  why: 'Why it is changed', whyHint: 'Stands in the plan’s history, beside your name.', whyMissing: 'Say why.', save: 'Draft this version',
  next: 'It comes into force when two engineers have signed it. Lots already open stay on the version they began with.',
  unsound: 'Put these right first', unsoundAt: (where: string, why: string) => `${where}: ${why}`,
  none: '–', itself: 'the plan',
  change: { added: 'new', removed: 'taken out', moved: 'moved', changed: 'changed', place: (at: string) => `place ${at}`, rule: 'Sampling rule' },
  newPlan: {
    start: 'Write a new plan', title: 'A new plan', id: 'Number', idHint: 'Letters, digits, dot and dash; it stays for good.', name: 'Name', appliesTo: 'For', from: 'Begin with', empty: 'no gate yet',
    taken: 'There is such a plan already.', wrongId: '1 to 64 letters, digits, dots and dashes, first a letter or digit.', begin: 'Begin writing', chosenTwice: 'There is a draft of this plan on this kiosk already.',
  },
  drafts: { title: 'Begun here and not yet drafted', open: (plan: string, version: string | null) => (version === null ? `${plan}, a new plan` : `${plan}, from version ${version}`), at: (at: string) => `last written ${at}` },
  sections: { what: 'What is inspected', limits: { measured: 'Limits and entry', counted: 'What may be found', graded: 'Ratings', confirmed: 'What is confirmed' } satisfies Record<Characteristic['kind'], string>, rule: 'How it is sampled' },
  atSize: {
    caption: (pieces: string) => `What a lot of ${pieces} asks for under this rule`, lotSize: 'Lot size to try', wrong: 'A whole number from 2 to 999,999,999.', compare: 'Compare the risks',
  },
  gate: {
    name: 'Name', bench: 'Bench', benchHint: 'As people sign on there.', workedOn: 'Worked on', workedOnHint: 'On a batch or charge its own plan has the characteristics, and its verdict stands for the lot.',
    roles: 'Who may work it', cautions: 'Cautions shown before work; the site’s own rules hold', planName: 'Name of the plan', noCharacteristics: (kind: string) => `The ${kind}’s own plan has the characteristics of this gate.`, inPlace: (at: string, of: string) => `Gate ${at} of ${of}`,
  },
  characteristic: {
    name: 'Name', method: 'Method or instrument', methodHint: 'With the standard’s number where there is one.', pieces: 'Pieces inspected', usedUp: 'are used up', kept: 'go on',
    rule: 'Sampling rule',
    rules: {
      attributes: 'By AQL', limitingQuality: 'Limiting quality', zeroAcceptance: 'Zero acceptance', twoPoint: 'Two risk points', sequential: 'Sequential', interval: 'At intervals',
      variables: 'By variables', fixed: 'Fixed number', barrels: 'From barrels', positions: 'At charge positions', everyPiece: 'Every piece', once: 'Once',
    } satisfies Record<Characteristic['sampling']['rule'], string>,
    unit: 'Unit', decimals: 'Decimals', lower: 'Lower limit', target: 'Target', upper: 'Upper limit', pressTolerance: 'Press tolerance', pressToleranceHint: 'Where it is given, the limits follow from the powder.',
    plausibleLeast: 'Questioned below', plausibleMost: 'Questioned above', plausibleHint: 'Values outside are questioned before they are taken.', gaugeKind: 'Kind of gauge', gaugeKindHint: 'Empty: any.',
    decisionRule: 'Decision rule', decisionRules: { simple: 'simple acceptance', guardedAcceptance: 'guarded acceptance', guardedRejection: 'guarded rejection' }, guardFactor: 'Guard band', guardFactorHint: 'Times the gauge’s U; empty: 1. For 95 % by ISO 14253-1:2017 and a wide tolerance: 0.825.', entry: 'How the value comes', entries: { direct: 'as read', crater: 'from crater diameters', craterLayer: 'a layer of a crater', shrinkage: 'from piece and die', archimedes: 'weighed in air and water', saturation: 'saturation, as percent' },
    layers: 'Layers in one crater', layersHint: 'Empty: the whole coating from two diameters', layerOf: 'Key of the crater’s characteristic', layer: 'Layer, counted from the surface', saturationUnit: 'Unit of the bench', cobalt: 'Cobalt of the grade', warnLow: 'Warned of below', warnHigh: 'Warned of above',
    reference: 'Pictures beside the ratings', references: { none: 'none', adhesion: 'adhesion, classes 0 to 3', porosityA: 'A pores', porosityB: 'B pores', porosityC: 'free carbon' },
    ball: 'Ball', die: 'Die or green size', greenRead: 'Green size', greenReadYes: 'read at each piece', greenReadNo: 'that of the die', limitsFrom: 'Limits from the powder', limitsFromNames: { '': 'as stated here, or the weight ± a percentage', pressWeight: 'about the press weight', greenHeight: 'about the green height' }, factor: 'Given to pressing', noFactor: 'nothing', scale: 'Ratings, from best to worst', scaleHint: 'One a line.', worstAccepted: 'Worst accepted', statement: 'Statement', statementHint: 'What somebody signs for with yes.', backedBy: 'A yes rests on', byLog: 'the furnace log attached', byWord: 'the person’s word',
    kindCode: 'Code', kindName: 'Name', kindClass: 'Class', newKind: 'New kind',
  },
  rule: {
    samples: 'Samples', samplesOf: { single: 'single', double: 'double', multiple: 'multiple' }, level: 'Inspection level',
    levels: { 'S-1': 'S-1, special, smallest', 'S-2': 'S-2, special', 'S-3': 'S-3, special', 'S-4': 'S-4, special', I: 'I, general, smaller', II: 'II, general, usual', III: 'III, general, larger' },
    variablesLevel: (level: string) => (level === 'IV' ? 'IV, usual' : level), aqlClass: (findingClass: string) => `AQL ${findingClass}`, aql: 'AQL', aqlLower: 'AQL, lower limit', aqlUpper: 'AQL, upper limit', notCounted: 'not counted',
    counts: 'What is counted', countsOf: { nonconforming: 'pieces', nonconformities: 'per 100 pieces' }, switching: 'Switching rules', skipLot: 'Skip-lot', skipLotYes: 'good runs are passed over', skipLotNo: 'every lot',
    clearance: 'Accepted in a row first', oneIn: 'Then one lot in', lots: 'lots', pieces: 'pieces', ownTable: (severity: string) => `Table on ${severity}`, heldTable: 'the one held here',
    lqClass: (findingClass: string) => `Limiting quality ${findingClass}`, emptyClass: 'Empty: not counted.', consumerRisk: 'Consumer’s risk', producerRisk: 'Producer’s risk', p1: 'Good quality p1', p2: 'Bad quality p2',
    classJudged: (findingClass: string) => `Class ${findingClass}`, judged: 'judged', basis: 'Where the plan comes from', basisOf: { table: 'table, by AQL', points: 'two risk points' },
    separate: 'Two limits', separateYes: 'each with its AQL', separateNo: 'together', sigma: 'Known σ', sigmaHint: 'Empty: s-method, from the sample.', form: 'Judged by', formOf: { unsaid: 'as the limits ask', k: 'distance k', M: 'percent M' },
    n: 'Pieces', accept: 'Within the limits', acceptOf: { each: 'each', mean: 'their mean' }, barrels: 'Barrels drawn', each: 'From each', positions: 'Positions', onePerLine: 'One a line.', ejectAtMost: 'Ejected at most', everyPieces: 'A look after every', everyMinutes: 'Or after so long, at the latest', graceMinutes: 'Missed when not taken within', graceHint: 'Empty: under a press’s feed when the next falls due.', driftLambda: 'Weight λ of the newest piece in the running average', driftHolds: 'A drift', driftHoldsOf: { yes: 'Holds the lot', no: 'Is told only' }, looked: 'Looked at each time',
  },
  wrong: {
    missing: 'This must be filled in.', line: 'One printed line.', number: 'A number.', whole: (least: string, most: string) => `A whole number, ${least} to ${most}.`, least: (value: string) => `${value} or more.`, above: (value: string) => `More than ${value}.`,
    most: (value: string) => `${value} at most.`, below: (value: string) => `Less than ${value}.`, long: (line: string, most: string) => `“${line}” is longer than ${most} letters.`,
  },
};
export type PlanWritingWords = typeof planWritingWords;
