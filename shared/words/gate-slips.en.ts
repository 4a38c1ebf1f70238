import type { CommonSlip, Disposition, GaugeUsed, GateSlip, Hold, ReadingInputs, Signature, SomeMembers, Verdict } from '../traveller/index.ts';
import { signalSaid } from './chart-signal.en.ts';
import { failedPositionSentence, nearSentence } from './charge-slips.en.ts';
import { demandSentence } from './demands.en.ts';
import { verdictLines, verdictSentence } from './results.en.ts';
import type { Said } from './said.ts';
import { characteristicAt, characteristicName, findingName, gateName, personName, piecesText, streamText, valueText } from './speak.ts';
import type { Speak } from './speak.ts';
import { say } from './words-for.ts';
import type { WordsFor } from './words-for.ts';

/** Work at a gate, holds and notes, as people read them on the traveller. */
export const gateSlipWords: WordsFor<GateSlip | CommonSlip, 'type', Said, [Speak]> = {
  gateOpened: ({ gate, attempt, original, demands, seed, cautions }, speak) => {
    const again = attempt > 1 ? `, attempt ${speak.format.count(attempt)}` : '';
    const lines = demands.map((demand) => `${demand.characteristic.name}: ${demandSentence(demand, speak)}`);
    const drawn = demands.some(({ places }) => places.some(({ at }) => at !== 'position')) ? [`Drawn at random from seed ${seed}`] : [];
    const plants = (cautions ?? []).filter(({ cautionVersion }) => cautionVersion > 0).map(({ caution, cautionVersion }) => `Caution ${caution} shown in the plant’s words, version ${speak.format.count(cautionVersion)}`);
    return { sentence: `${gate.name} opened${again}`, lines: [...lines, ...plants, ...(original ? [] : ['Re-inspection: it does not count for switching.']), ...drawn] };
  },
  readingTaken: (slip, speak) => {
    const characteristic = characteristicAt(speak, slip.gate, slip.characteristic);
    const lines = [...inputLines(slip.inputs, speak), ...gaugeLines(slip.gauge, speak), ...takenLines(slip.takenAt, speak), ...(slip.sure === true ? ['An unlikely value; confirmed as read.'] : []), ...(slip.log === undefined ? [] : [slip.log.within ? 'The furnace log attached lies within its programme’s limits.' : `The furnace log attached shows ${speak.format.count(slip.log.findings)} outside its programme’s limits.`]), ...(slip.despite === undefined ? [] : [`In spite of the log: ${slip.despite}`])];
    const ordinal = characteristic?.kind === 'confirmed' ? '' : `, ${speak.format.count(slip.ordinal)}`;
    return { sentence: `${characteristic?.name ?? slip.characteristic}${ordinal}: ${valueText(speak, characteristic, slip.value)}`, lines };
  },
  weightsTaken: ({ gate, characteristic, fromPiece, values, outside, gauge, takenAt, feed }, speak) => {
    const { format } = speak;
    const to = fromPiece + values.length - 1;
    const seen = outside === 0 ? 'all within the limits' : `${format.count(outside)} outside the limits, ejected`;
    return { sentence: `${characteristicName(speak, gate, characteristic)}, pieces ${format.count(fromPiece)} to ${format.count(to)}: ${seen}`, lines: [...gaugeLines(gauge, speak), ...feedLines(feed, values.length, speak), ...takenLines(takenAt, speak)] };
  },
  driftAnnounced: (slip, speak) => {
    const measured = characteristicAt(speak, slip.gate, slip.characteristic);
    const [decimals, unit] = measured?.kind === 'measured' ? [measured.decimals, ` ${measured.unit}`] : [3, ''];
    const value = (it: number): string => `${speak.format.number(it, decimals)}${unit}`;
    return {
      sentence: `Drift: ${measured?.name ?? slip.characteristic} runs ${slip.side} the target since piece ${speak.format.count(slip.piece)}. ${crossingText(slip.predicted, slip.limit === null ? null : value(slip.limit), speak)}`,
      lines: [`Running mean ${value(slip.mean)}, target ${value(slip.target)}`],
    };
  },
  driftEnded: ({ gate, characteristic, piece }, speak) => ({ sentence: `Drift ended: ${characteristicName(speak, gate, characteristic)} is back near the target at piece ${speak.format.count(piece)}`, lines: [] }),
  lookFellDue: ({ look, by, piece }, { format }) => ({ sentence: `Look ${format.count(look)} is due: ${by === 'pieces' ? `piece ${format.count(piece)} is made` : `its time has come, at piece ${format.count(piece)}`}`, lines: [] }),
  lookMissed: ({ look, piece, why }, { format }) => ({ sentence: `Look ${format.count(look)} was missed: due at piece ${format.count(piece)}, ${why === 'nextDue' ? 'not taken before the next fell due' : 'not taken in the time the plan gives'}`, lines: [] }),
  findingRecorded: ({ gate, characteristic, code, class: each, pieces, ordinals }, speak) => ({
    sentence: `Found: ${findingName(speak, gate, characteristic, code)} (${speak.labels.findingClasses[each]}), ${piecesText(speak, pieces)}`,
    lines: ordinals === undefined ? [] : [`In the sample: ${speak.format.list(ordinals.map((ordinal) => speak.format.count(ordinal)))}`],
  }),
  findingWithdrawn: ({ finding, reason }, { format }) => ({ sentence: `Finding of slip ${format.count(finding)} withdrawn: ${reason}`, lines: [] }),
  lookTaken: ({ gate, characteristic, look, looked, found, code }, speak) => ({
    sentence: `Look ${speak.format.count(look)}: ${speak.format.count(found)} found in ${speak.format.count(looked)}${code === null ? '' : ` (${findingName(speak, gate, characteristic, code)})`}`, lines: [],
  }),
  sampleCompleted: ({ gate, characteristic, looked, goesOn }, speak) => ({
    sentence: `${characteristicName(speak, gate, characteristic)}: ${goesOn === true ? `${speak.format.count(looked)} looked at, not decided: more pieces are asked for` : `all ${speak.format.count(looked)} looked at`}`, lines: [],
  }),
  readingCorrected: ({ gate, characteristic: id, ordinal, from, to, inputs, reason }, speak) => {
    const characteristic = characteristicAt(speak, gate, id);
    return {
      sentence: `${characteristic?.name ?? id}, ${speak.format.count(ordinal)} corrected from ${valueText(speak, characteristic, from)} to ${valueText(speak, characteristic, to)}: ${reason}`,
      lines: inputLines(inputs, speak),
    };
  },
  verdictGiven: ({ verdict }, speak) => ({ sentence: verdictSentence(verdict, speak), lines: [...verdictLines(verdict, speak), ...failedLines(verdict, speak), ...workerLines(verdict.workers, speak)] }),
  verdictRevised: ({ verdict, why }, speak) => ({
    sentence: `After a correction (${why}): ${verdictSentence(verdict, speak)}`, lines: [...verdictLines(verdict, speak), ...failedLines(verdict, speak), ...workerLines(verdict.workers, speak)],
  }),
  held: ({ hold, cause, reason }, speak) => ({ sentence: `On hold (${hold}): ${reason}`, lines: [causeSentence(cause, speak), ...(cause.by === 'charge' && cause.near !== undefined ? [nearSentence(cause.near, speak)] : [])] }),
  disposed: ({ hold, gate, disposition, reason, signature, regraded }, speak) => ({
    sentence: `Hold ${hold}${gate === null ? '' : ` at ${gateName(speak, gate)}`}: ${dispositionSentence(disposition)}`,
    lines: [`Reason: ${reason}`, ...(regraded === undefined ? [] : [`Now ${regraded.product.designation}, plan ${regraded.plan} version ${speak.format.count(regraded.planVersion)}`]), signatureSentence(signature, speak)],
  }),
  noteAdded: ({ text }) => ({ sentence: `Note: ${text}`, lines: [] }),
  chartSignalled: (signal, speak) => signalSaid(signal, speak),
};

