import type { Characteristic, GateRecord, Subject } from '../traveller/index.ts';
import { streamParts } from '../traveller/index.ts';
import type { Format } from './format.ts';
import type { Labels } from './labels.ts';
import { labelOf } from './words-for.ts';

/** What a reader knows beside a slip: people's names by badge, and the subject whose traveller is read. Both may be missing. */
export interface Reader {
  readonly names?: Readonly<Record<string, string>>;
  readonly subject?: Subject | null;
}
/** All that a saying may lean on. */
export interface Speak extends Reader {
  readonly format: Format;
  readonly labels: Labels;
}

/** A person's name; the badge where the name is not known. */
export function personName({ names }: Reader, badge: string): string {
  return names === undefined ? badge : labelOf(names, badge);
}

function gateOf({ subject }: Reader, gate: string): GateRecord | undefined {
  return subject?.gates.find(({ id }) => id === gate);
}
/** A gate's name; its id where the subject is not at hand. */
export function gateName(reader: Reader, gate: string): string {
  return gateOf(reader, gate)?.name ?? gate;
}
/** A characteristic as it was asked for at the open gate, or as planned; null where neither is at hand. */
export function characteristicAt(reader: Reader, gate: string, id: string): Characteristic | null {
  const record = gateOf(reader, gate);
  return record?.work.find(({ demand }) => demand.characteristic.id === id)?.demand.characteristic ?? record?.plan?.characteristics.find((each) => each.id === id) ?? null;
}
/** The name of a characteristic; its key where it is not known. */
export function characteristicName(reader: Reader, gate: string, id: string): string {
  return characteristicAt(reader, gate, id)?.name ?? id;
}
/** The name of a kind of nonconformity; its code where it is not known. */
export function findingName(reader: Reader, gate: string, characteristic: string, code: string): string {
  const counted = characteristicAt(reader, gate, characteristic);
  return (counted?.kind === 'counted' ? counted.kinds.find((kind) => kind.code === code)?.name : undefined) ?? code;
}
/** A value as it is read out: with its decimals and unit, as yes or no, or as the rating it is. */
export function valueText({ format, labels }: Speak, characteristic: Characteristic | null, value: number | string | boolean): string {
  switch (typeof value) {
    case 'boolean': return value ? labels.yes : labels.no;
    case 'string': return value;
    default: return characteristic?.kind === 'measured' ? `${format.number(value, characteristic.decimals)} ${characteristic.unit}` : format.number(value);
  }
}
/** "furnace charge F26-031" for the stream `furnace:F26-031`. */
export function streamText({ labels }: Pick<Speak, 'labels'>, stream: string): string {
  const parts = streamParts(stream);
  return parts === null ? stream : `${labels.streamKinds[parts.kind]} ${parts.id}`;
}
/** "1,200 pieces". */
export function piecesText({ format, labels }: Pick<Speak, 'format' | 'labels'>, pieces: number): string {
  return labels.pieces(pieces, format.count(pieces));
}
