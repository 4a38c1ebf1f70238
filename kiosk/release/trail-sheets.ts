import { html, type TemplateResult } from 'lit';
import { labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showMoment } from '../desk/show.ts';
import type { LotStanding } from '../desk/traveller-page.ts';
import '../parts/gh-state-mark.ts';

function sheet(id: string, title: string, none: string, lines: readonly TemplateResult[]): TemplateResult {
  return html`<section class="sheet" aria-labelledby=${id}><h2 id=${id}>${title}</h2>${lines.length === 0 ? html`<p class="soft">${none}</p>` : html`<ul class="lines">${lines}</ul>`}</section>`;
}

/** Concessions of the lot and of what it comes from, in full. */
export function concessionSheet({ lot }: LotStanding): TemplateResult {
  const gateName = (id: string | null) => lot.gates.find((gate) => gate.id === id)?.name ?? id ?? words.concessionWhole;
  return sheet('concessions', words.concessions, words.noConcessions, lot.concessions.map(({ gate, statement, signature }) => html`<li>
    <gh-state-mark state="concession" word=${words.concession(gateName(gate), statement)} size="small"></gh-state-mark>
    <span class="soft">${words.grantedBy(signature.name, showMoment(signature.at))}</span></li>`));
}

/** Every entry that was changed after it was first made, the lot's own and those upstream. */
export function correctionSheet({ lot, batch, charges, names }: LotStanding): TemplateResult {
  const subjects = [lot, ...(batch === null ? [] : [batch]), ...charges];
  return sheet('corrections', words.corrections, words.noCorrections, subjects.flatMap(({ id, corrections }) =>
    corrections.map(({ gate, characteristic, ordinal, from, to, reason, at, by }) => html`<li>
      <gh-state-mark state="corrected" size="small"></gh-state-mark>
      <span>${words.correction([id, gate, characteristic, ...(ordinal === null ? [] : [String(ordinal)])].join(' / '), from, to)}</span>
      <span class="soft">${words.correctionBy(names[by] ?? by, showMoment(at), reason)}</span></li>`)));
}

/** Every hold of the lot and what was decided about it. */
export function holdSheet({ lot, names }: LotStanding): TemplateResult {
  return sheet('holds', words.holds, words.noHolds, lot.holds.map(({ reason, at, by, lifted }) => html`<li>
    <gh-state-mark state=${lifted === null ? 'hold' : 'accepted'} word=${lifted === null ? words.holdStands : labels.standings.done} size="small"></gh-state-mark>
    <span>${reason}</span> <span class="soft">${names[by] ?? by}, ${showMoment(at)}</span>
    ${lifted === null ? '' : html`<span>${words.holdLifted(labels.dispositions[lifted.disposition.kind].name, names[lifted.by] ?? lifted.by, showMoment(lifted.at), lifted.reason)}</span>`}</li>`));
}
