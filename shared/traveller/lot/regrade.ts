import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { planInForce } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import type { ProductCard } from '../catalogue/slips.ts';
import { isPassed } from '../gate/work.ts';
import type { Lot, LotProduct, RouteStep } from './lot.ts';

/** The product as a lot keeps it. */
export function lotProduct(card: ProductCard): LotProduct {
  const { id, designation, name, grade, layer, marking, piecesPerBox, itemCode } = card;
  return { id, designation, name, grade, layer, marking, piecesPerBox, itemCode };
}

type Step = Pick<RouteStep, 'id' | 'workedOn'>;
function leadsOver(route: readonly Step[], step: Step): boolean {
  return route.some(({ id, workedOn }) => id === step.id && workedOn === step.workedOn);
}

/** The lot as another product: same material, same route, the other product's plan now in force. Verdicts given stay. */
export function regradedLot(pen: Pen, lot: Lot, toProduct: string): { readonly product: LotProduct; readonly plan: string; readonly planVersion: number } {
  const { card } = pen.find(streamName('product', toProduct), 'product', 'product');
  if (card.grade !== lot.product.grade) refuse({ code: 'gradeDiffers', lot: lot.id, has: lot.product.grade, wanted: card.grade });
  // A coating that lies on the pieces stays what it is.
  if (card.layer !== lot.product.layer && lot.gates.some((gate) => gate.workedOn === 'coating' && isPassed(gate))) refuse({ code: 'gradeDiffers', lot: lot.id, has: lot.product.layer ?? '', wanted: card.layer ?? '' });
  const { plan, planVersion } = planInForce(pen, card.plan, 'lot');
  const differs = lot.gates.find((gate) => !leadsOver(plan.gates, gate)) ?? plan.gates.find((gate) => !leadsOver(lot.gates, gate));
  if (differs !== undefined) refuse({ code: 'notFound', what: 'gate', id: differs.id });
  return { product: lotProduct(card), plan: card.plan, planVersion };
}
