import type { ChargeSlip, CommonSlip, EquipmentSlip, FailedPosition, GateSlip, LogCheck, LogFinding, LogFindingKind, ProgrammeSegment, ProgrammeSlip } from '../traveller/index.ts';
import { cellName, positionsOf } from '../traveller/index.ts';
import type { Said } from './said.ts';
import { piecesText } from './speak.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

const demoLine = (demo: boolean): readonly string[] => (demo ? ['Invented demo data.'] : []);

/** What charges tell besides their gates. */
export const chargeSlipWords: WordsFor<Exclude<ChargeSlip, GateSlip | CommonSlip>, 'type', Said, [Speak]> = {
  chargeOpened: ({ charge, kind, specification, plan, planVersion, programme, equipment, map, members, demo }, speak) => ({
    sentence: `${kind === 'furnace' ? 'Furnace' : 'Coating'} charge ${charge} opened: ${specification.name}, ${speak.labels.lots(members.length, speak.format.count(members.length))}`,
    lines: [
      `Programme ${programme}, equipment ${equipment}, plan ${plan} version ${speak.format.count(planVersion)}`,
      ...(map === undefined ? [] : [`Placed on the map of ${map.equipment}`]),
      ...members.map(({ lot, pieces, places, again }) => `Lot ${lot}: ${piecesText(speak, pieces)}${places.length === 0 ? '' : ` at ${speak.format.list(places)}`}${again === undefined ? '' : ` (${speak.labels.reprocessed[again]})`}`),
      ...demoLine(demo),
    ],
  }),
  furnaceLogAttached: ({ fileName, rows, lengthMin, startedAt, programme, programmeVersion, check, attachment }, speak) => ({
    sentence: `Furnace log ${fileName} attached: ${logVerdict(check, speak)}`,
    lines: [
      `${speak.format.count(rows)} rows over ${speak.format.number(lengthMin, 0)} min${startedAt === null ? '' : ` from ${startedAt}`}, held against programme ${programme.id} version ${speak.format.count(programmeVersion)}`,
      ...logLines(check, speak), `File SHA-256 ${attachment}`,
    ],
  }),
};

/** What equipment and furnace programmes tell. */
export const furnaceRecordSlipWords: WordsFor<EquipmentSlip | ProgrammeSlip, 'type', Said, [Speak]> = {
  equipmentDefined: ({ equipment: { id, name, levels, testPositions } }, { format }) => ({
    sentence: `Equipment ${id} on record: ${name}`,
    lines: [`Levels from the top: ${levels.map((level) => `${level.name} (${format.count(positionsOf(level))})`).join(', ')}`, ...(testPositions.length === 0 ? [] : [`Test positions: ${testPositions.map((test) => `${test.name} at ${cellName({ levels }, test)}`).join(', ')}`])],
  }),
  programmeDefined: ({ programme: { id, name, segments } }, speak) => ({ sentence: `Furnace programme ${id} on record: ${name}`, lines: segments.map((segment) => segmentSentence(segment, speak)) }),
};

/** "Sintering: 1,402 … 1,418 °C for 57 … 63 min". */
export function segmentSentence(segment: ProgrammeSegment, { format, labels }: Speak): string {
  const written = (value: number | null): string | null => (value === null ? null : format.number(value));
  if (segment.kind !== 'soak') {
    const { leastRateCPerMin: least, mostRateCPerMin: most } = segment;
    return `${segment.name}: ${segment.kind === 'heat' ? 'up' : 'down'} to ${format.number(segment.toC)} °C${least === null && most === null ? '' : `, ${labels.between(written(least), written(most))} °C/min`}`;
  }
  const { pressure } = segment;
  return `${segment.name}: ${format.number(segment.lowerC)} … ${format.number(segment.upperC)} °C for ${labels.between(written(segment.leastMin), written(segment.mostMin))} min${pressure === null ? '' : `, at ${format.number(pressure.lowerMbar)} … ${format.number(pressure.upperMbar)} mbar for ${labels.between(written(pressure.leastMin), null)} min`}`;
}

