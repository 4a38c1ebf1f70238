import { html, type TemplateResult } from 'lit';

const columns = [
  { key: 'lot', head: 'Lot', sortable: true, filterable: true },
  { key: 'product', head: 'Product', sortable: true, filterable: true },
  { key: 'n', head: 'n', kind: 'number' as const, sortable: true },
  { key: 'found', head: 'Found', kind: 'number' as const, sortable: true },
  { key: 'mean', head: 'Mean s', unit: 'mm', kind: 'number' as const },
  { key: 'verdict', head: 'Verdict' },
];
const mark = (state: string, word: string) => html`<gh-state-mark state=${state} word=${word} size="small"></gh-state-mark>`;
const row = (lot: string, product: string, n: number, found: number, mean: string, verdict: unknown) => ({
  key: lot, href: `#${lot}`, cells: { lot, product, n, found, mean, verdict },
});
const rows = [
  row('L-0417', 'CNMG 120408', 80, 2, '4.7598', mark('accepted', 'Accepted')),
  row('L-0409', 'SNMA 120412', 125, 11, '4.7612', mark('rejected', 'Rejected')),
  row('L-0398', 'TNMG 160404', 80, 6, '4.7710', mark('concession', 'Concession')),
  row('L-0420', 'DCMT 11T304', 50, 3, '3.9701', mark('next-sample', 'Second sample')),
];
const words = { filter: 'Filter', sort: 'Order by this column' };

/** The parts of the desks, each in all its states, in the desk's density. */
export const deskSections: readonly (readonly [string, TemplateResult])[] = [
  ['gh-tabs', html`<gh-tabs label="Desks" current="/bench" .tabs=${[{ href: '/bench', text: 'Bench', count: '4' }, { href: '/lab', text: 'Lab' }, { href: '/plans', text: 'Plans' }, { href: '/release', text: 'Release', count: '2' }, { href: '/packing', text: 'Packing' }, { href: '/trace', text: 'Trace' }, { href: '/keeper', text: 'Keeper' }]}></gh-tabs>
    <div data-density="desk"><p>&nbsp;</p><gh-tabs label="Desks, compact" current="/lab" .tabs=${[{ href: '/bench', text: 'Bench', count: '4' }, { href: '/lab', text: 'Lab' }, { href: '/plans', text: 'Plans' }]}></gh-tabs></div>`],
  ['gh-table', html`<div class="pile" data-density="desk">
    <gh-table caption="Lots at final visual, this week" csv-word="Save as CSV" .columns=${columns} .rows=${rows} .sorted=${{ key: 'lot', direction: 'up' }} .words=${words}></gh-table>
    <gh-table caption="Lots of another product" .columns=${columns} .rows=${[]} empty="No lot fits the filters." .words=${words}></gh-table></div>`],
  ['gh-field', html`<div class="halves"><gh-field label="Lot" value="L-0417" hint="As on the traveller"></gh-field>
    <gh-field label="Reason" multiline value="Edge chips traced to tray 5" error="Say what was found and where."></gh-field>
    <gh-field label="Press weight" unit="g" value="84,1" entry="decimal" error="Ten times the target. Is it 8,41?"></gh-field><gh-field label="Purchaser" disabled value="not chosen"></gh-field></div>
    <div data-density="desk" class="halves"><gh-field label="Designation" value="CNMG 120408" .suggestions=${['CNMG 120408', 'CNMG 120412']}></gh-field><gh-field label="AQL, percent" value="2.5" readonly></gh-field></div>`],
  ['gh-verdict-desk', html`<div data-density="desk" class="pile"><gh-verdict state="accepted" word="Accepted" sentence="2 found in 80, accept to 5" quiet></gh-verdict>
    <div class="row"><gh-button kind="primary">Approve the plan</gh-button><gh-button>Compare</gh-button><gh-button kind="grave">Withdraw</gh-button></div></div>`],
  ['gh-sheet', html`<gh-button @click=${openSheet}>Open the sheet</gh-button>
    <gh-sheet heading="Scrap 240 pieces of L-0398?" close-word="Leave it" grave>
      <p>They leave the lot and the balance for good. 960 pieces stay.</p>
      <gh-button slot="actions" kind="primary">Scrap 240 pieces</gh-button><gh-button slot="actions">Choose another way</gh-button></gh-sheet>`],
];

function openSheet(): void {
  const sheet = document.querySelector('gh-sheet');
  if (sheet !== null) sheet.open = true;
}
