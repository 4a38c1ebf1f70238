import { html, type TemplateResult } from 'lit';
import type { PowderFactor, PowderFactors } from '../../../shared/traveller/index.ts';
import { powderToPressWords as words } from '../../../shared/words/powder-to-press.en.ts';
import { catalogue, format } from '../speak.ts';

/** Powder factors as a table: mean, how well it is known, and whether it was measured or weighted. Those that are not known are left out. */
export function factorTable(caption: string, order: readonly PowderFactor[], factors: PowderFactors): TemplateResult {
  const { columns } = words;
  const { labels } = catalogue();
  const { number } = format();
  const known = order.flatMap((factor) => {
    const value = factors[factor];
    return value === undefined ? [] : [{ factor, value, u: factors.standardUncertainty?.[factor] }];
  });
  return html`<table><caption>${caption}</caption>
    <thead><tr><th scope="col">${columns.factor}</th><th scope="col" class="number">${columns.value}</th><th scope="col" class="number">${columns.u}</th></tr></thead>
    <tbody>${known.map(({ factor, value, u }) => html`<tr><th scope="row">${capital(labels.factors[factor])}<small>${words.from[factors.weighted?.includes(factor) === true ? 'weighted' : 'measured']}</small></th><td class="number main">${number(value, 2)} ${words.units[factor]}</td>
      <td class="number">${u === undefined ? words.notStated : number(2 * u, 3)}</td></tr>`)}</tbody></table>`;
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
