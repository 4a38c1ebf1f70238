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

/** The kinds of card that are defined in a form of the catalogue; a grade has a page of its own. */
export const CARD_KINDS = ['layer', 'product'] as const;
export type CardKind = (typeof CARD_KINDS)[number];

/** Where a grade, coating or product is changed. */
export function cardPath(kind: CardKind | 'grade', id: string): string {
  return kind === 'grade' ? `/plans/grade/${encodeURIComponent(id)}` : `/plans/catalogue/${kind}/${encodeURIComponent(id)}`;
}