function feedLines(feed: Extract<GateSlip, { type: 'weightsTaken' }>['feed'], count: number, { format }: Speak): readonly string[] {
  if (feed === undefined) return [];
  return [`Sent by press ${feed.press}, numbers ${format.count(feed.fromSeq)} to ${format.count(feed.fromSeq + count - 1)} of its balance`, ...(feed.missing === 0 ? [] : [`${format.count(feed.missing)} weights before these never came`])];
}

/** Where a drift leads, in one sentence. @param limit written with its unit; null where there is none on that side */
export function crossingText(predicted: Extract<GateSlip, { type: 'driftAnnounced' }>['predicted'], limit: string | null, { format }: Pick<Speak, 'format'>): string {
  if (limit === null) return 'There is no limit on that side.';
  if (predicted === null) return `When it comes to the limit ${limit} cannot be told yet.`;
  const { piece, from, to } = predicted;
  if (from === to) return `Some pieces already lie near the limit ${limit}.`;
  return `First pieces outside ${limit} expected at about piece ${format.count(piece)} (${to === null ? `not before ${format.count(from)}` : `${format.count(from)} to ${format.count(to)}`}).`;
}

function failedLines({ failedPositions = [] }: Verdict, speak: Speak): readonly string[] {
  return failedPositions.map((failed) => failedPositionSentence(failed, speak));
}