/** "within every limit" or how much lies outside. */
export function logVerdict({ within, findings, more }: LogCheck, { format }: Speak): string {
  const count = findings.length + more;
  return within ? 'within the programme’s limits' : `${count === 1 ? 'one thing' : `${format.count(count)} things`} outside the programme’s limits`;
}
/** One line for each finding kept, and how many more there are. */
export function logLines({ findings, more }: LogCheck, speak: Speak): readonly string[] {
  return [...findings.map((finding) => findingSentence(finding, speak)), ...(more > 0 ? [`and ${speak.format.count(more)} more`] : [])];
}

interface Told { readonly value: string; readonly limit: string; readonly lasted: string }
const findingWords: Readonly<Record<LogFindingKind, (told: Told) => string>> = {
  tooHot: ({ value, limit, lasted }) => `up to ${value} °C, at most ${limit} °C, for ${lasted}`, tooCold: ({ value, limit, lasted }) => `down to ${value} °C, at least ${limit} °C, for ${lasted}`,
  tooFast: ({ value, limit, lasted }) => `${value} °C/min, at most ${limit} °C/min, for ${lasted}`, tooSlow: ({ value, limit, lasted }) => `${value} °C/min, at least ${limit} °C/min, for ${lasted}`,
  soakShort: ({ value, limit }) => `${value} min within its window, at least ${limit} min`, soakLong: ({ value, limit }) => `${value} min within its window, at most ${limit} min`,
  pressureHigh: ({ value, limit, lasted }) => `up to ${value} mbar, at most ${limit} mbar, for ${lasted}`, pressureLow: ({ value, limit, lasted }) => `down to ${value} mbar, at least ${limit} mbar, for ${lasted}`,
  pressureShort: ({ value, limit }) => `${value} min at pressure, at least ${limit} min`, pressureMissing: () => 'no pressure is recorded',
  notReached: ({ value, limit }) => `came to ${value} °C only, ${limit} °C wanted`, startsLate: ({ value, limit }) => `the log begins at ${value} °C, past this ramp to ${limit} °C`,
  gap: ({ value, limit }) => `no row for ${value} min, at most ${limit} min`, backwards: ({ value }) => `time runs back, by ${value} min at most`,
  repeated: ({ value }) => `rows written twice: ${value} (harmless)`, contradicting: ({ value }) => `two values at one moment: ${value} rows`,
};
/** "Sintering, minute 320 to 335: up to 1,426 °C, at most 1,418 °C, for 15 min". */
export function findingSentence({ kind, segment, fromMin, toMin, value, limit }: LogFinding, { format }: Speak): string {
  const said = findingWords[kind]({ value: format.number(value), limit: limit === null ? '' : format.number(limit), lasted: `${format.number(Math.round((toMin - fromMin) * 10) / 10)} min` });
  const at = fromMin === toMin ? `minute ${format.number(fromMin)}` : `minute ${format.number(fromMin)} to ${format.number(toMin)}`;
  return `${segment === null ? '' : `${segment}, `}${segment === null ? at.replace('minute', 'Minute') : at}: ${said}`;
}

/** "Test piece at Top failed (Hardness). Near it: L26-0922 (in the same cell), L26-0923 (straight below)". */
export function failedPositionSentence({ position, characteristics, near, mapped }: FailedPosition, { format, labels }: Speak): string {
  const lots = near.map(({ lot, how }) => `${lot} (${mapped ? labels.nearness[how] : 'placed there by name'})`);
  const tail = near.length > 0 ? `Near it: ${format.list(lots)}.` : mapped ? 'No lot lay near it.' : 'The charge has no map, and no lot names this place.';
  return `The test piece at ${position} failed (${format.list(characteristics)}). ${tail}`;
}
/** Where a lot lay to the failed positions of its charge. */
export function nearSentence(near: readonly { readonly position: string; readonly how: keyof Speak['labels']['nearness'] }[], { format, labels }: Speak): string {
  return near.length === 0 ? 'The lot lay near no failed position.' : `The lot lay near a failed position: ${format.list(near.map(({ position, how }) => `${position} (${labels.nearness[how]})`))}.`;
}
