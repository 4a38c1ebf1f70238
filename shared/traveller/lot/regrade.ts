import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { planInForce } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import type { ProductCard } from '../catalogue/slips.ts';
import type { Lot, LotProduct } from './lot.ts';

/** The product as a lot keeps it. */
export function lotProduct(card: ProductCard): LotProduct {
  const { id, designation, name, grade, layer, marking, piecesPerBox, itemCode } = card;
  return { id, designation, name, grade, layer, marking, piecesPerBox, itemCode };
}

/** The lot as another product: same material, same route, the other product's plan now in force. Verdicts given stay. */
export function regradedLot(pen: Pen, lot: Lot, toProduct: string): { readonly product: LotProduct; readonly plan: string; readonly planVersion: number } {
  const { card } = pen.find(streamName('product', toProduct), 'product', 'product');
  if (card.grade !== lot.product.grade) refuse({ code: 'gradeDiffers', lot: lot.id, has: lot.product.grade, wanted: card.grade });
  const { plan, planVersion } = planInForce(pen, card.plan);
  const missing = lot.gates.find(({ id }) => !plan.gates.some((gate) => gate.id === id));
  if (missing !== undefined) refuse({ code: 'notFound', what: 'gate', id: missing.id });
  return { product: lotProduct(card), plan: card.plan, planVersion };
}
