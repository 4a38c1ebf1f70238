import { chartOwner, chartParts } from '../../shared/traveller/index.ts';
import type { Subject } from '../../shared/traveller/index.ts';

/** Address of a characteristic's charts. */
export function chartAddress(parts: { readonly subjectKind: string; readonly owner: string; readonly gate: string; readonly characteristic: string }): string {
  return ['/charts', ...[parts.subjectKind, parts.owner, parts.gate, parts.characteristic].map(encodeURIComponent)].join('/');
}

/** Address of the charts of a stream; null where it is no chart's. */
export function chartAddressOf(stream: string): string | null {
  const parts = chartParts(stream);
  return parts === null ? null : chartAddress(parts);
}

/** Address of the charts that a verdict on this subject belongs to. */
export function chartAddressAt(subject: Subject, gate: string, characteristic: string): string {
  return chartAddress({ subjectKind: subject.kind, owner: chartOwner(subject).id, gate, characteristic });
}
