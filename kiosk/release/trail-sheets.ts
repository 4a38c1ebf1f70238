import { html, nothing, type TemplateResult } from 'lit';
import { labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showMoment } from '../desk/show.ts';
import type { LotStanding } from '../desk/traveller-page.ts';
import '../parts/gh-state-mark.ts';

function sheet(id: string, title: string, lines: readonly TemplateResult[]): TemplateResult | typeof nothing {
  return lines.length === 0 ? nothing : html`<section class="sheet" aria-labelledby=${id}><h2 id=${id}>${title}</h2><ul class="lines">${lines}</ul></section>`;
}

/** Concessions, corrections and holds in full; those there are none of are said in one line. */
export function trailSheets(standing: LotStanding): TemplateResult {
  const [concessions, corrections, holds] = [concessionLines(standing), correctionLines(standing), holdLines(standing)];
  const none = [...(concessions.length === 0 ? [words.noConcessions] : []), ...(corrections.length === 0 ? [words.noCorrections] : []), ...(holds.length === 0 ? [words.noHolds] : [])];
  return html`${sheet('concessions', words.concessions, concessions)} ${sheet('corrections', words.corrections, corrections)} ${sheet('holds', words.holds, holds)} ${none.length === 0 ? nothing : html`<p>${none.join(' ')}</p>`}`;
}

function concessionLines({ lot }: LotStanding): readonly TemplateResult[] {
  const gateName = (id: string | null) => lot.gates.find((gate) => gate.id === id)?.name ?? id ?? words.concessionWhole;
  return lot.concessions.map(({ gate, statement, signature }) => html`<li>
    <gh-state-mark state="concession" word=${words.concession(gateName(gate), statement)} size="small"></gh-state-mark>
    <span class="soft">${words.grantedBy(signature.name, showMoment(signature.at))}</span></li>`);
}

/** Every entry that was changed after it was first made, the lot's own and those upstream. */
function correctionLines({ lot, batch, charges, names }: LotStanding): readonly TemplateResult[] {
  const subjects = [lot, ...(batch === null ? [] : [batch]), ...charges];
  return subjects.flatMap(({ id, corrections }) =>
    corrections.map(({ gate, characteristic, ordinal, from, to, reason, at, by }) => html`<li>
      <gh-state-mark state="corrected" size="small"></gh-state-mark>
      <span>${words.correction([id, gate, characteristic, ...(ordinal === null ? [] : [String(ordinal)])].join(' / '), from, to)}</span>
      <span class="soft">${words.correctionBy(names[by] ?? by, showMoment(at), reason)}</span></li>`));
}

/** Every hold of the lot and what was decided about it. */
function holdLines({ lot, names }: LotStanding): readonly TemplateResult[] {
  return lot.holds.map(({ reason, at, by, lifted }) => html`<li>
    <gh-state-mark state=${lifted === null ? 'hold' : 'accepted'} word=${lifted === null ? words.holdStands : labels.standings.done} size="small"></gh-state-mark>
    <span>${reason}</span> <span class="soft">${names[by] ?? by}, ${showMoment(at)}</span>
    ${lifted === null ? '' : html`<span>${words.holdLifted(labels.dispositions[lifted.disposition.kind].name, names[lifted.by] ?? lifted.by, showMoment(lifted.at), lifted.reason)}</span>`}</li>`);
}
