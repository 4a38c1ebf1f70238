/** Kinds of stream; the part of a stream's name before the colon. */
export const STREAM_KINDS = ['lot', 'batch', 'furnace', 'coating', 'switching', 'skip', 'table', 'caution', 'chart', 'plan', 'product', 'grade', 'layer', 'equipment', 'programme', 'gauge', 'study', 'press', 'person', 'plant'] as const;
export type StreamKind = (typeof STREAM_KINDS)[number];

/** The subjects that have a traveller people read. */
export const SUBJECT_KINDS = ['lot', 'batch', 'furnace', 'coating'] as const;
export type SubjectKind = (typeof SUBJECT_KINDS)[number];

/** Name of a stream: kind, colon, the subject's own number, e.g. `lot:L26-0417`. */
export function streamName(kind: StreamKind, id: string): string {
  return `${kind}:${id}`;
}

/** Takes a stream's name apart; null where it is not one of ours. */
export function streamParts(stream: string): { readonly kind: StreamKind; readonly id: string } | null {
  const colon = stream.indexOf(':');
  const kind = STREAM_KINDS.find((known) => known === stream.slice(0, colon));
  return kind === undefined || colon === stream.length - 1 ? null : { kind, id: stream.slice(colon + 1) };
}

/** True for a stream that has a traveller. */
export function isSubject(stream: string): boolean {
  const kind = streamParts(stream)?.kind;
  return SUBJECT_KINDS.some((known) => known === kind);
}

/** Stream of the count of lots that may be passed over, for one product, gate and characteristic. */
export function skipStream(product: string, gate: string, characteristic: string): string {
  return streamName('skip', [product, gate, characteristic].join('/'));
}

/** Stream of the switching state of one product, gate, characteristic and class (or the characteristic as a whole). */
export function switchingStream(product: string, gate: string, characteristic: string, findingClass: string | null): string {
  return streamName('switching', [product, gate, characteristic, ...(findingClass === null ? [] : [findingClass])].join('/'));
}
