import type { Disposition, DispositionKind, SomeMembers } from '../../../shared/traveller/index.ts';

/** What an engineer wrote: the reason for every disposition, and what some of them need besides. */
export interface DispositionText { readonly reason: string; readonly text: string }

/** What a disposition needs beside its reason. */
export function textNeeded(kind: DispositionKind): 'none' | 'instruction' | 'statement' | 'product' | 'to' {
  switch (kind) {
    case 'rework': return 'instruction';
    case 'concession': return 'statement';
    case 'regrade': return 'product';
    case 'return': return 'to';
    case 'sort': case 'retest': case 'reSinter': case 'recoat': case 'scrap': case 'clear': return 'none';
  }
}

/** The disposition as it will be signed. @param some the members of a charge that alone are done again */
export function dispositionOf(kind: DispositionKind, { text }: DispositionText, some: SomeMembers | null = null): Disposition {
  const written = text.trim();
  switch (kind) {
    case 'rework': return { kind, instruction: written };
    case 'concession': return { kind, statement: written };
    case 'regrade': return { kind, toProduct: written };
    case 'return': return { kind, to: written };
    case 'reSinter': case 'recoat': return some === null ? { kind } : { kind, some };
    case 'sort': case 'retest': case 'scrap': case 'clear': return { kind };
  }
}
