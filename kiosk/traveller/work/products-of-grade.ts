import type { LotProduct, ProductCard } from '../../../shared/traveller/index.ts';
import { link, LinkFault } from '../../link/index.ts';

export interface ProductChoice { readonly value: string; readonly text: string; readonly hint: string }

/** Other products of the same grade that a lot may become; none where the list cannot be fetched. */
export async function productsOfGrade(product: LotProduct): Promise<readonly ProductChoice[]> {
  try {
    const { products } = await link.ask<{ products: readonly ProductCard[] }>('/api/catalogue');
    return products.filter(({ id, grade }) => id !== product.id && grade === product.grade).map(({ id, designation, name }) => ({ value: id, text: designation, hint: `${id}, ${name}` }));
  } catch (error) {
    if (error instanceof LinkFault) return [];
    throw error;
  }
}
