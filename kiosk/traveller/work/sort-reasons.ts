import type { FindingClass, GateRecord } from '../../../shared/traveller/index.ts';

/** For what a piece is taken out in a sort: each kind of nonconformity the gate knows, and each measured characteristic out of its limits. */
export function sortReasons(gate: GateRecord): readonly { readonly code: string; readonly name: string; readonly rank: FindingClass }[] {
  const characteristics = gate.plan?.characteristics ?? [];
  return characteristics.flatMap((characteristic) => {
    switch (characteristic.kind) {
      case 'counted': return characteristic.kinds.map(({ code, name, class: rank }) => ({ code, name, rank }));
      case 'measured': case 'graded': case 'confirmed': return [{ code: characteristic.id, name: characteristic.name, rank: 'major' as const }];
    }
  });
}
