import { html, nothing, type TemplateResult } from 'lit';
import { remainingPieces, standingHolds, type Lot, type Subject } from '../../shared/traveller/index.ts';
import { labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showFigure, showMoment, showNumber } from '../desk/show.ts';
import type { LotStanding } from '../desk/traveller-page.ts';
import '../parts/gh-state-mark.ts';
import { travellerPath } from '../shell/routes.ts';

/** Where the lot's pieces are, and that they add up. */
export function balanceStrip({ balance }: Lot): TemplateResult {
  const parts = { opened: balance.opened, destroyed: balance.destroyed, scrapped: balance.scrapped, splitOff: balance.splitOff, returned: balance.returned, boxed: balance.boxed, remaining: remainingPieces(balance) };
  const signs = { opened: '', destroyed: '=', scrapped: '+', splitOff: '+', returned: '+', boxed: '+', remaining: '+' } as const;
  return html`<dl class="facts" aria-label=${words.balance}>${Object.entries(parts).map(([part, count]) => html`<div><dt>${words.balanceParts[part as keyof typeof parts]}</dt><dd>${signs[part as keyof typeof parts]} ${showFigure(count)}</dd></div>`)}</dl>`;
}

/** The powder batch and the charges, each with its standing and what it passed on. */
export function upstreamSheet({ lot, batch, charges }: LotStanding): TemplateResult {
  return html`<section class="sheet" aria-labelledby="upstream">
    <h2 id="upstream">${words.upstream}</h2>
    <ul class="lines">
      ${batch === null ? nothing : html`<li>${standingOf(batch)} <a href=${travellerPath('batch', batch.id)}>${labels.streamKinds.batch} ${batch.id}</a> <span>${batch.grade.name}</span>
        <span class="soft">${batch.released === null ? words.upstreamNotReleased : words.upstreamReleased(batch.released.signature.name, showMoment(batch.released.signature.at))}</span>
        ${batch.released === null ? nothing : html`<span class="figure">${words.factors(showNumber(batch.released.factors.linearShrinkagePercent, 2), showNumber(batch.released.factors.sinteredDensityGPerCm3, 2))}</span>`}</li>`}
      ${charges.map((charge) => html`<li>${standingOf(charge)} <a href=${travellerPath(charge.kind, charge.id)}>${labels.streamKinds[charge.kind]} ${charge.id}</a>
        <span>${charge.specification.name}</span> <span class="soft">${words.programme(charge.programme, charge.equipment)}</span>
        <span class="figure">${lot.charges.filter(({ charge: stream }) => stream === charge.stream).flatMap(({ places }) => places).join(', ')}</span></li>`)}
    </ul>
  </section>`;
}

function standingOf(subject: Subject): TemplateResult {
  const held = standingHolds(subject).length > 0;
  return html`<gh-state-mark state=${held ? 'hold' : 'accepted'} word=${held ? words.upstreamHeld : words.upstreamFree} size="small"></gh-state-mark>`;
}