function inputLines(inputs: ReadingInputs | undefined, { format }: Speak): readonly string[] {
  if (inputs === undefined) return [];
  if ('outerMm' in inputs) return [`Crater read: outer ${format.number(inputs.outerMm)} mm, inner ${format.number(inputs.innerMm)} mm`];
  if ('diametersMm' in inputs) return [`Crater read from the surface to the substrate: ${inputs.diametersMm.map((each) => format.number(each)).join(' · ')} mm`];
  if ('massInAirG' in inputs) return [`Weighed: ${format.number(inputs.massInAirG)} g in air, ${format.number(inputs.massInWaterG)} g in water of ${format.number(inputs.waterTemperatureC)} °C`];
  if ('saturation' in inputs) return [`Saturation read: ${format.number(inputs.saturation)} ${inputs.unit}`];
  return [`${inputs.greenMm === undefined ? '' : `Green size read: ${format.number(inputs.greenMm)} mm. `}Sintered length read: ${format.number(inputs.sinteredMm)} mm`];
}

/** Where the entry waited at the bench for the network: when it was made there. */
function takenLines(takenAt: string | undefined, { format }: Speak): readonly string[] {
  return takenAt === undefined ? [] : [`Read ${format.dateTime(takenAt)}; it waited at the bench for the network`];
}

function gaugeLines(gauge: GaugeUsed | undefined, { format, labels }: Speak): readonly string[] {
  return gauge === undefined ? [] : [`Gauge ${gauge.id}, ${labels.uncertainty(format.number(gauge.expandedUncertainty), gauge.coverageFactor)}, calibrated until ${format.date(gauge.calibrationDue)}`];
}

function workerLines(workers: readonly string[], speak: Speak): readonly string[] {
  return workers.length === 0 ? [] : [`Worked by ${speak.format.list(workers.map((badge) => personName(speak, badge)))}`];
}

const causeWords: WordsFor<Hold['cause'], 'by', string, [Speak]> = {
  verdict: ({ gate }, speak) => `Held by the verdict at ${gateName(speak, gate)}.`,
  charge: ({ gate, charge }, speak) => `Held at ${gateName(speak, gate)} by the verdict of ${streamText(speak, charge)}.`,
  recall: ({ gauge, recall }) => `Held for recall ${recall}: gauge ${gauge} was found out of tolerance.`,
  drift: ({ gate, characteristic }, speak) => `Held at ${gateName(speak, gate)} because ${characteristicName(speak, gate, characteristic)} drifts.`,
  chart: ({ gate }, speak) => `Held by a control chart that signalled at ${gateName(speak, gate)}.`,
  person: () => 'Held by a person’s decision.',
};
/** Why a subject stands still. */
export function causeSentence(cause: Hold['cause'], speak: Speak): string {
  return say<Hold['cause'], 'by', string, [Speak], Hold['cause']['by']>(causeWords, cause.by, cause, speak);
}

const dispositionWords: WordsFor<Disposition, 'kind', string> = {
  sort: () => 'sort every piece, then inspect again',
  rework: ({ instruction }) => `rework, then inspect again: ${instruction}`,
  retest: () => 'test again on a new sample',
  reSinter: ({ some }) => `sinter again${someSentence(some)}`,
  recoat: ({ some }) => `coat again${someSentence(some)}`,
  concession: ({ statement }) => `accepted on concession: ${statement}`,
  regrade: ({ toProduct }) => `regrade to product ${toProduct}`,
  scrap: () => 'scrap all that is left',
  return: ({ to }) => `return to ${to}`,
  clear: () => 'cleared, the ground for it is gone',
};
/** Which members of a charge are done again, and what becomes of the others. */
function someSentence(some: SomeMembers | undefined): string {
  if (some === undefined) return '';
  return `: ${some.lots.join(', ')}; the others ${some.rest.by === 'retest' ? 'are tested again' : `accepted on concession: ${some.rest.statement}`}`;
}
/** What was decided about a hold. */
export function dispositionSentence(disposition: Disposition): string {
  return say<Disposition, 'kind', string, [], Disposition['kind']>(dispositionWords, disposition.kind, disposition);
}

/** "Released by M. Sandoval (P-07), Releaser, 5 Mar 2026, 06:40". */
export function signatureSentence({ badge, name, role, at, meaning }: Signature, { format, labels }: Speak): string {
  return `${labels.signatureMeanings[meaning]} ${name} (${badge}), ${labels.roles[role]}, ${format.dateTime(at)}`;
}
