import type { GradeCard, LayerCard, ProductCard, SubjectKind } from '../../shared/traveller/index.ts';

/** What the server lists of the plant's catalogue. */
export interface CatalogueView {
  readonly products: readonly ProductCard[];
  readonly grades: readonly GradeCard[];
  readonly layers: readonly LayerCard[];
  readonly plans: readonly {
    readonly id: string; readonly name: string; readonly appliesTo: SubjectKind;
    readonly versions: readonly { readonly planVersion: number; readonly inForce: boolean; readonly approvals: number; readonly why: string }[];
  }[];
}

/** Where a plan is shown. */
export function planPath(id: string, version?: number): string {
  return `/plans/plan/${encodeURIComponent(id)}${version === undefined ? '' : `/${version}`}`;
}
